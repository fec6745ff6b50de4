package org.undercap.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class WinterRiskTest {
  private final WinterRisk risk = WinterRisk.shipped();

  @Test
  void withoutMitesOnlyTheBackgroundDies() {
    assertEquals(risk.background(), risk.lost(0));
  }

  @Test
  void halfOfTheOthersDieAtTheHalfPoint() {
    assertEquals((1 + risk.background()) / 2, risk.lost(risk.half()), 1e-15);
  }

  @Test
  void risesWithMites() {
    for (double x = 0; x < 50; x++) {
      assertTrue(risk.lost(x + 1) > risk.lost(x));
    }
    assertTrue(risk.lost(1e9) <= 1);
  }

  @Test
  void bandLiesAroundTheCurve() {
    for (double x = 1; x < 50; x++) {
      assertTrue(WinterRisk.best().lost(x) < risk.lost(x));
      assertTrue(WinterRisk.worst().lost(x) > risk.lost(x));
    }
  }

  @Test
  void inverse() {
    for (double x : new double[] {0, 0.1, 1, 10, 100}) {
      assertEquals(x, risk.mitesPer100BeesAt(risk.lost(x)), 1e-9 * Math.max(1, x));
    }
  }

  @Test
  void refusesWhatCannotBe() {
    assertThrows(IllegalArgumentException.class, () -> risk.lost(-1));
    assertThrows(IllegalArgumentException.class, () -> risk.lost(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> risk.mitesPer100BeesAt(1));
    assertThrows(IllegalArgumentException.class, () -> risk.mitesPer100BeesAt(0.01));
    assertThrows(IllegalArgumentException.class, () -> new WinterRisk(1, 10, 1));
    assertThrows(IllegalArgumentException.class, () -> new WinterRisk(0, 0, 1));
    assertThrows(IllegalArgumentException.class, () -> new WinterRisk(0, 1, Double.NaN));
  }
}
