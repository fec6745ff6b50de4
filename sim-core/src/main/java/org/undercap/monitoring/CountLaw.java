package org.undercap.monitoring;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.special.Beta;
import org.apache.commons.math3.special.Gamma;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.AhrensDieterMarsagliaTsangGammaSampler;
import org.apache.commons.rng.sampling.distribution.PoissonSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * How likely each count is, if the colony is known.
 *
 * <p>A wash is binomial, or beta-binomial where the places of a hive differ; a board is Poisson, or
 * negative binomial where colonies differ; opened cells are binomial; all mites of a colony, where
 * a study found them, are lognormal.
 */
public sealed interface CountLaw {
  /**
   * Logarithm of the probability of a count, without the terms that depend on the count alone while
   * the scatter is known.
   *
   * @param x the count
   * @return natural logarithm; minus infinity if the count cannot be
   */
  double logLikelihood(double x);

  /**
   * The terms that {@link #logLikelihood} leaves out; the same for all means.
   *
   * @param x a count that can be
   * @return natural logarithm
   */
  double logOfCountAlone(double x);

  /**
   * Logarithm of the probability of a count; of the density, for a lognormal.
   *
   * @param x the count
   * @return natural logarithm; minus infinity if the count cannot be
   */
  default double logProbability(double x) {
    double likelihood = logLikelihood(x);
    return likelihood == Double.NEGATIVE_INFINITY ? likelihood : likelihood + logOfCountAlone(x);
  }

  /**
   * Probability of a count of at most x.
   *
   * @param x a number of at least 0, whole for counts
   * @return 0 to 1
   */
  double cumulative(double x);

  /**
   * Mean count.
   *
   * @return the mean
   */
  double mean();

  /**
   * Variance of the count.
   *
   * @return the variance, at least 0
   */
  double variance();

  /**
   * A count by chance.
   *
   * @param random where chance comes from
   * @return a count
   */
  double draw(UniformRandomProvider random);

  /**
   * Where a count stands among those that could be.
   *
   * @param x the count
   * @return share of the counts below it, with half of those that are the same (0 to 1)
   */
  default double place(double x) {
    return (cumulative(x) + (x >= 1 ? cumulative(x - 1) : 0)) / 2;
  }

  /**
   * The law of a count of mites or infested cells among some of them.
   *
   * @param n bees or cells looked at
   * @param p probability that one of them has a mite that is found (fraction)
   * @param spread standard deviation of {@code p} against its mean, for a small {@code p} (ratio)
   * @return the law
   */
  static CountLaw among(double n, double p, double spread) {
    return spread > 0 && p > 0 && p < 1
        ? new BetaBinomial(n, p, 1 / (spread * spread * p) - 1)
        : new Binomial(n, p);
  }

  /**
   * The law of a count among some that are alike, as bees of one place in the hive.
   *
   * @param n bees or cells looked at
   * @param p probability that one of them has a mite that is found (fraction)
   * @param alike correlation of two of them (fraction, below 1); 0 is binomial
   * @return the law
   */
  static CountLaw alike(double n, double p, double alike) {
    return alike > 0 && p > 0 && p < 1
        ? new BetaBinomial(n, p, (1 - alike) / alike)
        : new Binomial(n, p);
  }

  /**
   * The law of a count of fallen mites.
   *
   * @param mean mites that fall on the board
   * @param spread standard deviation of that mean from colony to colony against it (ratio)
   * @return the law
   */
  static CountLaw falling(double mean, double spread) {
    return spread > 0 ? new NegativeBinomial(mean, 1 / (spread * spread)) : new Poisson(mean);
  }

  private static double times(double x, double logarithm) {
    return x == 0 ? 0 : x * logarithm;
  }

  private static double logChoose(double n, double k) {
    return Gamma.logGamma(n + 1) - Gamma.logGamma(k + 1) - Gamma.logGamma(n - k + 1);
  }

  /**
   * Draws that do not depend on each other.
   *
   * @param n bees or cells looked at
   * @param p probability of each (fraction)
   */
  record Binomial(double n, double p) implements CountLaw {
    @Override
    public double logLikelihood(double x) {
      return x > n
          ? Double.NEGATIVE_INFINITY
          : times(x, StrictMath.log(p)) + times(n - x, StrictMath.log1p(-p));
    }

    @Override
    public double logOfCountAlone(double x) {
      return logChoose(n, x);
    }

    @Override
    public double cumulative(double x) {
      return x >= n ? 1 : 1 - Beta.regularizedBeta(p, x + 1, n - x);
    }

    @Override
    public double mean() {
      return n * p;
    }

    @Override
    public double variance() {
      return n * p * (1 - p);
    }

    @Override
    public double draw(UniformRandomProvider random) {
      int found = 0;
      for (int i = 0; i < n; i++) {
        found += random.nextDouble() < p ? 1 : 0;
      }
      return found;
    }
  }

