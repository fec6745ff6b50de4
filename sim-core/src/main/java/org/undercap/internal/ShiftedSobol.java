package org.undercap.internal;

import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.apache.commons.rng.UniformRandomProvider;

/**
 * Sobol points moved by one random shift modulo 1 that a seed decides. Points fill the unit cube
 * more evenly than random ones; take a power of two of them. The same seed gives the same points.
 */
public final class ShiftedSobol {
  /** Keeps coordinates off 0, where quantiles may be infinite. */
  private static final double SMALLEST = 0x1p-53;

  private static final int MOST_DIMENSIONS = 1000;
  private final double[] shift;

  /**
   * A sequence.
   *
   * @param dimensions coordinates a point, 1 to 1000
   * @param seed decides the shift
   * @throws IllegalArgumentException if a number is out of range
   */
  public ShiftedSobol(int dimensions, long seed) {
    if (!(dimensions >= 1 && dimensions <= MOST_DIMENSIONS)) {
      throw new IllegalArgumentException(
          "points of " + dimensions + " dimensions: needs 1 to " + MOST_DIMENSIONS);
    }
    UniformRandomProvider random = Randoms.of(seed, "shift of points");
    shift = new double[dimensions];
    for (int i = 0; i < dimensions; i++) {
      shift[i] = random.nextDouble();
    }
  }

  /**
   * Some consecutive points of the sequence.
   *
   * @param first number of the first one, from 0
   * @param count number of points, at least 1
   * @return points of the unit cube, each coordinate strictly between 0 and 1
   * @throws IllegalArgumentException if a number is out of range
   */
  public double[][] points(int first, int count) {
    if (!(first >= 0 && count >= 1)) {
      throw new IllegalArgumentException(count + " points from " + first + ": needs at least 1");
    }
    SobolSequenceGenerator sobol = new SobolSequenceGenerator(shift.length);
    double[][] points = new double[count][];
    for (int row = 0; row < count; row++) {
      points[row] = row == 0 ? sobol.skipTo(first) : sobol.nextVector();
      for (int i = 0; i < shift.length; i++) {
        double moved = points[row][i] + shift[i];
        points[row][i] = Math.max(SMALLEST, moved < 1 ? moved : moved - 1);
      }
    }
    return points;
  }

  /**
   * The first points of a sequence.
   *
   * @param count number of points, at least 1
   * @param dimensions coordinates a point, 1 to 1000
   * @param seed decides the shift
   * @return points of the unit cube, each coordinate strictly between 0 and 1
   * @throws IllegalArgumentException if a number is out of range
   */
  public static double[][] points(int count, int dimensions, long seed) {
    return new ShiftedSobol(dimensions, seed).points(0, count);
  }
}
