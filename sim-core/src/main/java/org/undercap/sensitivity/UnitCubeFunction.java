package org.undercap.sensitivity;

/**
 * A number for each point of the unit cube. It is asked for many points at once, so that a model
 * can run them side by side. The value of a point must not depend on the other points.
 */
@FunctionalInterface
public interface UnitCubeFunction {
  /**
   * The values of points.
   *
   * @param points points of the unit cube, each coordinate strictly between 0 and 1
   * @return one finite value a point, in their order
   */
  double[] values(double[][] points);
}
