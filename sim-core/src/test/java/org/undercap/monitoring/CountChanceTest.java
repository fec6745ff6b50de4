package org.undercap.monitoring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.math3.distribution.LogNormalDistribution;
import org.apache.commons.math3.distribution.PascalDistribution;
import org.apache.commons.math3.distribution.PoissonDistribution;
import org.apache.commons.rng.UniformRandomProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercap.internal.Randoms;

class CountChanceTest {

  static List<CountLaw> counted() {
    return List.of(
        CountLaw.alike(300, 0.03, 0),
        CountLaw.alike(300, 0.03, 0.02),
        CountLaw.alike(20, 0.9, 0.3),
        CountLaw.falling(3.2, 0),
        CountLaw.falling(250, 0),
        CountLaw.falling(40, StrictMath.sqrt(0.3)));
  }

  @ParameterizedTest
  @MethodSource("counted")
  void probabilitiesAddUpToOneWithTheMeanAndVarianceStated(CountLaw d) {
    double sum = 0;
    double mean = 0;
    double squares = 0;
    for (int k = 0; k < 1500; k++) {
      double p = StrictMath.exp(d.logProbability(k));
      sum += p;
      mean += k * p;
      squares += (double) k * k * p;
    }
    assertEquals(1, sum, 1e-9);
    assertEquals(d.mean(), mean, 1e-7 * d.mean());
    assertEquals(d.variance(), squares - mean * mean, 1e-5 * d.variance());
  }

  @ParameterizedTest
  @MethodSource("counted")
  void drawsHaveThatMeanAndVarianceAndEvenPlaces(CountLaw d) {
    UniformRandomProvider random = Randoms.of(3, "test");
    int n = 4000;
    double sum = 0;
    double squares = 0;
    int below = 0;
    for (int i = 0; i < n; i++) {
      double x = d.draw(random);
      sum += x;
      squares += x * x;
      below += d.place(x) < 0.25 ? 1 : 0;
    }
    double mean = sum / n;
    assertEquals(d.mean(), mean, 4 * StrictMath.sqrt(d.variance() / n));
    assertEquals(1, (squares / n - mean * mean) / d.variance(), 0.15);
    assertEquals(0.25, (double) below / n, 0.12);
  }

  @Test
  void valuesAgreeWithOtherCode() {
    assertEquals(
        new BinomialDistribution(null, 300, 0.03).logProbability(7),
        CountLaw.alike(300, 0.03, 0).logProbability(7),
        1e-10);
    assertEquals(
        new PoissonDistribution(12.5).logProbability(9),
        CountLaw.falling(12.5, 0).logProbability(9),
        1e-10);
    // A negative binomial of size 4 and mean 10 counts failures before the fourth success.
    assertEquals(
        new PascalDistribution(null, 4, 4.0 / 14).logProbability(6),
        CountLaw.falling(10, StrictMath.sqrt(0.25)).logProbability(6),
        1e-10);
    assertEquals(
        new LogNormalDistribution(null, StrictMath.log(500), 0.3, 1e-9).logDensity(650),
        new CountLaw.LogNormal(500, 0.3).logProbability(650),
        1e-10);
    assertEquals(0.5, new CountLaw.LogNormal(500, 0.3).place(500), 1e-12);
    assertEquals(
        new LogNormalDistribution(null, StrictMath.log(500), 0.3, 1e-9).getNumericalVariance(),
        new CountLaw.LogNormal(500, 0.3).variance(),
        1e-6);
  }

  @Test
  void littleOverdispersionIsAlmostNone() {
    assertEquals(
        CountLaw.alike(300, 0.03, 0).logProbability(7),
        CountLaw.alike(300, 0.03, 1e-7).logProbability(7),
        1e-3);
    assertEquals(
        CountLaw.falling(30, 0).logProbability(33),
        CountLaw.falling(30, StrictMath.sqrt(1e-7)).logProbability(33),
        1e-3);
  }

  @Test
  void bordersAreCertain() {
    assertEquals(0, CountLaw.alike(300, 0, 0).logProbability(0));
    assertEquals(Double.NEGATIVE_INFINITY, CountLaw.alike(300, 0, 0).logProbability(1));
    assertEquals(0, CountLaw.alike(300, 1, 0.1).logProbability(300));
    assertEquals(Double.NEGATIVE_INFINITY, CountLaw.alike(10, 0.5, 0).logProbability(11));
    assertEquals(0, CountLaw.falling(0, StrictMath.sqrt(0.2)).logProbability(0));
    assertEquals(Double.NEGATIVE_INFINITY, CountLaw.falling(0, 0).logProbability(2));
    assertEquals(Double.NEGATIVE_INFINITY, new CountLaw.LogNormal(0, 1).logProbability(5));
    assertEquals(1, new CountLaw.LogNormal(0, 1).place(5));
    assertEquals(0.5, CountLaw.alike(300, 0, 0).place(0), 1e-12);
    UniformRandomProvider random = Randoms.of(1, "test");
    assertEquals(0, CountLaw.falling(0, 0).draw(random));
    assertEquals(0, CountLaw.alike(50, 0, 0).draw(random));
    assertTrue(new CountLaw.LogNormal(10, 0.1).draw(random) > 5);
  }
}
