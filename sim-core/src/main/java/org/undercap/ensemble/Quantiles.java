package org.undercap.ensemble;

import java.util.Arrays;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.undercap.parameter.Domain;
import org.undercap.parameter.Parameter;
import org.undercap.parameter.ParameterCatalogue;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.Spread;

/** Values at a place in a distribution, and places in a sample. */
public final class Quantiles {
  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

  private Quantiles() {}

  /** The standard normal at a probability. */
  static double normal(double probability) {
    return NORMAL.inverseCumulativeProbability(probability);
  }

  /**
   * A parameter's value at a place in its spread, kept within the domain and, where the catalogue
   * has them, the bounds.
   */
  static double of(Parameter parameter, double value, double probability) {
    Spread spread = parameter.spread();
    double drawn =
        switch (spread.shape()) {
          case FIXED -> value;
          case NORMAL -> value + spread.amount() * normal(probability);
          case LOGNORMAL -> value * StrictMath.exp(spread.amount() * normal(probability));
          case BETA ->
              parameter.low().get(0)
                  + (parameter.high().get(0) - parameter.low().get(0)) * probability;
        };
    return Math.max(0, parameter.id().domain() == Domain.FRACTION ? Math.min(1, drawn) : drawn);
  }

  /** Factor of a lognormal spread with median 1. */
  static double factor(ParameterId id, double probability) {
    return of(ParameterCatalogue.shipped().get(id), 1, probability);
  }

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
