package org.undercap.sensitivity;

import org.undercap.internal.ShiftedSobol;

/**
 * Two independent sets of points A and B, and for each coordinate the set A with that coordinate
 * taken from B [1]. A and B are the first and second half of the coordinates of one Sobol sequence.
 *
 * <p>[1] See {@link SobolIndices}.
 */
public final class SobolDesign implements Design {
  private final int dimensions;
  private final double[][] rows;

  private SobolDesign(int dimensions, double[][] rows) {
    this.dimensions = dimensions;
    this.rows = rows;
  }

  /**
   * Lays out the points.
   *
   * @param dimensions coordinates a point, 1 to 500
   * @param rows points of A; a power of two is best; all in all {@code rows * (dimensions + 2)}
   *     points
   * @param seed decides the random shift of the points
   * @return the design
   * @throws IllegalArgumentException if a number is out of range
   */
  public static SobolDesign of(int dimensions, int rows, long seed) {
    if (!(rows >= 2)) {
      throw new IllegalArgumentException(rows + " rows: at least 2 are needed");
    }
    return new SobolDesign(dimensions, ShiftedSobol.points(rows, 2 * dimensions, seed));
  }

  int dimensions() {
    return dimensions;
  }

  int rows() {
    return rows.length;
  }

  @Override
  public int size() {
    return rows.length * (dimensions + 2);
  }

  /** Points of one row follow each other: A, B, then A with one coordinate of B. */
  @Override
  public double[] point(int index) {
    double[] row = rows[index / (dimensions + 2)];
    int kind = index % (dimensions + 2);
    double[] point = new double[dimensions];
    System.arraycopy(row, kind == 1 ? dimensions : 0, point, 0, dimensions);
    if (kind >= 2) {
      point[kind - 2] = row[dimensions + kind - 2];
    }
    return point;
  }

  /**
   * The indices of an outcome.
   *
   * @param values the outcome at all points
   * @param resamples resamples of the rows for the intervals, at least 100
   * @param seed decides the resamples
   * @return indices with intervals
   * @throws IllegalArgumentException if there are too few values or resamples, or one value is not
   *     finite
   */
  public SobolIndices indices(double[] values, int resamples, long seed) {
    check(values);
    return new SobolEstimator(this, values).estimate(resamples, seed);
  }
}
