package org.undercap.scenario;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads parts of a whole as keepers write them: {@code 1/2}, {@code 2 1/2}, {@code half a}. */
final class Fractions {

  private static final Pattern FRACTION =
      Pattern.compile(
          "(?:([0-9]{1,4})\\s+)?([0-9]{1,3})\\s*/\\s*([1-9][0-9]{0,2})\\s+(\\S.*)", Pattern.DOTALL);
  private static final Pattern WORDS =
      Pattern.compile("(a quarter of a|a quarter|a half|half an|half a|half|one|a)\\s+(\\S.*)");
  private static final Map<String, Double> VALUES =
      Map.of(
          "a", 1.0,
          "one", 1.0,
          "half", 0.5,
          "a half", 0.5,
          "half a", 0.5,
          "half an", 0.5,
          "a quarter", 0.25,
          "a quarter of a", 0.25);

  private Fractions() {}

  /**
   * The number and the unit of a text that begins with a fraction.
   *
   * @param text as typed
   * @return the amount with the rest of the text as its unit; empty if it does not begin so
   */
  static Optional<Amount<String>> parse(String text) {
    Matcher fraction = FRACTION.matcher(text.strip());
    if (fraction.matches()) {
      double whole = fraction.group(1) == null ? 0 : Double.parseDouble(fraction.group(1));
      double part = Double.parseDouble(fraction.group(2)) / Double.parseDouble(fraction.group(3));
      return Optional.of(new Amount<>(whole + part, fraction.group(4).strip()));
    }
    Matcher words = WORDS.matcher(text.strip());
    return words.matches()
        ? Optional.of(new Amount<>(VALUES.get(words.group(1)), words.group(2).strip()))
        : Optional.empty();
  }
}
