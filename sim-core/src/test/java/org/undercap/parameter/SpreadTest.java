package org.undercap.parameter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercap.parameter.Spread.Shape;

class SpreadTest {

  @Test
  void readsAllShapes() {
    assertEquals(new Spread(Shape.FIXED, 0), Spread.of("fixed"));
    assertEquals(new Spread(Shape.NORMAL, 0.12), Spread.of("normal sd 0.12"));
    assertEquals(new Spread(Shape.LOGNORMAL, 0.35), Spread.of("lognormal sigma 0.35"));
    assertEquals(new Spread(Shape.BETA, 0), Spread.of("beta"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"fixed", "normal sd 0.12", "lognormal sigma 0.35", "beta"})
  void writesAsItReads(String text) {
    assertEquals(text, Spread.of(text).toString());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "normal",
        "normal sd",
        "normal sd x",
        "normal sd 0",
        "normal sd -1",
        "normal sd NaN",
        "lognormal sd 1",
        "lognormal sigma Infinity",
        "beta 2",
        "uniform"
      })
  void refusesOtherTexts(String text) {
    assertThrows(IllegalArgumentException.class, () -> Spread.of(text));
  }

  @Test
  void shapesWithoutAmountRefuseOne() {
    assertThrows(IllegalArgumentException.class, () -> new Spread(Shape.FIXED, 1));
    assertThrows(IllegalArgumentException.class, () -> new Spread(Shape.BETA, Double.NaN));
  }
}
