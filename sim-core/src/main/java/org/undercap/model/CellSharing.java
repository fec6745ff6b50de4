package org.undercap.model;

import java.util.Arrays;

/**
 * How mother mites share cells: which share of the cells is infested, which holds one mother only,
 * and what crowding leaves of each mother's daughters, all from the mean number of mothers a cell.
 *
 * <p>With dispersion {@code k} the mothers are spread over the cells as a negative binomial; {@code
 * k} infinite is Poisson. A mother then meets a Poisson number of others, or a negative binomial of
 * size {@code k + 1} and mean {@code lam (k + 1) / k}. The crowding factor is constant from its
 * last entry on, so its mean over the mothers is exact in a few terms.
 */
abstract sealed class CellSharing {
  private static final int LARGEST_PRODUCT = 16;

  /** Crowding factor beyond the listed numbers of mothers. */
  final double lastFactor;

  /** What each number of others adds to it, without its probability's power of the mean. */
  final double[] terms;

  private CellSharing(double[] factors, double[] weights) {
    lastFactor = factors[factors.length - 1];
    terms = new double[factors.length - 1];
    for (int others = 0; others < terms.length; others++) {
      terms[others] = (factors[others] - lastFactor) * weights[others];
    }
  }

  static CellSharing of(double dispersion, double[] factors) {
    if (dispersion == Double.POSITIVE_INFINITY) {
      return new Poisson(factors);
    }
    if (!(dispersion > 0)) {
      throw new IllegalArgumentException("dispersion " + dispersion + " must be above 0");
    }
    return new NegativeBinomial(dispersion, factors);
  }

  /** Fills the three results for each colony from its mean number of mothers a cell. */
  abstract void share(
      double[] mothersPerCell, double[] infested, double[] single, double[] crowding);

  /** Value of the polynomial of the terms at each x, by Horner's rule. */
  final void polynomial(double[] x, double[] sum) {
    Arrays.fill(sum, terms.length == 0 ? 0.0 : terms[terms.length - 1]);
    for (int others = terms.length - 2; others >= 0; others--) {
      double term = terms[others];
      for (int lane = 0; lane < x.length; lane++) {
        sum[lane] = sum[lane] * x[lane] + term;
      }
    }
  }

  private static final class Poisson extends CellSharing {
    Poisson(double[] factors) {
      super(factors, inverseFactorials(factors.length - 1));
    }

    private static double[] inverseFactorials(int n) {
      double[] weights = new double[n];
      double factorial = 1;
      for (int j = 0; j < n; j++) {
        weights[j] = 1.0 / factorial;
        factorial *= j + 1;
      }
      return weights;
    }

    @Override
    void share(double[] mothersPerCell, double[] infested, double[] single, double[] crowding) {
      polynomial(mothersPerCell, crowding);
      for (int lane = 0; lane < mothersPerCell.length; lane++) {
        infested[lane] = Hazard.fraction(mothersPerCell[lane]);
      }
      double last = lastFactor;
      for (int lane = 0; lane < mothersPerCell.length; lane++) {
        double none = 1.0 - infested[lane];
        single[lane] = mothersPerCell[lane] * none;
        crowding[lane] = last + none * crowding[lane];
      }
    }
  }

  private static final class NegativeBinomial extends CellSharing {
    private final double k;

    NegativeBinomial(double k, double[] factors) {
      super(factors, risingWeights(factors.length - 1, k + 1));
      this.k = k;
    }

    private static double[] risingWeights(int n, double size) {
      double[] weights = new double[n];
      double weight = 1;
      for (int j = 0; j < n; j++) {
        weights[j] = weight;
        weight *= (size + j) / (j + 1);
      }
      return weights;
    }

    @Override
    void share(double[] mothersPerCell, double[] infested, double[] single, double[] crowding) {
      for (int lane = 0; lane < mothersPerCell.length; lane++) {
        single[lane] = k / (k + mothersPerCell[lane]);
        infested[lane] = 1.0 - single[lane];
      }
      polynomial(infested, crowding);
      power(single, infested);
      for (int lane = 0; lane < mothersPerCell.length; lane++) {
        double none = infested[lane];
        double alone = single[lane];
        crowding[lane] = lastFactor + none * alone * crowding[lane];
        single[lane] = mothersPerCell[lane] * none * alone;
        infested[lane] = 1.0 - none;
      }
    }

    /**
     * The power k of bases in (0, 1]: products where k is a small whole number, so that it is fast.
     */
    private void power(double[] base, double[] result) {
      if (k != (int) k || k > LARGEST_PRODUCT) {
        for (int lane = 0; lane < base.length; lane++) {
          result[lane] = StrictMath.pow(base[lane], k);
        }
        return;
      }
      System.arraycopy(base, 0, result, 0, base.length);
      for (int i = 1; i < k; i++) {
        for (int lane = 0; lane < base.length; lane++) {
          result[lane] *= base[lane];
        }
      }
    }
  }
}
