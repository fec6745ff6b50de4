/**
 * What the model implies, found by mathematics instead of runs. {@link
 * org.undercap.analysis.MiteDayMatrix} is one day of the mites as a matrix; its dominant eigenvalue
 * is their growth under constant conditions.
 */
package org.undercap.analysis;
