package org.undercap.cli.option;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.scenario.BadValueException;

/**
 * The questions of {@code undercap new}: what each asks, why, and what answers it accepts. What the
 * answer hangs on has no usual answer: it must be given.
 */
@SuppressWarnings("ImmutableEnumChecker") // the readers are functions without a state
public enum Question {
  /** Where the colony stands. */
  CLIMATE(
      "Where does the colony stand?",
      "The climate that comes nearest, or your latitude, as in 52 N or 37 S:",
      "",
      "temperate-oceanic",
      "site",
      (text, today) -> Said.place(text)),
  /** The first day. */
  DATE(
      "On which day did you look into it?",
      "The run begins there. As in 18 August 2026, 2026-08-18 or today.",
      "",
      "today",
      "colony.date",
      (text, today) -> SaidDate.parse(text, today).toString()),
  /** Adult bees. */
  BEES(
      "How many bees?",
      "Frames covered on both sides, seams, boxes, lb, kg: 9 frames, 11 seams, 4 lb.",
      "",
      "9 frames",
      "colony.bees",
      (text, today) -> Said.bees(Said.exact(text))),
  /** Brood of all ages. */
  BROOD(
      "How much brood, eggs to sealed?",
      "Mites hide under cappings. As in 3 frames, 12 hands, 140 sq in or none seen.",
      "",
      "3 frames",
      "colony.brood",
      (text, today) -> Said.brood(Said.exact(text))),
  /** How full of brood the combs are. */
  FULLNESS(
      "How full of brood are they?",
      "nearly full (85 %), two thirds, half, a third, patches (20 %), or as in 60 %.",
      "",
      "nearly full",
      "",
      (text, today) -> Said.fullness(text)),
  /** Frame type. */
  FRAME(
      "Which frames has the hive?",
      "They turn frames into bees and cells. The type, or the nearest in size:",
      "",
      "langstroth-deep",
      "colony.frame",
      (text, today) -> Said.frame(text)),
  /** What was counted. */
  COUNT(
      "What did you count?",
      "11 in 300 bees, alcohol; 4 in half a cup, sugar; on a board: 56 in 7 days.",
      "",
      "9 in 300 bees, alcohol",
      "mites",
      (text, today) -> Counted.of(Said.exact(text)).said()),
  /** How the bees of the count were washed. */
  METHOD(
      "In what were the bees washed or rolled?",
      "Sugar leaves more mites on the bees. alcohol, soap or sugar.",
      "",
      "alcohol",
      "",
      (text, today) -> Counted.method(text)),
  /** Honey supers. */
  SUPERS(
      "Are honey supers on, and until when?",
      "They rule treatments out. no, or their last day, as in 30 August 2026.",
      "",
      "no",
      "colony.supers",
      Said::supers),
  /** Late feeding. */
  FEEDING(
      "Do or did you feed thin syrup, and until when?",
      "It keeps the queen laying. no, 20 September 2026, or from DATE to DATE.",
      "no",
      "no",
      "feeding",
      Said::feeding),
  /** What was done already. */
  DONE(
      "Was it treated in the last year, and when?",
      "none, or as in oxalic-dribble on 3 January 2026; several with ; between.",
      Said.UNKNOWN,
      Said.UNKNOWN,
      "done",
      Said::done),
  /** What may be used. */
  TREATMENTS(
      "Which treatments may you use?",
      "any, organic, or what you can get: thymol-gel, formic-pads, oxalic acid.",
      "any",
      "any",
      "allowed",
      (text, today) -> Said.treatments(text)),
  /** Floor of the hive. */
  FLOOR(
      "Is the floor open or closed?",
      "Vapour of thymol and formic acid is lost through a mesh. open or closed.",
      Said.UNKNOWN,
      Said.UNKNOWN,
      "colony.floor",
      (text, today) -> Said.floor(text)),
  /** Mites from other colonies. */
  ARRIVALS(
      "Do mites come from other colonies?",
      "none, low, dense (many colonies nearby) or collapsing (some of them dying).",
      Said.UNKNOWN,
      Said.UNKNOWN,
      "arrivals",
      (text, today) -> Said.arrivals(text));

  private static final int LONGEST_CHOICE = 75;
  private static final Set<String> NOT_KNOWN =
      Set.of("unknown", "not known", "don't know", "dont know", "i don't know", "not sure", "?");

