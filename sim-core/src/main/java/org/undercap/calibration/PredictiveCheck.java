package org.undercap.calibration;

/**
 * Counts against those that a fit would make.
 *
 * @param counts number of counts
 * @param logScore mean logarithm of the probability that the fit gave to a count; higher is better,
 *     to be compared between fits of the same counts only
 * @param inside80 share of the counts inside the 80 % intervals foretold (fraction)
 * @param inside95 share of the counts inside the 95 % intervals foretold (fraction)
 * @param misfitShare share of simulated data sets that fit worse than the counts do, by the sum of
 *     squared standardised differences (fraction): near 0 the counts scatter more than the fit can
 *     tell, near 1 less
 */
public record PredictiveCheck(
    int counts, double logScore, double inside80, double inside95, double misfitShare) {}
