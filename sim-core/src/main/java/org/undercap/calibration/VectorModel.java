package org.undercap.calibration;

/** A curve: what would be observed with given parameters. */
@FunctionalInterface
public interface VectorModel {
  /**
   * The values of the curve.
   *
   * @param parameters values of the parameters
   * @return one value an observation
   */
  double[] values(double[] parameters);
}
