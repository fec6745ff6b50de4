package org.undercap.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DayEffectsTest {

  private static DayEffects today() {
    DayEffects effects = new DayEffects(2);
    effects.clear();
    return effects;
  }

  @Test
  void hazardsAddAndFactorsMultiply() {
    DayEffects effects = today();
    effects.killMites(1, 0.2, 0.1);
    effects.killMites(1, 0.3, 0);
    effects.harmBees(1, 0.01, 0.02, 0.03);
    effects.harmBees(1, 0.01, 0.02, 0.03);
    effects.slowLaying(1, 0.5);
    effects.slowLaying(1, 0.4);
    effects.changeDroneShare(1, 2);
    effects.changeDroneShare(1, 3);
    effects.remove(1, 0.5, 0.2, 0.1);
    effects.remove(1, 0.5, 0.5, 0);
    assertEquals(0.5, effects.hazardOnBees(1));
    assertEquals(0.1, effects.hazardInCells(1));
    assertEquals(0.02, effects.adultHazard[1]);
    assertEquals(0.04, effects.openBroodHazard[1]);
    assertEquals(0.06, effects.sealedBroodHazard[1]);
    assertEquals(0.2, effects.layingFactor[1]);
    assertEquals(6, effects.droneFactor[1]);
    assertEquals(0.25, effects.workerBroodLeft[1]);
    assertEquals(0.4, effects.droneBroodLeft[1]);
    assertEquals(0.9, effects.adultsLeft[1]);
  }

  @Test
  void otherColoniesAreNotTouched() {
    DayEffects effects = today();
    effects.killMites(1, 0.2, 0.1);
    effects.remove(1, 1, 1, 1);
    assertEquals(0, effects.hazardOnBees(0));
    assertEquals(1, effects.adultsLeft[0]);
  }

  @Test
  void layingIsKeptAtTheLargestFloor() {
    DayEffects effects = today();
    effects.keepLaying(0, 100);
    effects.keepLaying(0, 300);
    effects.keepLaying(0, 200);
    assertEquals(300, effects.layingFloor[0]);
  }

  @Test
  void theNextDayStartsAnew() {
    DayEffects effects = today();
    effects.killMites(0, 0.2, 0.1);
    effects.remove(0, 1, 1, 1);
    effects.keepLaying(0, 100);
    assertTrue(effects.any() && effects.inCells && effects.removal);
    effects.clear();
    assertFalse(effects.any() || effects.inCells || effects.removal || effects.onBrood);
    assertEquals(0, effects.hazardOnBees(0));
    assertEquals(0, effects.layingFloor[0]);
    assertEquals(1, effects.workerBroodLeft[0]);
  }

  @Test
  void onlyWhatHarmsIsLookedAt() {
    DayEffects effects = today();
    effects.killMites(0, 0.2, 0);
    effects.harmBees(0, 0, 0, 0);
    assertFalse(effects.onAdults || effects.inCells || effects.onBrood);
    effects.harmBees(0, 0, 0, 0.1);
    assertTrue(effects.inCells);
    assertFalse(effects.onAdults || effects.onBrood);
    effects.harmBees(0, 0, 0.1, 0);
    assertTrue(effects.onBrood);
    assertFalse(effects.onAdults);
    effects.harmBees(0, 0.1, 0, 0);
    assertTrue(effects.onAdults);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1e-9, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesImpossibleHazardsAndFactors(double bad) {
    DayEffects effects = today();
    assertThrows(IllegalArgumentException.class, () -> effects.killMites(0, bad, 0));
    assertThrows(IllegalArgumentException.class, () -> effects.killMites(0, 0, bad));
    assertThrows(IllegalArgumentException.class, () -> effects.harmBees(0, bad, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> effects.harmBees(0, 0, bad, 0));
    assertThrows(IllegalArgumentException.class, () -> effects.harmBees(0, 0, 0, bad));
    assertThrows(IllegalArgumentException.class, () -> effects.slowLaying(0, bad));
    assertThrows(IllegalArgumentException.class, () -> effects.keepLaying(0, bad));
    assertThrows(IllegalArgumentException.class, () -> effects.changeDroneShare(0, bad));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1e-9, 1 + 1e-9, Double.NaN})
  void refusesImpossibleShares(double bad) {
    DayEffects effects = today();
    assertThrows(IllegalArgumentException.class, () -> effects.remove(0, bad, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> effects.remove(0, 0, bad, 0));
    IllegalArgumentException error =
        assertThrows(IllegalArgumentException.class, () -> effects.remove(0, 0, 0, bad));
    assertEquals("share of adult bees removed " + bad + " must be in [0, 1]", error.getMessage());
  }
}
