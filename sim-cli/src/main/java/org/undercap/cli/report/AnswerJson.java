package org.undercap.cli.report;

import java.io.Writer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.undercap.advice.Objection;
import org.undercap.cli.output.JsonOutput;
import org.undercap.comparison.Comparison;
import org.undercap.comparison.CourseEfficacy;
import org.undercap.ensemble.Outcome;
import org.undercap.ensemble.PlanResult;
import org.undercap.scenario.Assumption;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.PlanStep;

/** An answer with its comparison as one JSON document, at full precision. */
public final class AnswerJson {
  private static final int VERSION = 1;
  private static final double[] SHARES = {0.1, 0.25, 0.5, 0.75, 0.9};
  private static final List<String> NAMES = List.of("p10", "p25", "p50", "p75", "p90");

  private AnswerJson() {}

  /**
   * Writes the document.
   *
   * @param writer where to write; not closed
   * @param answer the answer
   */
  public static void write(Writer writer, Answer answer) {
    Comparison comparison = answer.comparison();
    Scenario scenario = comparison.scenario();
    JsonOutput.write(
        writer,
        "comparison",
        VERSION,
        json -> {
          json.text("scenario", scenario.name())
              .text("start", scenario.start().toString())
              .text("end", scenario.end().toString())
              .flag("study", scenario.study())
              .text(
                  "adviceLimit",
                  "a simulation to support talk, not a prescription; label and law come first")
              .number("members", comparison.settings().members())
              .number("seed", comparison.settings().seed())
              .number("mitesOnFirstDay", comparison.mites())
              .number("bees", scenario.hive().bees())
              .number("broodCells", scenario.hive().broodCells())
              .text("winterBeesFrom", comparison.dates().winterBeesFrom().toString())
              .text("winterBeesUntil", comparison.dates().winterBeesUntil().toString())
              .texts(
                  "countDates",
                  comparison.dates().countDates().stream().map(Object::toString).toList())
              .list("assumptions", scenario.assumptions(), AnswerJson::assumption)
              .list("plans", comparison.ranking(), (entry, place) -> plan(entry, answer, place))
              .list(
                  "cautions",
                  Cautions.of(scenario),
                  (entry, caution) ->
                      entry.text("title", caution.title()).text("text", caution.text()));
          AdviceJson.write(json, answer);
        });
  }

  private static void assumption(JsonOutput json, Assumption assumption) {
    json.text("field", assumption.field())
        .text("basis", assumption.basis().name().toLowerCase(Locale.ROOT))
        .text("text", assumption.text());
  }

  private static void plan(JsonOutput json, Answer answer, int place) {
    Comparison comparison = answer.comparison();
    PlanResult result = comparison.results().get(place);
    json.text("name", result.plan().name())
        .number("rank", comparison.ranking().indexOf(place) + 1L)
        .texts(
            "ruledOut",
            answer.advice().ruledOut().get(place).stream().map(Objection::words).toList())
        .number("minutes", comparison.scenario().minutes(result.plan()))
        .number("cost", comparison.scenario().cost(result.plan()))
        .list("steps", result.plan().steps(), AnswerJson::step)
        .list(
            "efficacy",
            CourseEfficacy.of(comparison.runs().get(place), comparison.scenario()),
            AnswerJson::efficacy);
    json.list(
        "outcomes",
        Arrays.stream(Outcome.values()).filter(comparison::tells).toList(),
        (entry, outcome) -> {
          entry
              .text("outcome", outcome.header())
              .number("mean", Figures.known(result.outcomes().mean(outcome)));
          double[] q = result.outcomes().quantiles(outcome, SHARES);
          for (int i = 0; i < q.length; i++) {
            entry.number(NAMES.get(i), Figures.known(q[i]));
          }
        });
    json.list(
        "lessHarmToWinterBeesThan",
        IntStream.range(0, comparison.results().size()).boxed().filter(o -> o != place).toList(),
        (entry, other) ->
            entry
                .text("plan", comparison.results().get(other).plan().name())
                .number("shareOfRuns", comparison.betterIn(place, other)));
  }

  private static void efficacy(JsonOutput json, CourseEfficacy course) {
    json.text("treatment", course.name())
        .text("from", course.from().toString())
        .text("until", course.until().toString())
        .number("killedOfMitesOnBeesFraction", course.onBees())
        .number("killedOfAllMitesFraction", course.ofAll());
  }

  private static void step(JsonOutput json, PlanStep step) {
    json.text("date", step.date().toString())
        .text("until", step.until().toString())
        .text("what", step.words());
    if (step instanceof PlanStep.Application application) {
      json.text("method", application.method().id()).number("dose", application.dose());
    }
  }
}
