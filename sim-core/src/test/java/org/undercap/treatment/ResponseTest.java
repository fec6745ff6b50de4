package org.undercap.treatment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercap.model.Hazard;

class ResponseTest {

  @ParameterizedTest
  @CsvSource({"0, 0.95", "1, 0.55", "0.5, 0.75", "0.25, 0.85"})
  void aWholeDoseKillsItsShareWhateverThePulse(double broodIndex, double killed) {
    Response dribble = new Response.Kill(0.95, 0.55);
    double hazard =
        dribble.hazard(0.7, broodIndex)
            + dribble.hazard(0.2, broodIndex)
            + dribble.hazard(0.1, broodIndex);
    assertEquals(killed, Hazard.fraction(hazard), 1e-12);
  }

  @Test
  void killHarmsInProportionToTheDose() {
    assertEquals(1.4, new Response.Kill(0.95, 0.55).relative(1.4));
  }

  @Test
  void constantIsInProportionButHarmsAtMostInFull() {
    Response strips = new Response.Constant(0.16);
    assertEquals(0.08, strips.hazard(0.5, 0.3));
    assertEquals(0.32, strips.hazard(2, 0.3));
    assertEquals(0.5, strips.relative(0.5));
    assertEquals(1, strips.relative(2));
  }

  @Test
  void hillByHand() {
    Response gel = new Response.Hill(0.35, 10, 6, 4);
    assertEquals(0.35 / 2, gel.hazard(0.6, 0.5), 1e-15);
    assertEquals(10_000.0 / (10_000 + 1296), gel.relative(1), 1e-14);
    assertEquals(0.35 * 625 / (625 + 1296), gel.hazard(0.5, 0.5), 1e-15);
  }

  @Test
  void hillStaysANumberForAnyAmount() {
    Response gel = new Response.Hill(0.35, 10, 6, 4);
    assertEquals(0, gel.hazard(0, 1));
    assertEquals(0, gel.hazard(Double.MIN_VALUE, 1));
    assertEquals(0.35, gel.hazard(1e100, 1));
    assertEquals(0.35, gel.hazard(Double.MAX_VALUE, 1));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.1, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesImpossibleNumbers(double bad) {
    assertThrows(IllegalArgumentException.class, () -> new Response.Kill(bad, 0.5));
    assertThrows(IllegalArgumentException.class, () -> new Response.Kill(0.5, bad));
    assertThrows(IllegalArgumentException.class, () -> new Response.Constant(bad));
    assertThrows(IllegalArgumentException.class, () -> new Response.Hill(bad, 1, 1, 1));
    assertThrows(IllegalArgumentException.class, () -> new Response.Hill(1, bad, 1, 1));
    assertThrows(IllegalArgumentException.class, () -> new Response.Hill(1, 1, bad, 1));
    assertThrows(IllegalArgumentException.class, () -> new Response.Hill(1, 1, 1, bad));
  }

  @Test
  void noDoseKillsAll() {
    assertThrows(IllegalArgumentException.class, () -> new Response.Kill(1, 0.5));
    assertThrows(IllegalArgumentException.class, () -> new Response.Kill(0.5, 1));
  }
}