  private final String words;
  private final String why;
  private final String usual;
  private final String example;
  private final String field;
  private final Reader reader;

  Question(String words, String why, String usual, String example, String field, Reader reader) {
    this.words = words;
    this.why = why;
    this.usual = usual;
    this.example = example;
    this.field = field;
    this.reader = reader;
  }

  /** Makes what is written into the file of what was typed. */
  @FunctionalInterface
  interface Reader {
    String read(String text, LocalDate today) throws BadValueException;
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
   * What an answer may be where one line does not hold it.
   *
   * @return lines, each a word and what it stands for; mostly none
   */
  public List<String> choices() {
    return switch (this) {
      case CLIMATE -> ClimateCatalogue.shipped().all().stream().map(Question::choice).toList();
      case FRAME -> Said.frameLines();
      default -> List.of();
    };
  }

  private static String choice(Climate climate) {
    String line = String.format(Locale.ROOT, "%-24s %s", climate.id(), climate.description());
    return line.length() > LONGEST_CHOICE ? line.replaceFirst(" \\(.*", "") : line;
  }

  /**
   * The answer if none is given.
   *
   * @return the answer; empty if the question must be answered
   */
  public Optional<String> usual() {
    return Optional.of(usual).filter(text -> !text.isEmpty());
  }

  /**
   * An answer for a file that only shows what one looks like.
   *
   * @return an accepted answer
   */
  public String example() {
    return example;
  }

  /**
   * Reads an answer.
   *
   * @param text as typed
   * @param today the day on which it is typed
   * @return what the answer means, in a form that this method accepts too
   * @throws BadValueException if it cannot be used; the message or its hint says what can
   */
  public String read(String text, LocalDate today) throws BadValueException {
    String said = text.strip();
    if (NOT_KNOWN.contains(said.toLowerCase(Locale.ROOT))) {
      if (usual.isEmpty() && this != FULLNESS) {
        throw new BadValueException("nothing can be said without this", ifUnknown());
      }
      return usual.isEmpty() ? Said.UNKNOWN : usual;
    }
    try {
      return reader.read(said, today);
    } catch (BadValueException e) {
      throw e.hint().isEmpty() ? new BadValueException(e.getMessage(), why) : e;
    }
  }

  private String ifUnknown() {
    return switch (this) {
      case BEES -> "estimate it: a frame counts if bees cover both sides, as in 9 frames";
      case BROOD -> "look once more; a guess will do, as in 3 frames";
      case FRAME -> "take the one nearest in size: " + Said.frames();
      case COUNT -> "wash half a cup of bees, or lay a board under the colony for three days first";
      default -> why;
    };
  }

  /**
   * Whether it only asks more closely what the question before asked.
   *
   * @return true if so
   */
  public boolean isFollowUp() {
    return this == FULLNESS || this == METHOD;
  }

  /**
   * Whether the question is asked at all.
   *
   * @param answers what was answered to the questions before
   * @return false if the answers before leave nothing to ask
   */
  public boolean applies(Map<Question, String> answers) {
    return switch (this) {
      case FULLNESS -> Said.inCombs(answers.get(BROOD));
      case FRAME -> Said.needFrame(answers.get(BEES), answers.get(BROOD));
      case METHOD ->
          counted(answers.get(COUNT)).method().isEmpty() && !counted(answers.get(COUNT)).board();
      default -> true;
    };
  }

  /**
   * The name of the option that answers this question.
   *
   * @return as in {@code --bees}
   */
  public String option() {
    return "--" + name().toLowerCase(Locale.ROOT);
  }

  /**
   * The question whose answer became a field of a scenario file.
   *
   * @param field the field, as in {@code colony.bees}
   * @return the question, if one asks for it
   */
  public static Optional<Question> of(String field) {
    return Arrays.stream(values())
        .filter(question -> !question.field.isEmpty() && field.startsWith(question.field))
        .findFirst();
  }

  /**
   * A count among answers.
   *
   * @param answer an accepted answer to {@link #COUNT}
   * @return the count
   */
  public static Counted counted(String answer) {
    try {
      return Counted.of(answer);
    } catch (BadValueException e) {
      throw new IllegalStateException(e);
    }
  }

  /**
   * Questions that have no usual answer.
   *
   * @return in the order in which they are asked
   */
  public static List<Question> facts() {
    return Arrays.stream(values())
        .filter(question -> question.usual.isEmpty())
        .collect(Collectors.toList());
  }
}
