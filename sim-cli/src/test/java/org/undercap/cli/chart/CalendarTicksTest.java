package org.undercap.cli.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CalendarTicksTest {
  private static final LocalDate FIRST = LocalDate.of(2027, 1, 31);

  @ParameterizedTest
  @ValueSource(doubles = {0.5, 1, 2, 3, 5, 8, 12, 14, 20, 28, 40, 80, 150, 300, 700, 2000})
  void datesAreAtLeastSoFarApart(double days) {
    List<LocalDate> ticks = new CalendarTicks(FIRST, FIRST.plusDays(7300)).atLeastApart(days);
    assertTrue(ticks.size() > 1, "ticks " + ticks.size());
    for (int i = 1; i < ticks.size(); i++) {
      long apart = ChronoUnit.DAYS.between(ticks.get(i - 1), ticks.get(i));
      assertTrue(apart >= days, ticks.get(i - 1) + " and " + ticks.get(i));
    }
    assertFalse(ticks.get(0).isBefore(FIRST));
  }

  @Test
  void datesLieOnRoundDays() {
    CalendarTicks ticks = new CalendarTicks(LocalDate.of(2026, 8, 8), LocalDate.of(2026, 10, 2));
    assertEquals(
        List.of(
            LocalDate.of(2026, 8, 15),
            LocalDate.of(2026, 9, 1),
            LocalDate.of(2026, 9, 15),
            LocalDate.of(2026, 10, 1)),
        ticks.atLeastApart(10));
  }
}
