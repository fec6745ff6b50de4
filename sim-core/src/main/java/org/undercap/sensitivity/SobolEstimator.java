package org.undercap.sensitivity;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.undercap.internal.Randoms;

/** Sums over the rows of a design, whole and resampled. */
final class SobolEstimator {
  private static final double TAIL = 0.025;
  private static final int FEWEST_RESAMPLES = 100;

  private final int dimensions;
  private final int rows;
  private final double mean;
  private final double[] a;
  private final double[] b;
  private final double[][] firstTerms;
  private final double[][] totalTerms;

  SobolEstimator(SobolDesign design, double[] values) {
    dimensions = design.dimensions();
    rows = design.rows();
    a = new double[rows];
    b = new double[rows];
    firstTerms = new double[dimensions][rows];
    totalTerms = new double[dimensions][rows];
    int width = dimensions + 2;
    double sum = 0;
    for (int row = 0; row < rows; row++) {
      sum += values[row * width] + values[row * width + 1];
    }
    mean = sum / (2.0 * rows);
    for (int row = 0; row < rows; row++) {
      a[row] = values[row * width] - mean;
      b[row] = values[row * width + 1] - mean;
      for (int i = 0; i < dimensions; i++) {
        double mixed = values[row * width + 2 + i] - mean;
        firstTerms[i][row] = b[row] * (mixed - a[row]);
        totalTerms[i][row] = (a[row] - mixed) * (a[row] - mixed) / 2;
      }
    }
  }

  SobolIndices estimate(int resamples, long seed) {
    if (!(resamples >= FEWEST_RESAMPLES)) {
      throw new IllegalArgumentException(resamples + " resamples: at least 100 are needed");
    }
    int[] whole = new int[rows];
    Arrays.fill(whole, 1);
    double[] value = indices(whole);
    double[][] again = new double[2 * dimensions][resamples];
    UniformRandomProvider random = Randoms.of(seed, "resampled rows");
    for (int r = 0; r < resamples; r++) {
      double[] one = indices(resampled(random));
      for (int i = 0; i < one.length; i++) {
        again[i][r] = one[i];
      }
    }
    List<SobolIndices.Index> all = new ArrayList<>();
    for (int i = 0; i < value.length; i++) {
      Arrays.sort(again[i]);
      all.add(
          new SobolIndices.Index(
              value[i],
              again[i][(int) (TAIL * (resamples - 1))],
              again[i][resamples - 1 - (int) (TAIL * (resamples - 1))]));
    }
    return new SobolIndices(
        mean, variance(whole), all.subList(0, dimensions), all.subList(dimensions, all.size()));
  }

  private int[] resampled(UniformRandomProvider random) {
    int[] times = new int[rows];
    for (int row = 0; row < rows; row++) {
      times[random.nextInt(rows)]++;
    }
    return times;
  }

  /** First-order indices, then total ones; each row counts so many times. */
  private double[] indices(int[] times) {
    double[] indices = new double[2 * dimensions];
    double variance = variance(times);
    if (variance > 0) {
      for (int i = 0; i < dimensions; i++) {
        indices[i] = sum(firstTerms[i], times) / rows / variance;
        indices[dimensions + i] = sum(totalTerms[i], times) / rows / variance;
      }
    }
    return indices;
  }

  private double variance(int[] times) {
    double sum = 0;
    double squares = 0;
    for (int row = 0; row < rows; row++) {
      sum += times[row] * (a[row] + b[row]);
      squares += times[row] * (a[row] * a[row] + b[row] * b[row]);
    }
    double n = 2.0 * rows;
    return squares / n - (sum / n) * (sum / n);
  }

  private static double sum(double[] terms, int[] times) {
    double sum = 0;
    for (int row = 0; row < terms.length; row++) {
      sum += times[row] * terms[row];
    }
    return sum;
  }
}
