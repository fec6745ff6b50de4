package org.undercap.cli.report;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.undercap.cli.output.Numbers;
import org.undercap.ensemble.Outcome;
import org.undercap.ensemble.OutcomeTable;

/** Estimates with the range of 8 in 10 runs, and dates, as people read them. */
final class Ranges {
  private static final DateTimeFormatter LONG =
      DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);
  private static final DateTimeFormatter SHORT =
      DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
  private static final double LOW = 0.1;
  private static final double MIDDLE = 0.5;
  private static final double HIGH = 0.9;
  private static final int FIGURES = 2;
  private static final int PERCENT = 100;

  private Ranges() {}

  /** As in {@code 12 % (8.5-18)}. */
  static String percent(OutcomeTable outcomes, Outcome outcome) {
    double[] q = outcomes.quantiles(outcome, MIDDLE, LOW, HIGH);
    return percent(q[0], q[1], q[2]);
  }

  /** As in {@code 12 % (8.5-18)}, of fractions. */
  static String percent(double middle, double low, double high) {
    return plain(PERCENT * middle)
        + " % ("
        + plain(PERCENT * low)
        + "-"
        + plain(PERCENT * high)
        + ")";
  }

  /** As in {@code 350 (180-660)}. */
  static String number(OutcomeTable outcomes, Outcome outcome) {
    double[] q = outcomes.quantiles(outcome, MIDDLE, LOW, HIGH);
    return number(q[0], q[1], q[2]);
  }

  /** As in {@code 350 (180-660)}. */
  static String number(double middle, double low, double high) {
    return plain(middle) + " (" + plain(low) + "-" + plain(high) + ")";
  }

  /** Two figures; nothing below a tenth. */
  static String plain(double value) {
    return value < 0.1
        ? "0"
        : value < 10 ? Numbers.fixed(value, 1) : Numbers.rounded(value, FIGURES);
  }

  /** As in {@code 26 Sep 2026}. */
  static String day(LocalDate date) {
    return LONG.format(date);
  }

  /** As in {@code 26 Sep}. */
  static String shortDay(LocalDate date) {
    return SHORT.format(date);
  }

  /** As in {@code 8 of 10 runs}. */
  static String ofTen(double share) {
    return Math.round(10 * share) + " of 10 runs";
  }
}
