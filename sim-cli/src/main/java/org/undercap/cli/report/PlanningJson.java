package org.undercap.cli.report;

import java.io.Writer;
import java.util.List;
import java.util.Optional;
import org.undercap.cli.output.JsonOutput;
import org.undercap.comparison.Ranking;
import org.undercap.ensemble.EnsembleSettings;
import org.undercap.ensemble.Outcome;
import org.undercap.ensemble.OutcomeTable;
import org.undercap.monitoring.Interval;
import org.undercap.monitoring.MiteDistribution;
import org.undercap.planning.BroodlessTime;
import org.undercap.planning.CourseStart;
import org.undercap.planning.CourseTiming;
import org.undercap.planning.PlanSearch;
import org.undercap.planning.StartOutcome;
import org.undercap.planning.Timing;
import org.undercap.planning.TriedSchedule;
import org.undercap.planning.Yard;
import org.undercap.planning.YardColony;
import org.undercap.planning.YardPlan;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;

/** Start dates, schedules and yards as JSON documents, at full precision. */
public final class PlanningJson {
  private static final int VERSION = 1;

  private PlanningJson() {}

  /**
   * Writes start dates.
   *
   * @param writer where to write; not closed
   * @param timing the start dates tried
   */
  public static void timing(Writer writer, Timing timing) {
    Outcome left = timing.scope().mitesLeft();
    JsonOutput.write(
        writer,
        "timing",
        VERSION,
        json -> {
          head(json, timing.scope().scenario(), timing.settings());
          json.number("mitesOnFirstDay", timing.mites())
              .number("toleranceFraction", timing.inTime().tolerance())
              .number("keptFraction", timing.inTime().kept())
              .text("mitesLeftOn", timing.scope().mitesLeftOn().toString())
              .object("untreated", o -> outcomes(o, timing.untreated(), left))
              .list("courses", timing.courses(), (entry, course) -> course(entry, course, left))
              .object("broodless", o -> broodless(o, timing.broodless()));
          cautions(json, timing.scope().scenario(), timing.plans());
        });
  }

  private static void course(JsonOutput json, CourseTiming course, Outcome left) {
    json.text("method", course.method().id())
        .number("times", course.course().times())
        .number("everyDays", course.course().everyDays())
        .text("bestStart", course.best().map(i -> date(course.starts().get(i))).orElse(""))
        .text("lastStartInTime", course.last().map(l -> l.date().toString()).orElse(""));
    course.last().ifPresent(last -> json.number("lastStartChanceFraction", last.chance()));
    json.list(
        "starts",
        course.starts(),
        (entry, start) -> {
          entry
              .text("date", date(start))
              .number("shareWithinLimitsFraction", start.shareInBand())
              .texts("ruledOut", start.ruledOut());
          outcomes(entry, start.outcomes(), left);
        });
  }

  private static String date(StartOutcome start) {
    return start.date().toString();
  }

  private static void broodless(JsonOutput json, BroodlessTime time) {
    json.text("best", text(time.best()))
        .text("first", text(time.first()))
        .text("last", text(time.last()))
        .number("highestChanceFraction", time.bestChance())
        .text("from", time.from().toString())
        .numbers("chanceByDayFraction", time.chances());
  }

  private static String text(Optional<?> value) {
    return value.map(Object::toString).orElse("");
  }

  /**
   * Writes what a search found.
   *
   * @param writer where to write; not closed
   * @param result the result
   */
  public static void search(Writer writer, PlanSearch.Result result) {
    Outcome left = result.scope().mitesLeft();
    JsonOutput.write(
        writer,
        "plan",
        VERSION,
        json -> {
          head(json, result.scope().scenario(), result.settings().ensemble());
          json.number("mitesOnFirstDay", result.mites())
              .text("mitesLeftOn", result.scope().mitesLeftOn().toString())
              .list(
                  "rounds",
                  result.rounds(),
                  (entry, round) ->
                      entry
                          .text("what", round.what())
                          .number("schedules", round.schedules())
                          .number("members", round.members())
                          .flag("complete", round.complete()))
              .texts("methodsWithoutCost", result.withoutCost())
              .object("untreated", o -> outcomes(o, result.untreated(), left))
              .list("schedules", result.front(), (entry, tried) -> schedule(entry, tried, left));
          cautions(json, result.scope().scenario(), plans(result));
        });
  }

