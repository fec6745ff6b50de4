/**
 * What the model implies for the growth of the mites, in ways that must agree. {@link
 * org.undercap.analysis.GrowthRates} is measured on runs of a season, as field studies do. For bees
 * and brood that stay as they are, {@link org.undercap.analysis.MiteDayMatrix} is one day of the
 * mites as a matrix, with its dominant eigenvalue as their growth, and {@link
 * org.undercap.analysis.ConstantBrood} solves the equation of a mite's way through the cells.
 * {@link org.undercap.analysis.GrowthElasticities} tells which parameters the growth hangs on.
 * {@link org.undercap.analysis.GrowthStudy} holds all of it for one climate; start with it.
 */
package org.undercap.analysis;
