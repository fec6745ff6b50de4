package org.undercap.scenario;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads numbers, shares, temperatures, dates and spans of days as people type them. What could mean
 * two things, as in {@code 010}, {@code 1,500} or {@code 03/04/2026}, is refused, never guessed.
 */
public final class Quantities {

  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(?:0|[1-9][0-9]*)(?:\\.[0-9]+)?(?:[eE][+-]?[0-9]{1,4})?");
  private static final Pattern MEASURED =
      Pattern.compile(
          "([+-]?(?:[0-9]|\\.[0-9])[0-9.,_']*(?:[eE][+-]?[0-9]+)?)\\s*(.*)", Pattern.DOTALL);
  private static final Pattern GROUPED = Pattern.compile("[1-9][0-9]{0,2}(?:[,_'][0-9]{3})+");
  private static final Pattern DECIMAL_COMMA = Pattern.compile("[0-9]+,[0-9]+");
  private static final Pattern LEADING_ZERO = Pattern.compile("[+-]?0[0-9]+(?:\\.[0-9]+)?");
  private static final Pattern DATE = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");
  private static final DateTimeFormatter STRICT_DATE =
      DateTimeFormatter.ofPattern("uuuu-MM-dd", Locale.ROOT)
          .withResolverStyle(ResolverStyle.STRICT);
  private static final int SHOWN = 40;
  private static final int LONGEST_NUMBER = 40;

  private static final UnitWords<Temperature> TEMPERATURES =
      UnitWords.<Temperature>named("15 C or 59 F")
          .plain(Temperature.CELSIUS)
          .negative()
          .unit(Temperature.CELSIUS, "C", "c", "\u00b0C", "\u00b0c", "celsius", "Celsius")
          .unit(Temperature.FAHRENHEIT, "F", "f", "\u00b0F", "\u00b0f", "fahrenheit", "Fahrenheit");
  private static final UnitWords<Boolean> SHARES =
      UnitWords.<Boolean>named("20 % or 0.2").plain(false).unit(true, "%", "percent", "per cent");
  private static final UnitWords<Integer> DAYS =
      UnitWords.<Integer>named("24 days or 24")
          .plain(1)
          .unit(1, "days", "day", "d")
          .unit(7, "weeks", "week");
  private static final UnitWords<Boolean> TIMES =
      UnitWords.<Boolean>named("3 times or 3").plain(true).unit(true, "times", "time", "x");

  private enum Temperature {
    CELSIUS,
    FAHRENHEIT
  }

  private Quantities() {}

  /**
   * A plain number.
   *
   * @param text as typed
   * @return the number, finite
   * @throws BadValueException if the text is not one finite decimal number without a unit
   */
  public static double number(String text) throws BadValueException {
    if (text.length() > LONGEST_NUMBER) {
      throw new BadValueException(
          quote(text) + " is longer than the " + LONGEST_NUMBER + " characters of a number", "");
    }
    if (NUMBER.matcher(text).matches()) {
      double number = Double.parseDouble(text);
      if (Double.isFinite(number)) {
        return number;
      }
      throw new BadValueException(quote(text) + " is too large", "");
    }
    throw notANumber(text);
  }

  private static BadValueException notANumber(String text) {
    String quoted = quote(text);
    String plain = text.replaceAll("[,_']", "");
    if (GROUPED.matcher(text).matches()) {
      return new BadValueException(quoted + " is not a plain number", "write " + plain);
    }
    if (DECIMAL_COMMA.matcher(text).matches()) {
      String hint = "write a decimal point: " + text.replace(',', '.');
      return new BadValueException(quoted + " is not a plain number", hint);
    }
    if (LEADING_ZERO.matcher(text).matches()) {
      String hint = "write it without the leading zero";
      return new BadValueException(quoted + " begins with a zero", hint);
    }
    return new BadValueException(
        quoted + " is not a number", "write digits, with a decimal point if needed, as in 1.5");
  }

  /**
   * Splits a text into its number and what follows it.
   *
   * @param text as typed
   * @param example a right value, for the hint
   * @return number text and unit text, the latter possibly empty
   * @throws BadValueException if the text does not begin with a number
   */
  static String[] split(String text, String example) throws BadValueException {
    Matcher matcher = MEASURED.matcher(text.trim());
    if (!matcher.matches()) {
      throw new BadValueException(
          quote(text) + " does not begin with a number", "as in " + example);
    }
    String unit = matcher.group(2).trim();
    if (!unit.isEmpty() && Character.isDigit(unit.charAt(0))) {
      throw new BadValueException(
          quote(text) + " has more than one number",
          "write one number without spaces, with a decimal point if needed, as in 2.5 or 18000");
    }
    return new String[] {matcher.group(1), unit};
  }

