/**
 * Values of parameters from data. Start with {@link org.undercap.calibration.GrowthFit} for a
 * published growth rate, or with CountFit for counts in colonies over time.
 *
 * <p>Both stand on {@link org.undercap.calibration.LikelihoodFit}, which knows no bees: free
 * parameters with priors, a likelihood that is asked for many points at once, restarts, profile
 * intervals, correlations, and the names of parameters that the data leave open. {@link
 * org.undercap.calibration.LeastSquaresFit} fits curves by least squares.
 */
package org.undercap.calibration;
