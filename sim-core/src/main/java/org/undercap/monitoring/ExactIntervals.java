package org.undercap.monitoring;

import org.apache.commons.math3.distribution.BetaDistribution;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.undercap.internal.Checks;

/**
 * Exact intervals of counts: they hold the true value at least as often as they promise, also for
 * few mites or none.
 */
public final class ExactIntervals {
  /** Beyond the default precision of the library, which would show in the sixth digit. */
  private static final double PRECISION = 1e-13;

  private ExactIntervals() {}

  /**
   * Clopper-Pearson interval of a share: from the quantile {@code a/2} of a beta distribution with
   * shapes {@code x, n - x + 1} to the quantile {@code 1 - a/2} of one with {@code x + 1, n - x},
   * where {@code a = 1 - level}.
   *
   * @param hits how many were found, 0 to {@code of}
   * @param of how many were looked at, at least 1
   * @param level how often the interval holds the true share (fraction, above 0 and below 1)
   * @return interval of the share (fraction)
   * @throws IllegalArgumentException if a number is out of range
   */
  public static Interval clopperPearson(int hits, int of, double level) {
    if (!(of >= 1 && hits >= 0 && hits <= of)) {
      throw new IllegalArgumentException(hits + " of " + of + " is no share");
    }
    double tail = tail(level);
    double low = hits == 0 ? 0 : beta(hits, of - hits + 1.0, tail);
    double high = hits == of ? 1 : beta(hits + 1.0, of - hits, 1 - tail);
    return new Interval(low, high);
  }

  private static double beta(double a, double b, double p) {
    return new BetaDistribution(null, a, b, PRECISION).inverseCumulativeProbability(p);
  }

  /**
   * Garwood interval of the mean of a Poisson count: from half the quantile {@code a/2} of a
   * chi-squared distribution with {@code 2 n} degrees of freedom to half the quantile {@code 1 -
   * a/2} of one with {@code 2 n + 2}, where {@code a = 1 - level}.
   *
   * @param count what was counted, at least 0
   * @param level how often the interval holds the true mean (fraction, above 0 and below 1)
   * @return interval of the mean count
   * @throws IllegalArgumentException if a number is out of range
   */
  public static Interval garwood(int count, double level) {
    Checks.notNegative(count, "count");
    double tail = tail(level);
    double low = count == 0 ? 0 : chiSquared(2.0 * count, tail) / 2;
    return new Interval(low, chiSquared(2.0 * count + 2, 1 - tail) / 2);
  }

  private static double chiSquared(double degrees, double p) {
    return new ChiSquaredDistribution(null, degrees, PRECISION).inverseCumulativeProbability(p);
  }

  /**
   * The smallest sample that holds at least one infested bee with a given certainty: the smallest n
   * with {@code 1 - (1 - share)^n >= certainty}.
   *
   * @param share share of the bees with a mite (fraction, above 0 and below 1)
   * @param certainty how often at least one is met (fraction, above 0 and below 1)
   * @return bees to look at (bees)
   * @throws IllegalArgumentException if a number is out of range
   */
  public static int sampleToMeetOne(double share, double certainty) {
    open(share, "share of the bees");
    open(certainty, "certainty");
    return (int) Math.ceil(StrictMath.log1p(-certainty) / StrictMath.log1p(-share));
  }

  private static double tail(double level) {
    return (1 - open(level, "level of the interval")) / 2;
  }

  private static double open(double x, String what) {
    if (!(x > 0 && x < 1)) {
      throw new IllegalArgumentException(what + " " + x + " must be above 0 and below 1");
    }
    return x;
  }
}
