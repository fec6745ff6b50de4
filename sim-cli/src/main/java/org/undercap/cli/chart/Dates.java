package org.undercap.cli.chart;

import java.time.LocalDate;

/** Dates as words, the same in every locale. */
final class Dates {
  private static final String[] MONTHS = {
    "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"
  };

  /** A blank at which no line is broken. */
  private static final char FIRM_BLANK = '\u00a0';

  private Dates() {}

  /** As in {@code 15 Aug}, never broken over two lines. */
  static String dayAndMonth(LocalDate date) {
    return Integer.toString(date.getDayOfMonth()) + FIRM_BLANK + MONTHS[date.getMonthValue() - 1];
  }

  /** As in {@code 2026} or {@code 2026 to 2027}. */
  static String years(LocalDate first, LocalDate last) {
    return first.getYear() == last.getYear()
        ? Integer.toString(first.getYear())
        : first.getYear() + " to " + last.getYear();
  }
}
