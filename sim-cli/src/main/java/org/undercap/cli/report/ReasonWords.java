package org.undercap.cli.report;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.undercap.cli.output.Numbers;
import org.undercap.comparison.CentralRun;
import org.undercap.comparison.CourseEfficacy;
import org.undercap.ensemble.SeasonDates;
import org.undercap.parameter.ParameterId;
import org.undercap.simulation.DailyTable;
import org.undercap.treatment.PlanStep;

/**
 * Why the plan comes first: where the mites sit, what reaches them, when winter bees are reared.
 */
final class ReasonWords {
  /** Place of the sealed stage among the days of brood. */
  private static final int SEALED = 2;

  /** Courses that are told of; the page has no room for more. */
  private static final int MOST = 3;

  private ReasonWords() {}

  /** A sentence about today, one for each course, and one about the winter bees. */
  static String of(Answer answer) {
    CentralRun run = answer.comparison().runs().get(answer.advice().chosen());
    List<CourseEfficacy> courses = CourseEfficacy.of(run, answer.scenario());
    double now = inCells(run.table(), run.table().start());
    List<String> sentences = new ArrayList<>();
    if (courses.isEmpty()) {
      sentences.add(today(now) + ".");
    } else {
      double then = inCells(run.table(), courses.get(0).from());
      boolean same = Math.abs(then - now) < CourseWords.FEW;
      sentences.add(today(now) + (same ? "" : later(now, then, run, courses.get(0).from())) + ".");
    }
    long sealed =
        (long) answer.scenario().parameters().value(ParameterId.BROOD_WORKER_DAYS, SEALED);
    for (int i = 0; i < Math.min(MOST, courses.size()); i++) {
      double then = inCells(run.table(), courses.get(i).from());
      sentences.add(new CourseWords(courses.get(i), sealed).sentence(then, i == 0));
    }
    if (answer.scenario().hive().openFloor()
        && courses.stream().anyMatch(ReasonWords::evaporates)) {
      sentences.add(
          "The open floor loses part of the vapour: closed, or with its board in, more mites die.");
    }
    sentences.add(winterBees(answer.comparison().dates()));
    return String.join(" ", sentences);
  }

  private static boolean evaporates(CourseEfficacy course) {
    return course.applications().stream().anyMatch(a -> a.method().profile().evaporates());
  }

  private static String today(double inCells) {
    return inCells < CourseWords.FEW
        ? "Nearly all mites sit on the bees today"
        : "About " + Numbers.percent(inCells) + " of the mites sit under the cappings today";
  }

  private static String later(double now, double then, CentralRun run, LocalDate date) {
    String share =
        then < CourseWords.FEW
            ? "but hardly any"
            : now < CourseWords.FEW
                ? "but " + Numbers.percent(then) + " sit under the cappings"
                : Numbers.percent(then);
    return ", "
        + share
        + " on "
        + DateWords.day(date)
        + " when treatment begins"
        + (then < CourseWords.FEW ? broodless(run, date) : "");
  }

  /** What the keeper did so that there is no brood. */
  private static String broodless(CentralRun run, LocalDate date) {
    List<PlanStep> before =
        run.plan().steps().stream().filter(step -> !step.date().isAfter(date)).toList();
    if (before.stream().anyMatch(step -> step instanceof PlanStep.LayingStop)) {
      return ", thanks to the weeks without eggs";
    }
    return before.stream()
            .anyMatch(s -> s instanceof PlanStep.BroodRemoval || s instanceof PlanStep.ShookSwarm)
        ? ", thanks to the brood taken out"
        : "";
  }

  private static double inCells(DailyTable table, LocalDate date) {
    int day = (int) ChronoUnit.DAYS.between(table.start(), date);
    return table.mites(day) > 0 ? table.mitesInCells(day) / table.mites(day) : 0;
  }

  private static String winterBees(SeasonDates dates) {
    String until = DateWords.day(dates.winterBeesUntil());
    return switch (dates.judged()) {
      case LATE ->
          "Most bees that live through winter are out already. What can still be saved are the late"
              + " bees, those that emerge until "
              + until
              + "; and mites left now breed on in spring.";
      case OF_THE_RUN ->
          "No winter bees are reared in these months, so the plans are judged by all the brood that"
              + " emerges until "
              + until
              + ".";
      case WINTER_BEES ->
          "The bees that must live through winter emerge from "
              + DateWords.day(dates.winterBeesFrom())
              + " to "
              + until
              + ". Those that come out of a cell with a mite stay weak, however few mites are left"
              + " later.";
    };
  }
}
