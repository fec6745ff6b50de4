package org.undercap.scenario;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.undercap.hive.KeeperUnits;

/**
 * Reads how full of brood combs are, as keepers say it: {@code two thirds full}, {@code 60 % full},
 * {@code nearly full}, {@code patches}.
 */
public final class BroodFullness {
  private static final Pattern COMBS =
      Pattern.compile(
          "(.*?\\b(?:frames?|combs?|sides?)(?: of brood)?)(?:\\s*,\\s*|\\s+)(?!of\\b|sides?\\b)(\\S.*)",
          Pattern.CASE_INSENSITIVE | Pattern.DOTALL);
  private static final Pattern FRACTION = Pattern.compile("([1-9])\\s*/\\s*([1-9])");
  private static final KeeperUnits UNITS = KeeperUnits.shipped();
  private static final Map<String, Double> WORDS =
      Map.ofEntries(
          Map.entry("", 1.0),
          Map.entry("nearly", UNITS.nearlyFull()),
          Map.entry("almost", UNITS.nearlyFull()),
          Map.entry("three quarters", 3.0 / 4),
          Map.entry("two thirds", 2.0 / 3),
          Map.entry("half", 1.0 / 2),
          Map.entry("one third", 1.0 / 3),
          Map.entry("a third", 1.0 / 3),
          Map.entry("one quarter", 1.0 / 4),
          Map.entry("a quarter", 1.0 / 4),
          Map.entry("patches", UNITS.patches()),
          Map.entry("in patches", UNITS.patches()),
          Map.entry("patchy", UNITS.patches()));

  private BroodFullness() {}

  /**
   * Combs, and what is said of how full they are.
   *
   * @param combs as in {@code 3 frames}
   * @param fullness as in {@code two thirds full}
   */
  record Said(String combs, String fullness) {}

  /**
   * Splits an amount of brood.
   *
   * @param text as typed
   * @return its parts; empty if it does not say how full the combs are
   */
  static Optional<Said> said(String text) {
    Matcher matcher = COMBS.matcher(text.strip());
    return matcher.matches()
        ? Optional.of(new Said(matcher.group(1), matcher.group(2)))
        : Optional.empty();
  }

  /**
   * Whether an amount of brood says how full the combs are.
   *
   * @param brood as typed, as in {@code 3 frames two thirds full}
   * @return false for {@code 3 frames}
   */
  public static boolean isSaid(String brood) {
    return said(brood).isPresent();
  }

  /**
   * How full a comb is.
   *
   * @param text as typed, with or without the word full: {@code two thirds}, {@code 2/3}, {@code 60
   *     %}, {@code 0.6}, {@code nearly full}, {@code half full}, {@code patches}
   * @return brood on both sides of the comb (fraction of its area, above 0)
   * @throws BadValueException if it is none of these
   */
  public static double parse(String text) throws BadValueException {
    String said =
        text.strip()
            .toLowerCase(Locale.ROOT)
            .replaceAll("[\\s-]+", " ")
            .replaceAll("\\s*\\bfull\\b(?: of brood)?$", "");
    Matcher fraction = FRACTION.matcher(said);
    double share =
        fraction.matches()
            ? Double.parseDouble(fraction.group(1)) / Double.parseDouble(fraction.group(2))
            : WORDS.containsKey(said) ? WORDS.get(said) : number(text, said);
    if (!(share > 0 && share <= 1)) {
      throw unknown(text);
    }
    return share;
  }

  private static double number(String text, String said) throws BadValueException {
    if (said.isEmpty() || !Character.isDigit(said.charAt(0))) {
      throw unknown(text);
    }
    return Quantities.share(said);
  }

  private static BadValueException unknown(String text) {
    return new BadValueException(
        Quantities.quote(text) + " does not tell how full of brood the frames are",
        "write full, nearly full, three quarters, two thirds, half, a third, a quarter or patches,"
            + " or a percent, as in 60 %");
  }
}
