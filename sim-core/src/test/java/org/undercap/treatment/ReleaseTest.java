package org.undercap.treatment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Expected values were worked out by hand from the formulas. */
class ReleaseTest {

  @Test
  void pulseActsOnItsDaysOnly() {
    Release pulse = new Release.Pulse(List.of(0.7, 0.2, 0.1));
    assertEquals(3, pulse.days());
    assertEquals(0.7, pulse.at(0));
    assertEquals(0.2, pulse.at(1));
    assertEquals(0.1, pulse.at(2));
    assertEquals(0, pulse.at(3));
  }

  @ParameterizedTest
  @CsvSource({"0, 0.632120559", "10, 0.499991649", "20, 0.25", "27, 0.153893052", "28, 0"})
  void decayWithLagRisesThenFades(int age, double amount) {
    Release trays = new Release.Decay(10, 1, 28);
    assertEquals(amount, trays.at(age), 1e-9);
    assertEquals(28, trays.days());
  }

  @ParameterizedTest
  @CsvSource({"0, 1", "3, 0.552044757", "6, 0.304753413", "7, 0"})
  void decayWithoutLagStartsInFull(int age, double amount) {
    assertEquals(amount, new Release.Decay(3.5, 0, 7).at(age), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"0, 0.1", "4, 0.5", "9, 1", "10, 1", "41, 1", "42, 0"})
  void plateauRisesAndEnds(int age, double amount) {
    assertEquals(amount, new Release.Plateau(42, 10).at(age), 1e-12);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesImpossibleTimes(double bad) {
    assertThrows(IllegalArgumentException.class, () -> new Release.Pulse(List.of(0.5, bad)));
    assertThrows(IllegalArgumentException.class, () -> new Release.Decay(bad, 0, 7));
    assertThrows(IllegalArgumentException.class, () -> new Release.Decay(3, bad, 7));
    assertThrows(IllegalArgumentException.class, () -> new Release.Plateau(7, bad));
  }

  @Test
  void refusesNoTimeAtAll() {
    assertThrows(IllegalArgumentException.class, () -> new Release.Pulse(List.of()));
    assertThrows(IllegalArgumentException.class, () -> new Release.Decay(0, 0, 7));
    assertThrows(IllegalArgumentException.class, () -> new Release.Decay(3, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> new Release.Plateau(0, 1));
    assertThrows(IllegalArgumentException.class, () -> new Release.Plateau(7, 0));
  }
}
