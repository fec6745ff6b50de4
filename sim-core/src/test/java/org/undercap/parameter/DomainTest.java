package org.undercap.parameter;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DomainTest {

  @ParameterizedTest
  @CsvSource({
    // domain, -1, 0, 0.5, 1, 1.5, 2, infinity, NaN
    "ANY, true, true, true, true, true, true, false, false",
    "NOT_NEGATIVE, false, true, true, true, true, true, false, false",
    "POSITIVE, false, false, true, true, true, true, false, false",
    "POSITIVE_OR_INFINITE, false, false, true, true, true, true, true, false",
    "FRACTION, false, true, true, true, false, false, false, false",
    "WHOLE, false, true, false, true, false, true, false, false",
    "COUNT, false, false, false, true, false, true, false, false"
  })
  void acceptsWhatItSays(
      Domain domain,
      boolean minusOne,
      boolean zero,
      boolean half,
      boolean one,
      boolean oneAndHalf,
      boolean two,
      boolean infinity,
      boolean nan) {
    assertEquals(minusOne, domain.accepts(-1));
    assertEquals(zero, domain.accepts(0));
    assertEquals(half, domain.accepts(0.5));
    assertEquals(one, domain.accepts(1));
    assertEquals(oneAndHalf, domain.accepts(1.5));
    assertEquals(two, domain.accepts(2));
    assertEquals(infinity, domain.accepts(Double.POSITIVE_INFINITY));
    assertEquals(nan, domain.accepts(Double.NaN));
  }
}
