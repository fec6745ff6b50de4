package org.undercap.cli.option;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.undercap.monitoring.Wash;
import org.undercap.monitoring.WashMethod;
import org.undercap.scenario.BadValueException;
import org.undercap.scenario.CountDoubts;
import org.undercap.scenario.InputLimits;
import org.undercap.scenario.Quantities;
import org.undercap.scenario.SampleOfBees;

/**
 * A count as keepers say it.
 *
 * @param mites mites counted
 * @param among bees or days as in scenario files
 * @param board whether the mites lay on a board
 * @param method how the bees were washed, if it was said
 */
public record Counted(int mites, String among, boolean board, Optional<String> method) {
  private static final Pattern SAID =
      Pattern.compile(
          "([0-9]{1,6}|no|none|zero)\\s*(?:mites?\\s+)?(?:/|in|on|of|among|from|per)\\s*(\\S.*)");
  private static final Pattern A_DAY =
      Pattern.compile("[0-9.]{1,6} *(?:mites? )?(?:an?|per|each|every|/) *(?:day|week)\\b.*");
  private static final Pattern METHOD =
      Pattern.compile(
          "(.*?)[,;\\s]+(?:(?:by|with|in|an?)\\s+)*(alcohol|soap|soapy|(?:icing |powdered )?sugar)"
              + "(?:\\s+(?:wash|water|roll|shake))?");

  /**
   * Reads a count.
   *
   * @param text as typed, as in {@code 11 in 300 bees, alcohol} or {@code 56 in 7 days}
   * @return the count
   * @throws BadValueException if it cannot be used
   */
  public static Counted of(String text) throws BadValueException {
    String plain = text.strip().toLowerCase(Locale.ROOT);
    Matcher washed = METHOD.matcher(plain);
    Optional<String> method =
        washed.matches() ? Optional.of(method(washed.group(2))) : Optional.empty();
    if (A_DAY.matcher(plain).matches()) {
      throw noDays(text);
    }
    Matcher said = SAID.matcher(method.isPresent() ? washed.group(1) : plain);
    if (!said.matches()) {
      throw new BadValueException(
          Quantities.quote(text) + " is no count",
          "write the mites counted, not the percent, and among how many bees or in how many days,"
              + " as in 11 in 300 bees or 56 in 7 days");
    }
    int mites = Character.isDigit(said.group(1).charAt(0)) ? Integer.parseInt(said.group(1)) : 0;
    String among = said.group(2).strip();
    if (among.matches(".*(day|days|week|weeks)")) {
      return new Counted(mites, days(text, among), true, Optional.empty());
    }
    double bees = SampleOfBees.parse(among);
    InputLimits.shipped().get("mites.counts.wash.bees").check(bees);
    if (mites > bees) {
      throw new BadValueException(
          mites + " mites on " + Quantities.format(bees) + " bees is not likely",
          "are bees and mites swapped?");
    }
    return new Counted(mites, among.replaceAll("\\s*(?:of )?bees?$", ""), false, method);
  }

  private static BadValueException noDays(String text) {
    return new BadValueException(
        Quantities.quote(text) + " does not say how many days the board lay",
        "write all mites and all days, as in 56 in 7 days");
  }

  private static String days(String text, String among) throws BadValueException {
    if (among.matches("day|week")) {
      throw noDays(text);
    }
    double days = Quantities.days(among.replaceFirst("^(?:an?|one)\\s+", "1 "));
    return Quantities.format(InputLimits.shipped().get("mites.counts.board.days").check(days));
  }

  /** The name in scenario files of a way to wash. */
  static String method(String text) throws BadValueException {
    String plain = text.strip().toLowerCase(Locale.ROOT);
    for (WashMethod method : WashMethod.values()) {
      if (plain.matches("(?:.* )?" + method.id() + "y?(?: (?:wash|water|roll|shake))?")) {
        return method.id();
      }
    }
    throw new BadValueException(
        Quantities.quote(text) + " is not accepted", "write alcohol, soap or sugar");
  }

  /**
   * What is doubtful about the count.
   *
   * @return the doubt with what to do; empty if there is none
   */
  public Optional<String> doubt() {
    if (board) {
      return Optional.empty();
    }
    try {
      int bees = (int) SampleOfBees.parse(among);
      return CountDoubts.of(new Wash(LocalDate.EPOCH, bees, mites, WashMethod.ALCOHOL));
    } catch (BadValueException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The count in the words of its question. */
  String said() {
    return mites
        + " in "
        + among
        + (board ? " days" : "")
        + method.map(name -> ", " + name).orElse("");
  }
}
