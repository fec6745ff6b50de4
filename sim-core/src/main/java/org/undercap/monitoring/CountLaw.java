package org.undercap.monitoring;

import org.apache.commons.math3.special.Beta;
import org.apache.commons.math3.special.Gamma;

/**
 * How likely each count is, if the colony is known.
 *
 * <p>A wash is binomial, or beta-binomial where the places of a hive differ; a board is Poisson, or
 * negative binomial where colonies differ; opened cells are binomial.
 */
sealed interface CountLaw {
  /**
   * Logarithm of the probability of a count, without the terms that depend on the count alone.
   *
   * @param x the count
   */
  double logLikelihood(double x);

  /**
   * Probability of a count of at most x.
   *
   * @param x a whole number, at least 0
   */
  double cumulative(double x);

  /** Mean count. */
  double mean();

  /**
   * The law of a count of mites or infested cells among some of them.
   *
   * @param n bees or cells looked at
   * @param p probability that one of them has a mite that is found (fraction)
   * @param spread standard deviation of {@code p} against its mean, for a small {@code p} (ratio)
   */
  static CountLaw among(double n, double p, double spread) {
    return spread > 0 && p > 0 && p < 1
        ? new BetaBinomial(n, p, 1 / (spread * spread * p) - 1)
        : new Binomial(n, p);
  }

  /**
   * The law of a count of fallen mites.
   *
   * @param mean mites that fall on the board
   * @param spread standard deviation of that mean from colony to colony against it (ratio)
   */
  static CountLaw falling(double mean, double spread) {
    return spread > 0 ? new NegativeBinomial(mean, 1 / (spread * spread)) : new Poisson(mean);
  }

  private static double times(double x, double logarithm) {
    return x == 0 ? 0 : x * logarithm;
  }

  /** Draws that do not depend on each other. */
  record Binomial(double n, double p) implements CountLaw {
    @Override
    public double logLikelihood(double x) {
      return times(x, StrictMath.log(p)) + times(n - x, StrictMath.log1p(-p));
    }

    @Override
    public double cumulative(double x) {
      return x >= n ? 1 : 1 - Beta.regularizedBeta(p, x + 1, n - x);
    }

    @Override
    public double mean() {
      return n * p;
    }
  }

  /** Draws from one place of several; {@code size} is the sum of the shapes of the beta. */
  record BetaBinomial(double n, double p, double size) implements CountLaw {
    @Override
    public double logLikelihood(double x) {
      double a = p * size;
      double b = (1 - p) * size;
      return Beta.logBeta(x + a, n - x + b) - Beta.logBeta(a, b);
    }

    @Override
    public double cumulative(double x) {
      double a = p * size;
      double b = (1 - p) * size;
      double term = StrictMath.exp(logLikelihood(0));
      double sum = term;
      for (int i = 0; i < Math.min(x, n); i++) {
        term *= (n - i) / (i + 1) * (a + i) / (n - i - 1 + b);
        sum += term;
      }
      return Math.min(1, sum);
    }

    @Override
    public double mean() {
      return n * p;
    }
  }

  /** Mites that fall by chance. */
  record Poisson(double mean) implements CountLaw {
    @Override
    public double logLikelihood(double x) {
      return times(x, StrictMath.log(mean)) - mean;
    }

    @Override
    public double cumulative(double x) {
      return mean > 0 ? Gamma.regularizedGammaQ(x + 1, mean) : 1;
    }
  }

  /** Mites that fall by chance around a mean that differs from colony to colony. */
  record NegativeBinomial(double mean, double size) implements CountLaw {
    @Override
    public double logLikelihood(double x) {
      return times(x, StrictMath.log(mean / (mean + size))) - size * StrictMath.log1p(mean / size);
    }

    @Override
    public double cumulative(double x) {
      return mean > 0 ? Beta.regularizedBeta(size / (size + mean), size, x + 1) : 1;
    }
  }
}
