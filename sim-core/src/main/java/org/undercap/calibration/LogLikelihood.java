package org.undercap.calibration;

/**
 * How well data agree with parameters. It is asked for many points at once, so that a model can run
 * them side by side. The value of a point must not depend on the other points.
 */
@FunctionalInterface
public interface LogLikelihood {
  /**
   * Logarithms of the likelihood.
   *
   * @param points values of the free parameters (each in its unit), one row a point
   * @return one number a point; minus infinity where the data cannot be
   */
  double[] at(double[][] points);
}
