package org.undercap.cli.report;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Dates as people say them, in English whatever the language of the machine. */
final class DateWords {
  private static final DateTimeFormatter LONG =
      DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);
  private static final DateTimeFormatter MONTH =
      DateTimeFormatter.ofPattern("MMMM", Locale.ENGLISH);
  private static final DateTimeFormatter SHORT =
      DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
  private static final Pattern IN_TEXT = Pattern.compile("\\b\\d{4}-\\d{2}-\\d{2}\\b");

  private DateWords() {}

  /** For example {@code 26 September 2026}. */
  static String day(LocalDate date) {
    return LONG.format(date);
  }

  /** For example {@code 26 Sep}. */
  static String brief(LocalDate date) {
    return SHORT.format(date);
  }

  /** For example {@code 26 September and 1, 6 and 11 October 2026}. */
  static String days(List<LocalDate> dates) {
    List<String> months = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= dates.size(); i++) {
      if (i == dates.size() || !sameMonth(dates.get(i), dates.get(from))) {
        boolean lastOfYear =
            i == dates.size() || dates.get(i).getYear() != dates.get(from).getYear();
        months.add(month(dates.subList(from, i), lastOfYear));
        from = i;
      }
    }
    return joined(months);
  }

  private static boolean sameMonth(LocalDate a, LocalDate b) {
    return a.getYear() == b.getYear() && a.getMonth() == b.getMonth();
  }

  private static String month(List<LocalDate> dates, boolean withYear) {
    List<String> days = dates.stream().map(d -> Integer.toString(d.getDayOfMonth())).toList();
    return joined(days)
        + " "
        + MONTH.format(dates.get(0))
        + (withYear ? " " + dates.get(0).getYear() : "");
  }

  /** Words joined by commas and an "and". */
  static String joined(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }

  /** A text in which dates as files have them are written as people say them. */
  static String said(String text) {
    return IN_TEXT.matcher(text).replaceAll(found -> day(LocalDate.parse(found.group())));
  }
}
