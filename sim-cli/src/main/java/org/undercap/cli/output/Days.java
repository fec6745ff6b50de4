package org.undercap.cli.output;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Dates for people to read. They look the same in every country. */
public final class Days {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

  private Days() {}

  /**
   * A date.
   *
   * @param date the date
   * @return for example {@code 5 Oct 2026}
   */
  public static String words(LocalDate date) {
    return DAY.format(date);
  }
}
