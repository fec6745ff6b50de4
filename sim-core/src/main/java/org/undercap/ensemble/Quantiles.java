package org.undercap.ensemble;

import java.util.Arrays;

/** Places in a sample. */
public final class Quantiles {
  private Quantiles() {}

  /**
   * The value below which a share of a sample lies, between the two nearest values of the sorted
   * sample.
   *
   * @param sorted the sample in ascending order, at least one value
   * @param share share (fraction, 0 to 1)
   * @return the quantile
   */
  public static double ofSorted(double[] sorted, double share) {
    double place = share * (sorted.length - 1);
    int below = (int) place;
    int above = Math.min(below + 1, sorted.length - 1);
    return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
  }

  /**
   * Several quantiles of a sample.
   *
   * @param sample values in any order, at least one; not changed
   * @param shares shares (fraction, 0 to 1)
   * @return the quantiles in the order of the shares
   */
  public static double[] of(double[] sample, double... shares) {
    double[] sorted = sample.clone();
    Arrays.sort(sorted);
    double[] result = new double[shares.length];
    for (int i = 0; i < shares.length; i++) {
      result[i] = ofSorted(sorted, shares[i]);
    }
    return result;
  }
}