  /**
   * A share.
   *
   * @param text as typed: {@code 20 %} or {@code 0.2}
   * @return the share (fraction, 0 to 1)
   * @throws BadValueException if it is not in 0 to 1
   */
  public static double share(String text) throws BadValueException {
    Amount<Boolean> amount = SHARES.parse(text);
    double share = amount.unit() ? amount.number() / 100 : amount.number();
    if (!(share >= 0 && share <= 1)) {
      boolean forgotten = !amount.unit() && share > 1 && share <= 100;
      throw new BadValueException(
          quote(text) + " is not a share; accepted: 0 to 1, or 0 % to 100 %",
          forgotten ? "did you mean " + format(amount.number()) + " %?" : "");
    }
    return share;
  }

  /**
   * A temperature.
   *
   * @param text as typed: {@code 15 C}, {@code 59 F} or {@code 15} (Celsius)
   * @return the temperature (C)
   * @throws BadValueException if it is not a number with one of these units
   */
  public static double temperature(String text) throws BadValueException {
    Amount<Temperature> amount = TEMPERATURES.parse(text);
    return amount.unit() == Temperature.CELSIUS
        ? amount.number()
        : fahrenheitToCelsius(amount.number());
  }

  /**
   * Turns degrees Fahrenheit into Celsius.
   *
   * @param fahrenheit a temperature (F)
   * @return the same temperature (C)
   */
  public static double fahrenheitToCelsius(double fahrenheit) {
    return (fahrenheit - 32) * 5 / 9;
  }

  /**
   * A date.
   *
   * @param text as typed: {@code 2026-09-24}
   * @return the date
   * @throws BadValueException if it is written otherwise, does not exist or lies in an unlikely
   *     year
   */
  public static LocalDate date(String text) throws BadValueException {
    String form = "dates are written year-month-day, as in 2026-09-24";
    if (!DATE.matcher(text).matches()) {
      throw new BadValueException(quote(text) + " is not a date", form);
    }
    LocalDate date;
    try {
      date = LocalDate.parse(text, STRICT_DATE);
    } catch (DateTimeException e) {
      throw new BadValueException(text + " does not exist in the calendar", form);
    }
    InputLimit years = InputLimits.shipped().get("year");
    if (!(date.getYear() >= years.low() && date.getYear() <= years.high())) {
      throw new BadValueException(
          text + " lies outside the years that are accepted: " + years.range(), "");
    }
    return date;
  }

  /**
   * A number of days.
   *
   * @param text as typed: {@code 24}, {@code 24 days} or {@code 3 weeks}
   * @return the span (days)
   * @throws BadValueException if it is not a number with one of these units
   */
  public static double days(String text) throws BadValueException {
    Amount<Integer> amount = DAYS.parse(text);
    return amount.number() * amount.unit();
  }

  /**
   * A number of repetitions.
   *
   * @param text as typed: {@code 3} or {@code 3 times}
   * @return the number
   * @throws BadValueException if it is not a number
   */
  public static double times(String text) throws BadValueException {
    return TIMES.parse(text).number();
  }

  /**
   * A number for messages: without needless decimals, the same in every language.
   *
   * @param number the number
   * @return its shortest text
   */
  public static String format(double number) {
    if (number == StrictMath.rint(number) && Math.abs(number) < 1e15) {
      return Long.toString((long) number);
    }
    return Double.toString(number);
  }

  /**
   * A text of the user for messages: in quotes, shortened, without characters that would disturb a
   * terminal.
   *
   * @param text as typed
   * @return the text in double quotes
   */
  public static String quote(String text) {
    StringBuilder shown = new StringBuilder("\"");
    text.codePoints()
        .limit(SHOWN)
        .map(c -> isHarmless(c) ? c : '?')
        .forEach(shown::appendCodePoint);
    return shown.append(text.codePointCount(0, text.length()) > SHOWN ? "...\"" : "\"").toString();
  }

  /**
   * Whether a character can be shown without disturbing a terminal or turning the order of a line.
   *
   * @param codePoint the character
   * @return false for control, format, surrogate and private characters and line separators
   */
  public static boolean isHarmless(int codePoint) {
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.PRIVATE_USE,
          Character.UNASSIGNED,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          false;
      default -> true;
    };
  }
}
