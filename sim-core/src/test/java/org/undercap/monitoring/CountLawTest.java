package org.undercap.monitoring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CountLawTest {
  static List<CountLaw> laws() {
    return List.of(
        CountLaw.among(40, 0.07, 0),
        CountLaw.among(40, 0.07, 0.4),
        CountLaw.falling(6.5, 0),
        CountLaw.falling(6.5, 0.3));
  }

  /** Probabilities from differences of the cumulative, which come from special functions. */
  private static double probability(CountLaw law, int x) {
    return law.cumulative(x) - (x > 0 ? law.cumulative(x - 1.0) : 0);
  }

  @ParameterizedTest
  @MethodSource("laws")
  void probabilitiesAddUpToOneAndHaveTheMean(CountLaw law) {
    double sum = 0;
    double mean = 0;
    for (int x = 0; x <= 40; x++) {
      sum += probability(law, x);
      mean += x * probability(law, x);
    }
    assertEquals(1, sum, 1e-9);
    assertEquals(law.mean(), mean, 1e-6);
  }

  @ParameterizedTest
  @MethodSource("laws")
  void ratioOfLikelihoodsAtTwoMeansIsThatOfProbabilities(CountLaw law) {
    CountLaw other =
        law instanceof CountLaw.Binomial
            ? CountLaw.among(40, 0.1, 0)
            : law instanceof CountLaw.BetaBinomial
                ? new CountLaw.BetaBinomial(40, 0.1, 20)
                : law instanceof CountLaw.Poisson
                    ? CountLaw.falling(4, 0)
                    : CountLaw.falling(4, 0.3);
    for (int x = 0; x < 12; x++) {
      assertEquals(
          Math.log(probability(law, x) / probability(other, x)),
          law.logLikelihood(x) - other.logLikelihood(x),
          1e-6);
    }
  }

  @Test
  void spreadWidensAndKeepsTheMean() {
    double plain = variance(CountLaw.among(300, 0.04, 0), 300);
    double wide = variance(CountLaw.among(300, 0.04, 0.3), 300);
    assertEquals(300 * 0.04 * 0.96, plain, 1e-6);
    // n p (1-p) (1 + (n-1) / (size + 1)) with size + 1 = 1 / (0.3^2 0.04)
    assertEquals(300 * 0.04 * 0.96 * (1 + 299 * 0.09 * 0.04), wide, 1e-6);
    assertEquals(10 + 10 * 10 * 0.09, variance(CountLaw.falling(10, 0.3), 200), 1e-6);
  }

  private static double variance(CountLaw law, int most) {
    double sum = 0;
    for (int x = 0; x <= most; x++) {
      sum += (x - law.mean()) * (x - law.mean()) * probability(law, x);
    }
    return sum;
  }

  @Test
  void endsAreExact() {
    assertEquals(0, CountLaw.among(300, 0, 0).logLikelihood(0));
    assertEquals(Double.NEGATIVE_INFINITY, CountLaw.among(300, 0, 0).logLikelihood(1));
    assertEquals(0, CountLaw.among(300, 1, 0.2).logLikelihood(300));
    assertEquals(1, CountLaw.among(300, 0.5, 0).cumulative(300));
    assertEquals(1, CountLaw.falling(0, 0.3).cumulative(0));
  }

  /**
   * Where no mite at all has a probability too small for a number, the law is summed one by one.
   */
  @Test
  void largeSamplesAreNearlyNormal() {
    CountLaw law = new CountLaw.BetaBinomial(5_000, 0.3, 100_000);
    double sd = Math.sqrt(law.variance());
    for (double z : new double[] {-2, -1, 0, 1, 2}) {
      double x = Math.rint(law.mean() + z * sd);
      double expected = new NormalDistribution(law.mean(), sd).cumulativeProbability(x + 0.5);
      assertEquals(expected, law.cumulative(x), 2e-3, "at " + x);
    }
    assertEquals(1, law.cumulative(5_000), 1e-9);
    assertEquals(1, law.cumulative(6_000), 1e-9);
    assertEquals(Double.NEGATIVE_INFINITY, law.logLikelihood(5_001));
    assertTrue(Double.isFinite(law.logLikelihood(5_000)));
  }

  @Test
  void lawsOfCountsThatAreAlikeKeepTheirCorrelation() {
    // variance of n draws with correlation r: n p (1-p) (1 + (n-1) r)
    CountLaw law = CountLaw.alike(200, 0.05, 0.02);
    assertEquals(200 * 0.05 * 0.95 * (1 + 199 * 0.02), law.variance(), 1e-9);
    assertEquals(law.variance(), variance(law, 200), 1e-6);
    for (double p : new double[] {0, 1}) {
      assertEquals(new CountLaw.Binomial(200, p), CountLaw.alike(200, p, 0.02));
      assertEquals(new CountLaw.Binomial(200, p), CountLaw.among(200, p, 0.3));
    }
    assertEquals(new CountLaw.Binomial(200, 0.1), CountLaw.alike(200, 0.1, 0));
    assertEquals(new CountLaw.Binomial(200, 0.1), CountLaw.among(200, 0.1, 0));
    assertEquals(new CountLaw.Poisson(3), CountLaw.falling(3, 0));
  }

  @Test
  void aCountStandsInTheMiddleOfThoseThatAreTheSame() {
    CountLaw law = new CountLaw.Poisson(2);
    assertEquals(Math.exp(-2) / 2, law.place(0), 1e-12);
    assertEquals(Math.exp(-2) * 2, law.place(1), 1e-12);
    assertEquals(Math.exp(-2) * (3 + 1), law.place(2), 1e-12);
    CountLaw study = new CountLaw.LogNormal(100, 0.5);
    assertEquals(0.5, study.place(100), 1e-12);
    assertEquals(1, new CountLaw.LogNormal(0, 0.5).place(3));
    assertEquals(Double.NEGATIVE_INFINITY, new CountLaw.LogNormal(0, 0.5).logLikelihood(3));
    assertEquals(100 * Math.exp(0.125), study.mean(), 1e-9);
    assertEquals(
        10_000 * Math.exp(0.25) * (Math.exp(0.25) - 1), study.variance(), 1e-6, "log-normal");
  }

  @Test
  void mixtureFindsItsQuantilesAndTails() {
    CountMixture mixture =
        new CountMixture(List.of(new CountLaw.Poisson(2), new CountLaw.Poisson(8)));
    assertEquals(5, mixture.mean(), 1e-12);
    int q = mixture.quantile(0.9);
    assertTrue(mixture.cumulative(q) >= 0.9 && mixture.cumulative(q - 1.0) < 0.9);
    assertEquals(0, mixture.quantile(0.05));
    assertEquals(2 * (1 - mixture.cumulative(19)), mixture.asFarOut(20), 1e-12);
    assertThrows(IllegalArgumentException.class, () -> new CountMixture(List.of()));
  }
}