  static List<Plan> plans(PlanSearch.Result result) {
    return result.front().stream().map(tried -> tried.schedule().plan()).toList();
  }

  private static void schedule(JsonOutput json, TriedSchedule tried, Outcome left) {
    json.list("courses", tried.schedule().courses(), PlanningJson::start)
        .number("minutes", tried.schedule().minutes())
        .number("cost", tried.cost());
    outcomes(json, tried.outcomes(), left);
  }

  private static void start(JsonOutput json, CourseStart start) {
    json.text("method", start.method().id())
        .number("times", start.course().times())
        .number("everyDays", start.course().everyDays())
        .text("date", start.date().toString());
  }

  /**
   * Writes a yard.
   *
   * @param writer where to write; not closed
   * @param yard the yard
   */
  public static void yard(Writer writer, Yard yard) {
    JsonOutput.write(
        writer,
        "apiary",
        VERSION,
        json -> {
          head(json, yard.site(), yard.settings());
          json.list("colonies", yard.colonies(), PlanningJson::colony)
              .list("plans", yard.plans(), PlanningJson::plan);
          yard.together()
              .ifPresent(
                  t ->
                      json.object(
                          "together",
                          o ->
                              o.text("advice", t.advice().name())
                                  .number("aboveForSure", t.aboveForSure())
                                  .number("perhapsAbove", t.perhapsAbove())
                                  .number("limitMitesPer100Bees", t.limit())
                                  .number("shareInWorstThirdFraction", t.shareInWorstThird())
                                  .number("harmByArrivalsFraction", t.harmByArrivals())));
          cautions(json, yard.site(), yard.site().plans());
        });
  }

  private static void colony(JsonOutput json, YardColony colony) {
    json.text("colony", colony.colony().name()).text("note", colony.colony().note());
    colony
        .estimate()
        .ifPresent(
            e -> {
              distribution(json, "mitesPer100Bees", e.mitesPer100Bees());
              distribution(json, "mites", e.mites());
            });
    json.texts("doubts", YardPage.doubts(colony));
  }

  private static void distribution(JsonOutput json, String key, MiteDistribution values) {
    Interval range = values.interval(YardColony.RANGE);
    json.object(
        key,
        o ->
            o.number("p10", range.low())
                .number("p50", values.median())
                .number("p90", range.high()));
  }

  private static void plan(JsonOutput json, YardPlan plan) {
    json.text("name", plan.plan().name())
        .number("meanParasitisedWinterBroodFraction", plan.meanHarm())
        .number("p10", plan.low())
        .number("p90", plan.high())
        .number("bestForColonies", plan.bestFor())
        .number("meanMitesLeft", plan.meanMitesLeft())
        .texts("ruledOut", plan.ruledOut());
  }

  private static void head(JsonOutput json, Scenario scenario, EnsembleSettings settings) {
    json.text("scenario", scenario.name())
        .text("start", scenario.start().toString())
        .text("end", scenario.end().toString())
        .flag("study", scenario.study())
        .number("members", settings.members())
        .number("seed", settings.seed());
  }

  private static void outcomes(JsonOutput json, OutcomeTable table, Outcome left) {
    json.list(
        "outcomes",
        List.of(Ranking.HARM, left),
        (entry, outcome) -> {
          entry.text("outcome", outcome.header()).number("mean", table.mean(outcome));
          double[] q = table.quantiles(outcome, TimingCsv.SHARES);
          for (int i = 0; i < q.length; i++) {
            entry.number(TimingCsv.SHARE_NAMES.get(i), q[i]);
          }
        });
  }

  private static void cautions(JsonOutput json, Scenario scenario, List<Plan> plans) {
    json.list(
        "cautions",
        Cautions.of(scenario, plans),
        (entry, caution) -> entry.text("title", caution.title()).text("text", caution.text()));
  }
}
