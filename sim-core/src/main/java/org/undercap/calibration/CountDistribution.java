package org.undercap.calibration;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.special.Gamma;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.AhrensDieterMarsagliaTsangGammaSampler;
import org.apache.commons.rng.sampling.distribution.PoissonSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/** What a count may find if the model is right. */
sealed interface CountDistribution {
  /** Logarithm of the probability (of the density, for a total). */
  double logProbability(double found);

  /** Share of the outcomes below, with half of those that are the same. */
  double place(double found);

  double mean();

  double variance();

  double draw(UniformRandomProvider random);

  private static double logChoose(double n, double k) {
    return Gamma.logGamma(n + 1) - Gamma.logGamma(k + 1) - Gamma.logGamma(n - k + 1);
  }

  private static double logBeta(double a, double b) {
    return Gamma.logGamma(a) + Gamma.logGamma(b) - Gamma.logGamma(a + b);
  }

  private static double sumOfProbabilities(CountDistribution d, double found) {
    double sum = 0;
    for (int k = 0; k < found; k++) {
      sum += StrictMath.exp(d.logProbability(k));
    }
    return Math.min(1, sum + StrictMath.exp(d.logProbability(found)) / 2);
  }

  private static double timesLog(double x, double y) {
    return x == 0 ? 0 : x * StrictMath.log(y);
  }

  /**
   * Members of a sample with a mark: binomial, or beta-binomial where they are alike.
   *
   * @param size size of the sample
   * @param share expected share with the mark
   * @param alike correlation of the members, 0 for binomial
   */
  record Sample(int size, double share, double alike) implements CountDistribution {
    @Override
    public double logProbability(double found) {
      if (found > size || share <= 0 || share >= 1) {
        double certain = share >= 1 ? size : 0;
        return found == certain ? 0 : Double.NEGATIVE_INFINITY;
      }
      if (alike == 0) {
        return logChoose(size, found)
            + timesLog(found, share)
            + (size - found) * StrictMath.log1p(-share);
      }
      double a = share * (1 - alike) / alike;
      double b = (1 - share) * (1 - alike) / alike;
      return logChoose(size, found) + logBeta(found + a, size - found + b) - logBeta(a, b);
    }

    @Override
    public double place(double found) {
      return sumOfProbabilities(this, found);
    }

    @Override
    public double mean() {
      return size * share;
    }

    @Override
    public double variance() {
      return size * share * (1 - share) * (1 + (size - 1) * alike);
    }

    /** Member by member: each mark makes the next one likelier (Polya's urn). */
    @Override
    public double draw(UniformRandomProvider random) {
      int marked = 0;
      for (int i = 0; i < size; i++) {
        double chance = (share * (1 - alike) + marked * alike) / (1 - alike + i * alike);
        if (random.nextDouble() < chance) {
          marked++;
        }
      }
      return marked;
    }
  }

  /**
   * Mites on a board: Poisson, or negative binomial.
   *
   * @param mean expected mites
   * @param beyond variance beyond Poisson as a share of the squared mean, 0 for Poisson
   */
  record Fall(double mean, double beyond) implements CountDistribution {
    @Override
    public double logProbability(double found) {
      if (!(mean > 0)) {
        return found == 0 ? 0 : Double.NEGATIVE_INFINITY;
      }
      if (beyond == 0) {
        return timesLog(found, mean) - mean - Gamma.logGamma(found + 1);
      }
      double size = 1 / beyond;
      return Gamma.logGamma(found + size)
          - Gamma.logGamma(size)
          - Gamma.logGamma(found + 1)
          - size * StrictMath.log1p(mean * beyond)
          + timesLog(found, mean * beyond / (1 + mean * beyond));
    }

    @Override
    public double place(double found) {
      return sumOfProbabilities(this, found);
    }

    @Override
    public double variance() {
      return mean + beyond * mean * mean;
    }

    @Override
    public double draw(UniformRandomProvider random) {
      if (!(mean > 0)) {
        return 0;
      }
      double expected =
          beyond == 0
              ? mean
              : AhrensDieterMarsagliaTsangGammaSampler.of(random, 1 / beyond, mean * beyond)
                  .sample();
      return expected > 0 ? PoissonSampler.of(random, expected).sample() : 0;
    }
  }

  /**
   * All mites: lognormal.
   *
   * @param median all mites in the model
   * @param sigma standard deviation of the logarithm
   */
  record Total(double median, double sigma) implements CountDistribution {
    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);
    private static final double LOG_ROOT_TWO_PI = 0.5 * StrictMath.log(2 * StrictMath.PI);

    @Override
    public double logProbability(double found) {
      if (!(median > 0)) {
        return Double.NEGATIVE_INFINITY;
      }
      double z = standard(found);
      return -z * z / 2 - LOG_ROOT_TWO_PI - StrictMath.log(sigma * found);
    }

    @Override
    public double place(double found) {
      return median > 0 ? NORMAL.cumulativeProbability(standard(found)) : 1;
    }

    private double standard(double found) {
      return StrictMath.log(found / median) / sigma;
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
