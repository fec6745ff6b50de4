package org.undercap.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.undercap.internal.Randoms;

/**
 * Fits find back what made the counts. The truth is drawn from the prior, so a 95 % interval must
 * hold it in 95 of 100 data sets and the mean error must be nothing.
 */
class RecoveryTest {
  private static final double PRIOR_DEVIATION = 0.12;

  @Test
  void aFewDataSets() {
    Tally tally = fit(10);
    assertTrue(tally.inside >= 8, tally.toString());
    assertEquals(0, tally.bias(), 0.06, tally.toString());
  }

  @Test
  @Tag("slow")
  void manyDataSets() {
    Tally tally = fit(200);
    // 95 % of 200 is 190; 183 to 197 holds all but one in 50 of binomial outcomes.
    assertTrue(tally.inside >= 183 && tally.inside <= 197, tally.toString());
    assertEquals(0, tally.bias(), 3 * tally.error(), tally.toString());
    assertTrue(tally.deviation() < 0.8 * PRIOR_DEVIATION, tally.toString());
  }

  private static Tally fit(int dataSets) {
    UniformRandomProvider random = Randoms.of(11, "truths");
    ZigguratSampler.NormalizedGaussian normal = ZigguratSampler.NormalizedGaussian.of(random);
    Tally tally = new Tally();
    for (int i = 0; i < dataSets; i++) {
      double truth = 1 + PRIOR_DEVIATION * normal.sample();
      CountFitResult found =
          CountFit.of(
                  Apiary.counted(truth, Apiary.ERRORS, 100 + i), Apiary.REPRODUCTION, Apiary.ERRORS)
              .run(FitSettings.usual(i).withStarts(1));
      tally.add(truth, found.fit().parameter(Apiary.WORKER));
    }
    return tally;
  }

  private static final class Tally {
    private int n;
    private int inside;
    private double sum;
    private double squares;

    void add(double truth, FittedParameter found) {
      double error = found.value() - truth;
      n++;
      inside += found.low() <= truth && truth <= found.high() ? 1 : 0;
      sum += error;
      squares += error * error;
    }

    double bias() {
      return sum / n;
    }

    double deviation() {
      return StrictMath.sqrt(squares / n - bias() * bias());
    }

    double error() {
      return deviation() / StrictMath.sqrt(n);
    }

    @Override
    public String toString() {
      return inside + " of " + n + " inside, bias " + bias() + ", deviation " + deviation();
    }
  }
}
