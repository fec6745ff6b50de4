package org.undercap.cli.option;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.undercap.scenario.BadValueException;
import org.undercap.scenario.Quantities;

/**
 * Reads dates as people write them, as in {@code 18 August 2026}, {@code Aug 18, 2026} or {@code
 * 18.8.2026}. What can be read in two ways, as in {@code 8/9/2026}, is refused.
 */
public final class SaidDate {
  private static final String HOW =
      "write the month as a word or the year first, as in 18 August 2026 or 2026-08-18";
  private static final Pattern YEAR_FIRST =
      Pattern.compile("([0-9]{4})([-/.])([0-9]{1,2})\\2([0-9]{1,2})");
  private static final Pattern NUMBERS =
      Pattern.compile("([0-9]{1,2})([-/.]) ?([0-9]{1,2})\\2 ?([0-9]{4})");
  private static final Pattern DAY_FIRST =
      Pattern.compile("([0-9]{1,2})(?:st|nd|rd|th)?[ .-]*(?:of )?([a-z]{3,9})[ .,-]*([0-9]{4})");
  private static final Pattern MONTH_FIRST =
      Pattern.compile("([a-z]{3,9})[ .-]*([0-9]{1,2})(?:st|nd|rd|th)?[ ,-]+([0-9]{4})");
  private static final Pattern NO_YEAR =
      Pattern.compile(
          "[0-9]{1,2}(?:st|nd|rd|th)?[ .-]*(?:of )?[a-z]{3,9}[ .,-]*(?:[0-9]{2})?"
              + "|[a-z]{3,9}[ .-]*[0-9]{1,2}(?:st|nd|rd|th)?(?:[ ,-]+[0-9]{2})?"
              + "|[0-9]{1,2}[-/.] ?[0-9]{1,2}(?:[-/.] ?[0-9]{0,2})?");
  private static final List<String> NUMBERS_AS_WORDS =
      List.of("", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten");
  private static final Pattern AGO =
      Pattern.compile(
          "([0-9]{1,3}|an?|one|two|three|four|five|six|seven|eight|nine|ten) (day|week)s? ago");
  private static final int MONTHS = 12;

  private SaidDate() {}

  /**
   * Reads a date.
   *
   * @param text as typed
   * @param today the day that {@code today} stands for
   * @return the date
   * @throws BadValueException if it is no date, or can be read in two ways
   */
  public static LocalDate parse(String text, LocalDate today) throws BadValueException {
    String said = text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    if (said.equals("today")) {
      return today;
    }
    if (said.equals("yesterday")) {
      return today.minusDays(1);
    }
    Matcher ago = AGO.matcher(said);
    if (ago.matches()) {
      int number = Math.max(1, NUMBERS_AS_WORDS.indexOf(ago.group(1)));
      int count = Character.isDigit(said.charAt(0)) ? Integer.parseInt(ago.group(1)) : number;
      return ago.group(2).equals("day") ? today.minusDays(count) : today.minusWeeks(count);
    }
    Matcher yearFirst = YEAR_FIRST.matcher(said);
    if (yearFirst.matches()) {
      return date(text, yearFirst.group(1), yearFirst.group(3), yearFirst.group(4));
    }
    Matcher numbers = NUMBERS.matcher(said);
    if (numbers.matches()) {
      return fromNumbers(text, numbers);
    }
    Matcher dayFirst = DAY_FIRST.matcher(said);
    if (dayFirst.matches() && month(dayFirst.group(2)).isPresent()) {
      return date(text, dayFirst.group(3), month(dayFirst.group(2)).get(), dayFirst.group(1));
    }
    Matcher monthFirst = MONTH_FIRST.matcher(said);
    if (monthFirst.matches() && month(monthFirst.group(1)).isPresent()) {
      return date(text, monthFirst.group(3), month(monthFirst.group(1)).get(), monthFirst.group(2));
    }
    throw NO_YEAR.matcher(said).matches()
        ? new BadValueException(
            Quantities.quote(text) + " does not say the year in four digits",
            "write it in full, as in 18 August 2026 or 2026-08-18")
        : new BadValueException(Quantities.quote(text) + " is not a date", HOW);
  }

  private static LocalDate fromNumbers(String text, Matcher numbers) throws BadValueException {
    int first = Integer.parseInt(numbers.group(1));
    int second = Integer.parseInt(numbers.group(3));
    String year = numbers.group(4);
    if (first > MONTHS || first == second) {
      return date(text, year, numbers.group(3), numbers.group(1));
    }
    if (second > MONTHS) {
      return date(text, year, numbers.group(1), numbers.group(3));
    }
    throw new BadValueException(
        Quantities.quote(text)
            + " may be "
            + first
            + " "
            + name(Month.of(Math.max(second, 1)))
            + " or "
            + second
            + " "
            + name(Month.of(Math.max(first, 1))),
        HOW);
  }

  private static String name(Month month) {
    return month.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }

  /** The number of a month that is written as a word or its first three or more letters. */
  private static Optional<String> month(String word) {
    return Stream.of(Month.values())
        .filter(month -> name(month).toLowerCase(Locale.ROOT).startsWith(word))
        .map(month -> Integer.toString(month.getValue()))
        .findFirst();
  }

  private static LocalDate date(String text, String year, String month, String day)
      throws BadValueException {
    try {
      return LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day));
    } catch (DateTimeException e) {
      throw new BadValueException(
          Quantities.quote(text) + " does not exist in the calendar", "look at the day once more");
    }
  }
}
