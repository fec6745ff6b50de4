package org.undercap.cli.option;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.hive.FrameCatalogue;
import org.undercap.hive.FrameType;
import org.undercap.scenario.Arrivals;
import org.undercap.scenario.BadValueException;
import org.undercap.scenario.BeeUnit;
import org.undercap.scenario.BroodUnit;
import org.undercap.scenario.Lookup;
import org.undercap.scenario.Quantities;
import org.undercap.scenario.SampleOfBees;

/** The ten questions of {@code undercap new}: why each is asked, and what answers it accepts. */
@SuppressWarnings("ImmutableEnumChecker") // the checks are functions without a state
public enum Question {
  /** What the file is called in results. */
  NAME(
      "What do you call this colony?",
      "The name stands above every result.",
      "My colony",
      text -> text.matches("[^\"\\\\\\p{Cntrl}]{1,80}")),
  /** Where the colony stands. */
  CLIMATE(
      "Which climate comes nearest to the place?",
      "It sets temperatures and how much the queen lays. Accepted: " + climates() + ".",
      "temperate-oceanic",
      text -> Lookup.find("climate", text, ClimateCatalogue.shipped()::find, climateIds()) != null),
  /** The first day. */
  DATE(
      "On which day was the colony looked at?",
      "The run begins on this day. Year-month-day, as in 2026-09-24.",
      "",
      text -> Quantities.date(text) != null),
  /** Frame type. */
  FRAME(
      "Which frames has the hive?",
      "They turn frames and seams into bees and cells. Accepted: " + frames() + ".",
      "langstroth-deep",
      text -> Lookup.find("frame", text, FrameCatalogue.shipped()::find, frameIds()) != null),
  /** Adult bees. */
  BEES(
      "How many bees?",
      "Frames covered on both sides, seams, sides, boxes, pounds or bees: 9 frames, 11 seams, 4 lb.",
      "9 frames",
      text -> BeeUnit.parse(text) != null),
  /** Brood of all ages. */
  BROOD(
      "How much brood, eggs to sealed?",
      "Mites hide under the cappings. As in 3 frames, 12 hands, 140 sq in, 900 cm2 or none seen.",
      "3 frames",
      text -> BroodUnit.parse(text) != null),
  /** Floor of the hive. */
  FLOOR(
      "Is the floor open or closed?",
      "Through an open mesh the vapour of thymol and formic acid is lost. open or closed.",
      "closed",
      text -> text.equals("open") || text.equals("closed")),
  /** Honey supers. */
  SUPERS(
      "Are honey supers on, and until when?",
      "They rule treatments out. off, or the last day on which they are on, as in 2026-09-30.",
      "off",
      text -> text.equals("off") || Quantities.date(text) != null),
  /** What was counted. */
  COUNT(
      "What did you count?",
      "Mites in a washed sample: 11 in 300 bees, or 11 in half a cup. Mites on a board: 56 in 7 days.",
      "9 in 300 bees",
      text -> Counted.of(text) != null),
  /** Mites from other colonies. */
  ARRIVALS(
      "Do mites come from other colonies?",
      "none, low, dense (many colonies nearby) or collapsing (some of them are dying).",
      "low",
      text -> Arrivals.parse(text) != null);

  private final String words;
  private final String why;
  private final String usual;
  private final Check check;

  Question(String words, String why, String usual, Check check) {
    this.words = words;
    this.why = why;
    this.usual = usual;
    this.check = check;
  }

  @FunctionalInterface
  private interface Check {
    boolean accepts(String text) throws BadValueException;
  }

  /**
   * The question.
   *
   * @return one line
   */
  public String words() {
    return words;
  }

  /**
   * Why it is asked and what answers are accepted.
   *
   * @return one line
   */
  public String why() {
    return why;
  }

  /**
   * The answer if none is given.
   *
   * @return the answer; empty for the day, which is today
   */
  public String usual() {
    return usual;
  }

  /**
   * Checks an answer.
   *
   * @param text as typed
   * @throws BadValueException if it cannot be used
   */
  public void check(String text) throws BadValueException {
    if (!check.accepts(text)) {
      throw new BadValueException(Quantities.quote(text) + " is not accepted", why);
    }
  }

  private static List<String> climateIds() {
    return ClimateCatalogue.shipped().all().stream().map(Climate::id).toList();
  }

  private static String climates() {
    return String.join(", ", climateIds());
  }

  private static List<String> frameIds() {
    return FrameCatalogue.shipped().all().stream().map(FrameType::id).toList();
  }

  private static String frames() {
    return String.join(", ", frameIds());
  }

  /**
   * A count as keepers say it.
   *
   * @param mites mites counted
   * @param among bees or days as typed
   * @param board whether the mites lay on a board
   */
  public record Counted(String mites, String among, boolean board) {
    private static final Pattern SAID =
        Pattern.compile("([0-9]+)\\s*(?:mites?\\s+)?(?:/|in|on|of|among)\\s*(.+)");

    /**
     * Reads a count.
     *
     * @param text as typed, as in {@code 11 in 300 bees} or {@code 56 in 7 days}
     * @return the count
     * @throws BadValueException if it cannot be used
     */
    public static Counted of(String text) throws BadValueException {
      Matcher said = SAID.matcher(text.strip());
      if (!said.matches()) {
        throw new BadValueException(
            Quantities.quote(text) + " is no count",
            "write the mites counted, not the percent, as in 11 in 300 bees or 56 in 7 days");
      }
      String among = said.group(2).strip();
      if (among.matches(".*\\b(days?|weeks?)")) {
        return new Counted(said.group(1), Quantities.format(Quantities.days(among)), true);
      }
      double bees = SampleOfBees.parse(among);
      if (Double.parseDouble(said.group(1)) > bees) {
        throw new BadValueException(
            said.group(1) + " mites on " + Quantities.format(bees) + " bees is not likely",
            "are bees and mites swapped?");
      }
      return new Counted(said.group(1), among.replaceAll("\\s*bees?$", ""), false);
    }
  }

  /**
   * The name of the option that answers this question.
   *
   * @return as in {@code --bees}
   */
  public String option() {
    return "--" + name().toLowerCase(java.util.Locale.ROOT);
  }

  /**
   * The count among answers, if it can be used.
   *
   * @param text as typed
   * @return the count
   */
  public static Optional<Counted> counted(String text) {
    try {
      return Optional.of(Counted.of(text));
    } catch (BadValueException e) {
      return Optional.empty();
    }
  }
}
