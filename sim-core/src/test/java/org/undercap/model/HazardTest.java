package org.undercap.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HazardTest {

  private static double exact(double hazard) {
    return -StrictMath.expm1(-hazard);
  }

  @Test
  void agreesWithTheExponentialEverywhere() {
    for (int i = 0; i <= 600_000; i++) {
      double h = i * 1e-4;
      assertEquals(exact(h), Hazard.fraction(h), 1e-15, () -> "hazard " + h);
    }
  }

  @Test
  void smallHazardsKeepTheirDigits() {
    for (double h = 1e-300; h < 1; h *= 1.37) {
      assertEquals(1, Hazard.fraction(h) / exact(h), 1e-14, "hazard " + h);
    }
  }

  @Test
  void nothingKillsNothingAndTheLargestKillAll() {
    assertEquals(0, Hazard.fraction(0));
    assertEquals(0, Hazard.fraction(Double.MIN_VALUE), Double.MIN_VALUE);
    assertEquals(1, Hazard.fraction(1e300));
    assertEquals(0, Hazard.survival(Double.POSITIVE_INFINITY));
  }

  @Test
  void notANumberStaysOne() {
    assertTrue(Double.isNaN(Hazard.fraction(Double.NaN)));
  }

  @Test
  void neverLeavesTheRangeOfFractions() {
    for (double h = 1; h < 100; h += 0.01) {
      assertTrue(Hazard.fraction(h) <= 1, "hazard " + h);
      assertTrue(Hazard.fraction(h) >= Hazard.fraction(h - 0.01) - 1e-15, "hazard " + h);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-12, 0.1, 0.5, 0.95, 0.999999})
  void hazardOfAFractionKillsThatFraction(double fraction) {
    assertEquals(fraction, Hazard.fraction(Hazard.of(fraction)), 1e-14);
    assertEquals(1 - fraction, Hazard.survival(Hazard.of(fraction)), 1e-14);
  }
}
