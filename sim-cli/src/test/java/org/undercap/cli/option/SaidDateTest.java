package org.undercap.cli.option;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercap.scenario.BadValueException;

class SaidDateTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 3, 1);

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2026-08-18",
        "2026-8-18",
        "2026/08/18",
        "18 August 2026",
        "18. August 2026",
        "18 aug 2026",
        "18-Aug-2026",
        "18th of August, 2026",
        "August 18, 2026",
        "Aug 18 2026",
        "AUGUST 18TH, 2026",
        "18.8.2026",
        "18. 8. 2026",
        "18/8/2026",
        "8/18/2026",
        "  18   August  2026 "
      })
  void datesThatCannotBeMisreadAreRead(String text) throws BadValueException {
    assertEquals(LocalDate.of(2026, 8, 18), SaidDate.parse(text, TODAY));
  }

  @Test
  void todayAndYesterdayAreDates() throws BadValueException {
    assertEquals(TODAY, SaidDate.parse("Today", TODAY));
    assertEquals(LocalDate.of(2026, 2, 28), SaidDate.parse("yesterday", TODAY));
    assertEquals(LocalDate.of(2026, 2, 22), SaidDate.parse("a week ago", TODAY));
    assertEquals(LocalDate.of(2026, 2, 19), SaidDate.parse("10 days ago", TODAY));
    assertEquals(LocalDate.of(2026, 2, 8), SaidDate.parse("Three weeks ago", TODAY));
    assertEquals(LocalDate.of(2026, 8, 8), SaidDate.parse("8.8.2026", TODAY));
  }

  @ParameterizedTest
  @CsvSource({"8/9/2026", "08.09.2026", "8-9-2026"})
  void datesWithTwoMeaningsAreRefusedWithBoth(String text) {
    BadValueException e = assertThrows(BadValueException.class, () -> SaidDate.parse(text, TODAY));
    assertEquals("\"" + text + "\" may be 8 September or 9 August", e.getMessage());
    assertTrue(e.hint().contains("the month as a word"), e.hint());
  }

  @ParameterizedTest
  @ValueSource(strings = {"18 August", "18 Aug 26", "August 18", "18/8/26", "18.8.", "18 8"})
  void otherDatesAreRefusedWithAnExample(String text) {
    BadValueException e = assertThrows(BadValueException.class, () -> SaidDate.parse(text, TODAY));
    assertTrue(e.hint().contains("18 August 2026"), e.getMessage() + e.hint());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"31 June 2026", "0/0/2026", "0/5/2026", "18 Augusti 2026", "45/60/2026", "soon"})
  void whatIsNoDateIsRefused(String text) {
    assertThrows(BadValueException.class, () -> SaidDate.parse(text, TODAY));
  }
}
