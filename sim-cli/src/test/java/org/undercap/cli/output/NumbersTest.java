package org.undercap.cli.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumbersTest {
  @ParameterizedTest
  @CsvSource({
    "1347, 2, 1300",
    "1350, 2, 1400",
    "0.0123, 2, 0.012",
    "0.0000004, 2, 0.0000004",
    "12345678, 2, 12000000",
    "0.999, 2, 1",
    "-0.04, 1, -0.04",
    "-0.0, 2, 0",
    "0.125, 2, 0.13",
    "100, 1, 100"
  })
  void roundsToFiguresWithoutExponentAndSeparators(double value, int figures, String text) {
    assertEquals(text, Numbers.rounded(value, figures));
  }

  @ParameterizedTest
  @CsvSource({"12000, 12000", "0.56, 0.56", "1.0E-9, 0.000000001", "1E7, 10000000", "0, 0"})
  void exactKeepsAllFigures(double value, String text) {
    assertEquals(text, Numbers.exact(value));
  }

  @Test
  void fixedKeepsTheDecimals() {
    assertEquals("0.50", Numbers.fixed(0.5, 2));
    assertEquals("-16", Numbers.fixed(-15.6, 0));
    assertEquals("0", Numbers.fixed(-0.2, 0));
  }

  @Test
  void infinityHasAWordAndWhatIsNoNumberHasNone() {
    assertEquals("infinity", Numbers.exact(Double.POSITIVE_INFINITY));
    assertEquals("-infinity", Numbers.exact(Double.NEGATIVE_INFINITY));
    assertThrows(IllegalArgumentException.class, () -> Numbers.exact(Double.NaN));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY})
  void onlyFiniteNumbersAreRounded(double value) {
    assertThrows(IllegalArgumentException.class, () -> Numbers.rounded(value, 2));
    assertThrows(IllegalArgumentException.class, () -> Numbers.fixed(value, 2));
  }

  @Test
  void figuresMustBeAsked() {
    assertThrows(IllegalArgumentException.class, () -> Numbers.rounded(1, 0));
  }

  @Test
  void rangesNameBothEndsUnlessTheyReadTheSame() {
    assertEquals("900 to 2100", Numbers.range(899, 2134, 2));
    assertEquals("900", Numbers.range(898, 902, 2));
    assertEquals("-5 to 3", Numbers.exactRange(-5, 3));
    assertEquals("1300 (900 to 2100)", Numbers.estimate(1347, 899, 2134, 2));
    assertEquals("3; 6; 12.5", Numbers.exact(List.of(3.0, 6.0, 12.5)));
  }

  @Test
  void rangesAreNotTurnedRound() {
    assertThrows(IllegalArgumentException.class, () -> Numbers.range(2, 1, 2));
    assertThrows(IllegalArgumentException.class, () -> Numbers.exactRange(2, 1));
  }

  @ParameterizedTest
  @CsvSource({
    "0.55, 55 %",
    "0.0053, 0.53 %",
    "0.9949, 99 %",
    "0.996, over 99 %",
    "1, 100 %",
    "0, 0 %"
  })
  void shareBelowOneNeverReadsAsAll(double share, String text) {
    assertEquals(text, Numbers.percent(share));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.1, 1.1, Double.NaN})
  void sharesLieBetweenZeroAndOne(double share) {
    assertThrows(IllegalArgumentException.class, () -> Numbers.percent(share));
  }
}
