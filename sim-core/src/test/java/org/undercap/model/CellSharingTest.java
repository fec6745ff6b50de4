package org.undercap.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;

/** Against sums over cells with 0, 1, 2, .. mothers, mother by mother. */
class CellSharingTest {
  private static final int TERMS = 400;
  private static final double[] WORKER = ParameterSet.shipped().values(ParameterId.CROWDING_WORKER);
  private static final double[] DRONE = ParameterSet.shipped().values(ParameterId.CROWDING_DRONE);

  /** Means of mothers a cell from none to many; all at once, as colonies side by side. */
  private static final double[] MEANS = {0, 1e-12, 1e-6, 0.01, 0.1, 0.5, 1, 2, 3.7, 5, 8};

  /** Share of the cells with n mothers, for each n. */
  private static double[] cells(double mean, double k) {
    boolean poisson = k == Double.POSITIVE_INFINITY;
    double[] share = new double[TERMS];
    share[0] = poisson ? StrictMath.exp(-mean) : StrictMath.pow(k / (k + mean), k);
    for (int n = 0; n + 1 < TERMS; n++) {
      double ratio = poisson ? mean : (k + n) * mean / (k + mean);
      share[n + 1] = share[n] * ratio / (n + 1);
    }
    return share;
  }

  /** Crowding factor of the average mother: each cell counts as often as it has mothers. */
  private static double crowding(double mean, double k, double[] factors) {
    if (mean == 0) {
      return factors[0];
    }
    double[] share = cells(mean, k);
    double sum = 0;
    for (int n = 1; n < TERMS; n++) {
      sum += n * share[n] * factors[Math.min(n, factors.length) - 1];
    }
    return sum / mean;
  }

  private static void compare(double k, double[] factors) {
    double[] infested = new double[MEANS.length];
    double[] single = new double[MEANS.length];
    double[] crowding = new double[MEANS.length];
    CellSharing.of(k, factors).share(MEANS, infested, single, crowding);
    for (int i = 0; i < MEANS.length; i++) {
      String where = "mean " + MEANS[i] + ", k " + k;
      double[] share = cells(MEANS[i], k);
      double some = Arrays.stream(share).skip(1).sum();
      assertEquals(some, infested[i], 1e-10, where);
      assertEquals(share[1], single[i], 1e-10, where);
      assertEquals(crowding(MEANS[i], k, factors), crowding[i], 1e-10, where);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 2, 3, 4, 5, 0.7, 1.5, 2.31, 16, 17, 40.5, Double.POSITIVE_INFINITY})
  void meansAgreeWithSumsOverCells(double dispersion) {
    compare(dispersion, WORKER);
    compare(dispersion, DRONE);
  }

  @Test
  void oneFactorForAllIsThatFactor() {
    double[] infested = new double[1];
    double[] single = new double[1];
    double[] crowding = new double[1];
    CellSharing.of(2, new double[] {0.8}).share(new double[] {3}, infested, single, crowding);
    assertEquals(0.8, crowding[0]);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.NEGATIVE_INFINITY})
  void refusesOtherDispersions(double dispersion) {
    assertThrows(IllegalArgumentException.class, () -> CellSharing.of(dispersion, WORKER));
  }
}
