package org.undercap.cli.chart;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Picks the dates that are written below the date axis: as many as fit, on round days. */
final class CalendarTicks {
  /** Days of the month that may carry a date, finest first. */
  private static final int[][] DAYS_OF_MONTH = {{1, 6, 11, 16, 21, 26}, {1, 11, 21}, {1, 15}};

  /** Distances in months, finest first; all divide 12 or are multiples of it. */
  private static final int[] MONTHS = {1, 2, 3, 4, 6, 12, 24, 60, 120, 600};

  /** Part of a month: the shortest distance of two dates in {@link #DAYS_OF_MONTH}, in days. */
  private static final int[] SHORTEST_GAP = {3, 8, 14};

  private final LocalDate first;
  private final LocalDate last;

  CalendarTicks(LocalDate first, LocalDate last) {
    this.first = first;
    this.last = last;
  }

  /** Dates at least so many days apart, on the finest round grid that allows it. */
  List<LocalDate> atLeastApart(double days) {
    if (days <= 1) {
      return first.datesUntil(last.plusDays(1)).toList();
    }
    for (int grid = 0; grid < DAYS_OF_MONTH.length; grid++) {
      if (days <= SHORTEST_GAP[grid]) {
        return onDays(DAYS_OF_MONTH[grid], 1);
      }
    }
    for (int months : MONTHS) {
      if (days <= 28.0 * months) {
        return onDays(new int[] {1}, months);
      }
    }
    return List.of(first);
  }

  private List<LocalDate> onDays(int[] daysOfMonth, int months) {
    List<LocalDate> ticks = new ArrayList<>();
    LocalDate month = first.withDayOfMonth(1);
    for (; !month.isAfter(last); month = month.plusMonths(1)) {
      long index = month.getYear() * 12L + month.getMonthValue() - 1;
      if (index % months != 0) {
        continue;
      }
      for (int day : daysOfMonth) {
        LocalDate tick = month.withDayOfMonth(day);
        if (!tick.isBefore(first) && !tick.isAfter(last)) {
          ticks.add(tick);
        }
      }
    }
    return ticks;
  }
}
