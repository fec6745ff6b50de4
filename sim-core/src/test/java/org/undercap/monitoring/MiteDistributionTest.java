package org.undercap.monitoring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class MiteDistributionTest {
  private static final double[] DECADES = {1, 10, 100, 1000};

  private static MiteDistribution flat() {
    return MiteDistribution.of(DECADES, new double[] {1, 1, 1, 1}, 1);
  }

  @Test
  void equalWeightsAreFlatInTheLogarithm() {
    MiteDistribution flat = flat();
    assertEquals(Math.sqrt(1000), flat.median(), 1e-9);
    assertEquals(Math.sqrt(0.1), flat.quantile(0), 1e-9);
    assertEquals(Math.sqrt(10) * 1000, flat.quantile(1), 1e-6);
    assertEquals(10, flat.quantile(0.375), 1e-9);
    assertEquals(0.375, flat.cumulative(10), 1e-12);
    assertEquals(0, flat.cumulative(0.01));
    assertEquals(1, flat.cumulative(1e6));
  }

  @Test
  void cellsAddUpToOneBetweenRisingEdges() {
    double[] edges = flat().edges();
    double[] masses = flat().masses();
    assertEquals(edges.length - 1, masses.length);
    assertEquals(1, Arrays.stream(masses).sum(), 1e-12);
    for (int cell = 0; cell < masses.length; cell++) {
      assertTrue(edges[cell] < edges[cell + 1]);
    }
  }

  /** Half way between values on the logarithmic scale, whatever cells that cuts. */
  @Test
  void weightsReachHalfWayToTheNeighbours() {
    MiteDistribution uneven =
        MiteDistribution.of(new double[] {1, 7, 100}, new double[] {1, 2, 5}, 1);
    assertEquals(1 / Math.sqrt(7), uneven.quantile(0), 1e-9);
    assertEquals(100 * Math.sqrt(100 / 7.0), uneven.quantile(1), 1e-6);
    assertEquals(0.125, uneven.cumulative(Math.sqrt(7)), 3e-3);
    assertEquals(0.375, uneven.cumulative(Math.sqrt(700)), 3e-3);
    assertEquals(0.0625, uneven.cumulative(1), 3e-3);
    assertEquals(7, uneven.quantile(0.125 + 0.25 * Math.log(7 / Math.sqrt(7)) / Math.log(10)), 0.2);
    for (double u = 0.01; u < 1; u += 0.07) {
      assertEquals(u, uneven.cumulative(uneven.quantile(u)), 1e-9);
    }
    Interval half = uneven.interval(0.5);
    assertEquals(uneven.quantile(0.25), half.low(), 1e-12);
    assertEquals(uneven.quantile(0.75), half.high(), 1e-12);
    assertTrue(half.contains(half.low()) && half.contains(half.high()));
    assertFalse(half.contains(half.low() * 0.999) || half.contains(half.high() * 1.001));
    assertFalse(half.contains(Double.NaN));
    Interval most = uneven.interval(0.95);
    assertEquals(Math.log(most.high() / most.low()), uneven.logWidth(), 1e-12);
  }

  @Test
  void rowsAreMixed() {
    double[] values = {1, 100, 10, 1000, 100, 10_000};
    MiteDistribution mixed = MiteDistribution.of(values, new double[] {1, 1, 1, 1, 1, 1}, 2);
    assertEquals(100, mixed.median(), 1e-6);
    MiteDistribution second = MiteDistribution.of(values, new double[] {0, 1, 0, 1, 0, 1}, 2);
    assertEquals(1000, second.median(), 1e-6);
  }

  @Test
  void numbersWithoutWeightMayBeMissing() {
    MiteDistribution left =
        MiteDistribution.of(new double[] {1, 10, Double.NaN}, new double[] {1, 1, 0}, 1);
    assertEquals(Math.sqrt(10), left.median(), 0.2);
  }

  @Test
  void probabilitiesOutOfRangeAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> flat().quantile(1.01));
    assertThrows(IllegalArgumentException.class, () -> flat().quantile(Double.NaN));
  }
}
