package org.undercap.monitoring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.math3.distribution.PoissonDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExactIntervalsTest {
  /** The ends are the shares under which so few, or so many, are found in half of the misses. */
  @ParameterizedTest
  @CsvSource({"1, 10, 0.95", "9, 300, 0.95", "15, 212, 0.8", "150, 300, 0.99", "299, 300, 0.95"})
  void clopperPearsonMeetsItsDefinition(int hits, int of, double level) {
    Interval share = ExactIntervals.clopperPearson(hits, of, level);
    double tail = (1 - level) / 2;
    double asMany =
        1 - new BinomialDistribution(null, of, share.low()).cumulativeProbability(hits - 1);
    double asFew = new BinomialDistribution(null, of, share.high()).cumulativeProbability(hits);
    assertEquals(tail, asMany, 1e-9);
    assertEquals(tail, asFew, 1e-9);
  }

  @Test
  void clopperPearsonAtTheEnds() {
    Interval none = ExactIntervals.clopperPearson(0, 300, 0.95);
    assertEquals(0, none.low());
    assertEquals(1 - Math.pow(0.025, 1 / 300.0), none.high(), 1e-12);
    Interval all = ExactIntervals.clopperPearson(300, 300, 0.95);
    assertEquals(Math.pow(0.025, 1 / 300.0), all.low(), 1e-12);
    assertEquals(1, all.high());
  }

  @ParameterizedTest
  @CsvSource({"1, 0.95", "3, 0.9", "45, 0.95", "400, 0.8"})
  void garwoodMeetsItsDefinition(int count, double level) {
    Interval mean = ExactIntervals.garwood(count, level);
    double tail = (1 - level) / 2;
    assertEquals(
        tail, 1 - new PoissonDistribution(mean.low()).cumulativeProbability(count - 1), 1e-9);
    assertEquals(tail, new PoissonDistribution(mean.high()).cumulativeProbability(count), 1e-9);
  }

  @Test
  void garwoodOfNothing() {
    Interval mean = ExactIntervals.garwood(0, 0.95);
    assertEquals(0, mean.low());
    assertEquals(-Math.log(0.025), mean.high(), 1e-9);
  }

  @Test
  void smallestSampleIsTheSmallest() {
    for (double share : new double[] {0.01, 0.05, 0.3}) {
      int bees = ExactIntervals.sampleToMeetOne(share, 0.95);
      assertTrue(1 - Math.pow(1 - share, bees) >= 0.95);
      assertFalse(1 - Math.pow(1 - share, bees - 1) >= 0.95);
    }
  }

  @Test
  void refusesWhatIsNoCount() {
    assertThrows(IllegalArgumentException.class, () -> ExactIntervals.clopperPearson(5, 4, 0.95));
    assertThrows(IllegalArgumentException.class, () -> ExactIntervals.clopperPearson(-1, 4, 0.95));
    assertThrows(IllegalArgumentException.class, () -> ExactIntervals.clopperPearson(0, 0, 0.95));
    assertThrows(IllegalArgumentException.class, () -> ExactIntervals.garwood(-1, 0.95));
    assertThrows(IllegalArgumentException.class, () -> ExactIntervals.garwood(1, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> ExactIntervals.garwood(1, 1));
    assertThrows(IllegalArgumentException.class, () -> ExactIntervals.sampleToMeetOne(0, 0.95));
    assertThrows(IllegalArgumentException.class, () -> new Interval(1, 0));
    assertThrows(IllegalArgumentException.class, () -> new Interval(Double.NaN, 0));
  }
}
