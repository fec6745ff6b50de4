package org.undercap.cli.report;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.undercap.cli.output.Numbers;
import org.undercap.comparison.CentralRun;
import org.undercap.comparison.CourseEfficacy;
import org.undercap.ensemble.SeasonDates;
import org.undercap.parameter.ParameterId;
import org.undercap.scenario.Scenario;
import org.undercap.simulation.DailyTable;
import org.undercap.treatment.Method;

/**
 * Why the plan comes first: where the mites sit, what reaches them, when winter bees are reared.
 */
final class ReasonWords {
  /** Place of the sealed stage among the days of brood. */
  private static final int SEALED = 2;

  /** With less of the mites in cells there is as good as no brood in their way (fraction). */
  private static final double FEW = 0.1;

  private ReasonWords() {}

  /** Two sentences, or three if the treatment begins much later than today. */
  static String of(Answer answer) {
    CentralRun run = answer.comparison().runs().get(answer.advice().chosen());
    Optional<CourseEfficacy> course =
        CourseEfficacy.of(run, answer.scenario()).stream().findFirst();
    return where(answer, run, course) + " " + winterBees(answer.comparison().dates());
  }

  private static String where(Answer answer, CentralRun run, Optional<CourseEfficacy> course) {
    double now = inCells(run.table(), 0);
    String today =
        now < FEW
            ? "Nearly all mites sit on the bees today"
            : "About " + Numbers.percent(now) + " of the mites sit under the cappings today";
    if (course.isEmpty()) {
      return today + ".";
    }
    LocalDate from = course.get().from();
    int day = (int) ChronoUnit.DAYS.between(run.table().start(), from);
    double then = inCells(run.table(), day);
    String start =
        Math.abs(then - now) < FEW
            ? today
            : today
                + ", and "
                + (then < FEW ? "hardly any" : Numbers.percent(then))
                + " on "
                + DateWords.day(from)
                + " when treatment begins";
    return start + ": " + reach(course.get(), then, answer.scenario());
  }

  private static double inCells(DailyTable table, int day) {
    return table.mites(day) > 0 ? table.mitesInCells(day) / table.mites(day) : 0;
  }

  private static String reach(CourseEfficacy course, double inCells, Scenario scenario) {
    List<Method> methods = course.applications().stream().map(a -> a.method()).distinct().toList();
    Method method = methods.get(0);
    String name = method.name();
    if (method.profile().reachesSealedBrood()) {
      return name + " reaches mites there too, though less than those on the bees.";
    }
    if (inCells < FEW) {
      return name + " does not reach under cappings, but there is little brood in its way.";
    }
    long sealed = (long) scenario.parameters().value(ParameterId.BROOD_WORKER_DAYS, SEALED);
    long days = ChronoUnit.DAYS.between(course.from(), course.until()) + 1;
    String stays = days >= sealed ? "long enough" : "too short a time";
    return name
        + " does not reach them there, but acts for "
        + days
        + " days"
        + (course.applications().size() > 1 ? " in all" : "")
        + ", "
        + stays
        + " to meet "
        + (days >= sealed ? "those" : "all of them")
        + " as the young bees come out (worker cells stay sealed for "
        + sealed
        + " days).";
  }

  private static String winterBees(SeasonDates dates) {
    return dates.lateBrood()
        ? "Most bees that live through winter are out already; the brood that emerges until "
            + DateWords.day(dates.winterBeesUntil())
            + " is what can still be saved, and mites left now breed on in spring."
        : "The bees that must live through winter emerge from "
            + DateWords.day(dates.winterBeesFrom())
            + " to "
            + DateWords.day(dates.winterBeesUntil())
            + ": mites in their cells before then weaken them for good, however few are left later.";
  }
}