  /**
   * Draws from one place of several.
   *
   * @param n bees or cells looked at
   * @param p mean probability (fraction, between 0 and 1)
   * @param size sum of the shapes of the beta
   */
  record BetaBinomial(double n, double p, double size) implements CountLaw {
    private static final double UNDERFLOW = -700;

    @Override
    public double logLikelihood(double x) {
      if (x > n) {
        return Double.NEGATIVE_INFINITY;
      }
      double a = p * size;
      double b = (1 - p) * size;
      return Beta.logBeta(x + a, n - x + b) - Beta.logBeta(a, b);
    }

    @Override
    public double logOfCountAlone(double x) {
      return logChoose(n, x);
    }

    @Override
    public double cumulative(double x) {
      double a = p * size;
      double b = (1 - p) * size;
      double none = logLikelihood(0);
      if (none < UNDERFLOW) {
        return summed(x);
      }
      double term = StrictMath.exp(none);
      double sum = term;
      for (int i = 0; i < Math.min(x, n); i++) {
        term *= (n - i) / (i + 1) * (a + i) / (n - i - 1 + b);
        sum += term;
      }
      return Math.min(1, sum);
    }

    private double summed(double x) {
      double sum = 0;
      for (int i = 0; i <= Math.min(x, n); i++) {
        sum += StrictMath.exp(logProbability(i));
      }
      return Math.min(1, sum);
    }

    @Override
    public double mean() {
      return n * p;
    }

    @Override
    public double variance() {
      return n * p * (1 - p) * (size + n) / (size + 1);
    }

    /** One by one: each that was found makes the next likelier (Polya's urn). */
    @Override
    public double draw(UniformRandomProvider random) {
      int found = 0;
      for (int i = 0; i < n; i++) {
        found += random.nextDouble() < (p * size + found) / (size + i) ? 1 : 0;
      }
      return found;
    }
  }

  /**
   * Mites that fall by chance.
   *
   * @param mean mites expected
   */
  record Poisson(double mean) implements CountLaw {
    @Override
    public double logLikelihood(double x) {
      return times(x, StrictMath.log(mean)) - mean;
    }

    @Override
    public double logOfCountAlone(double x) {
      return -Gamma.logGamma(x + 1);
    }

    @Override
    public double cumulative(double x) {
      return mean > 0 ? Gamma.regularizedGammaQ(x + 1, mean) : 1;
    }

    @Override
    public double variance() {
      return mean;
    }

    @Override
    public double draw(UniformRandomProvider random) {
      return mean > 0 ? PoissonSampler.of(random, mean).sample() : 0;
    }
  }

  /**
   * Mites that fall by chance around a mean that differs from colony to colony.
   *
   * @param mean mites expected
   * @param size 1 / squared relative deviation of the mean
   */
  record NegativeBinomial(double mean, double size) implements CountLaw {
    @Override
    public double logLikelihood(double x) {
      return times(x, StrictMath.log(mean / (mean + size))) - size * StrictMath.log1p(mean / size);
    }

    @Override
    public double logOfCountAlone(double x) {
      return Gamma.logGamma(x + size) - Gamma.logGamma(size) - Gamma.logGamma(x + 1);
    }

    @Override
    public double cumulative(double x) {
      return mean > 0 ? Beta.regularizedBeta(size / (size + mean), size, x + 1) : 1;
    }

    @Override
    public double variance() {
      return mean + mean * mean / size;
    }

    @Override
    public double draw(UniformRandomProvider random) {
      if (!(mean > 0)) {
        return 0;
      }
      double expected =
          AhrensDieterMarsagliaTsangGammaSampler.of(random, size, mean / size).sample();
      return expected > 0 ? PoissonSampler.of(random, expected).sample() : 0;
    }
  }

  /**
   * All mites of a colony, as a study finds them.
   *
   * @param median all mites in the model (mites)
   * @param sigma standard deviation of the logarithm (ratio)
   */
  record LogNormal(double median, double sigma) implements CountLaw {
    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);
    private static final double LOG_ROOT_TWO_PI = 0.5 * StrictMath.log(2 * StrictMath.PI);

    @Override
    public double logLikelihood(double x) {
      if (!(median > 0)) {
        return Double.NEGATIVE_INFINITY;
      }
      double z = standard(x);
      return -z * z / 2;
    }

    @Override
    public double logOfCountAlone(double x) {
      return -LOG_ROOT_TWO_PI - StrictMath.log(sigma * x);
    }

    @Override
    public double cumulative(double x) {
      return median > 0 ? NORMAL.cumulativeProbability(standard(x)) : 1;
    }

    @Override
    public double place(double x) {
      return cumulative(x);
    }

    private double standard(double x) {
      return StrictMath.log(x / median) / sigma;
    }

    @Override
    public double mean() {
      return median * StrictMath.exp(sigma * sigma / 2);
    }

    @Override
    public double variance() {
      return mean() * mean() * StrictMath.expm1(sigma * sigma);
    }

    @Override
    public double draw(UniformRandomProvider random) {
      double z = ZigguratSampler.NormalizedGaussian.of(random).sample();
      return median * StrictMath.exp(sigma * z);
    }
  }
}
