package org.undercap.cli.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.undercap.cli.option.Counted;
import org.undercap.cli.option.Question;
import org.undercap.scenario.Scenario;

/** Writes a commented scenario file from the answers to the questions of {@code undercap new}. */
public final class NewScenario {
  /** Facts older than this are worth a new look (days); common practice, no source. */
  public static final int OLD_FACTS = 30;

  private static final String UNKNOWN = "unknown";
  private static final String NO = "no";

  /** How long syrup is usually fed before its last day (days); common practice, no source. */
  private static final int FED_DAYS = 13;

  /** Brood combs of which nobody looked how full they were; common practice, no source. */
  private static final String FULL = " two thirds full";

  private final Map<Question, String> answers;

  /**
   * Prepares to write.
   *
   * @param answers an accepted answer to every question that was asked
   */
  public NewScenario(Map<Question, String> answers) {
    this.answers = Map.copyOf(answers);
  }

  /**
   * The plans that suit a scenario.
   *
   * @param facts the scenario without plans
   * @param first first day on which a treatment may begin
   * @return YAML to stand below the facts, lines ended by a line feed; empty if no treatment can be
   *     used
   */
  public static String plans(Scenario facts, LocalDate first) {
    String examples = new ExamplePlans(facts, first).yaml();
    return examples.isEmpty()
        ? ""
        : "plans:               # examples that suit place and season: put your own in their place;\n"
            + "                     # undercap methods lists treatments\n"
            + examples;
  }

  /**
   * The facts.
   *
   * @param name name of the colony
   * @param invented questions whose answers are examples and not the user's own
   * @return YAML without plans, lines ended by a line feed
   */
  public String facts(String name, List<Question> invented) {
    List<String> lines = new ArrayList<>();
    if (!invented.isEmpty()) {
      lines.add("# EXAMPLE, not your colony: put your own in place of " + words(invented) + ".");
    }
    lines.add(
        "# Look it through: undercap check --assumptions FILE. The answer: undercap compare FILE.");
    lines.add("# Every key, also those that are not used here: undercap help scenario.");
    lines.add("undercap: 1");
    lines.add("name: \"" + name + "\"");
    lines.add("site:");
    lines.add(place());
    lines.add("colony:");
    add(lines, "  date", answers.get(Question.DATE), "the day of these facts; the run begins here");
    add(lines, "  bees", answers.get(Question.BEES), "frames count as covered on both sides");
    add(
        lines,
        "  brood",
        brood(),
        isGuessed() ? "how full they are was guessed" : "eggs, larvae and sealed brood");
    said(Question.FRAME).ifPresent(id -> add(lines, "  frame", id, ""));
    said(Question.FLOOR)
        .ifPresent(floor -> add(lines, "  floor", floor, "open: vapour is lost through a mesh"));
    lines.add(supers());
    lines.add("mites:");
    lines.add("  counts:");
    lines.add("    " + count());
    said(Question.ARRIVALS)
        .ifPresent(
            level ->
                add(lines, "arrivals", level, "from neighbours: none, low, dense, collapsing"));
    feeding().ifPresent(lines::add);
    done().ifPresent(lines::add);
    treatments().ifPresent(lines::add);
    return String.join("\n", lines) + "\n";
  }

  /**
   * Questions in words.
   *
   * @param questions at least one
   * @return the names of their options without hyphens, as in {@code climate, date and bees}
   */
  public static String words(List<Question> questions) {
    return DateWords.joined(questions.stream().map(q -> q.option().substring(2)).toList());
  }

  private static void add(List<String> lines, String key, String value, String comment) {
    String line = key + ": " + value;
    lines.add(
        comment.isEmpty()
            ? line
            : line + " ".repeat(Math.max(1, 29 - line.length())) + "# " + comment);
  }

  private Optional<String> said(Question question) {
    return Optional.ofNullable(answers.get(question)).filter(answer -> !answer.equals(UNKNOWN));
  }

  private String place() {
    String place = answers.get(Question.CLIMATE);
    return place.startsWith("latitude ")
        ? "  " + place.replace(" ", ": ") + "   # or climate: undercap climates lists them"
        : "  climate: " + place + "   # undercap climates lists them";
  }

  private String brood() {
    return answers.get(Question.BROOD)
        + said(Question.FULLNESS).map(fullness -> " " + fullness).orElse(isGuessed() ? FULL : "");
  }

  private boolean isGuessed() {
    return UNKNOWN.equals(answers.get(Question.FULLNESS));
  }

  private String supers() {
    String supers = answers.get(Question.SUPERS);
    return supers.equals("off")
        ? "  supers: off                # on: say supers-until: 2026-09-30"
        : "  supers-until: " + supers;
  }

  private String count() {
    Counted counted = Question.counted(answers.get(Question.COUNT));
    String begin = "{date: " + answers.get(Question.DATE);
    return counted.board()
        ? "- board: " + begin + ", days: " + counted.among() + ", mites: " + counted.mites() + "}"
        : "- wash: "
            + begin
            + ", bees: "
            + counted.among()
            + ", mites: "
            + counted.mites()
            + ", method: "
            + counted.method().orElseGet(() -> answers.get(Question.METHOD))
            + "}";
  }

  private Optional<String> feeding() {
    return said(Question.FEEDING)
        .filter(answer -> !answer.equals(NO))
        .map(
            answer ->
                "feeding:                     # late syrup keeps the queen laying\n  - "
                    + fed(answer));
  }

  /** Of feeding that is over only the last day is told; its length is a guess, and says so. */
  private String fed(String answer) {
    if (answer.contains(" to ")) {
      return "{from: " + answer.replace(" to ", ", until: ") + "}";
    }
    LocalDate facts = LocalDate.parse(answers.get(Question.DATE));
    LocalDate until = LocalDate.parse(answer);
    return until.isBefore(facts)
        ? "{from: " + until.minusDays(FED_DAYS) + ", until: " + until + "}   # first day guessed"
        : "{from: " + facts + ", until: " + until + "}";
  }

  private Optional<String> done() {
    return said(Question.DONE)
        .map(
            answer ->
                answer.equals("none")
                    ? "done: []                     # nothing in the last year"
                    : "done:                        # what was done already\n"
                        + Arrays.stream(answer.split("; ", -1))
                            .map(NewScenario::step)
                            .collect(Collectors.joining("\n")));
  }

  private static String step(String said) {
    return "  - {"
        + said.replaceFirst("(\\S+) on (\\S+?)(,|$)", "date: $2, treatment: $1$3")
            .replaceFirst(", (\\d+) times every (\\d+ days)", ", times: $1, every: $2")
        + "}";
  }

  private Optional<String> treatments() {
    return said(Question.TREATMENTS)
        .filter(answer -> !answer.equals("any"))
        .map(answer -> answer.equals("organic") ? "organic: true" : "allowed: [" + answer + "]");
  }
}
