package org.undercap.comparison;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.undercap.parameter.ParameterId;
import org.undercap.scenario.Scenario;
import org.undercap.simulation.DailyColumn;
import org.undercap.simulation.DailyTable;
import org.undercap.treatment.PlanStep;

/**
 * What a course of treatments kills in one run, in two figures that must never stand alone: a
 * treatment that kills nearly all mites on the bees may kill few of those in the colony.
 *
 * @param applications the applications of the course, the first one first
 * @param until last day on which they act within the run
 * @param onBees share killed of mites that sit on the bees through the whole course (fraction)
 * @param ofAll share killed of all mites that were in the colony at its begin, arrived or were born
 *     during the course (fraction)
 */
public record CourseEfficacy(
    List<PlanStep.Application> applications, LocalDate until, double onBees, double ofAll) {
  /**
   * Copies the list.
   *
   * @param applications at least one
   * @param until last day on which they act within the run
   * @param onBees share killed of mites that sit on the bees all the time (fraction)
   * @param ofAll share killed of all mites (fraction)
   */
  public CourseEfficacy {
    applications = List.copyOf(applications);
  }

  /**
   * First day of the course.
   *
   * @return day of the first application
   */
  public LocalDate from() {
    return applications.get(0).date();
  }

  /**
   * The treatments.
   *
   * @return names of the methods, joined if several act at the same time
   */
  public String name() {
    return applications.stream()
        .map(PlanStep.Application::words)
        .distinct()
        .collect(Collectors.joining(" and "));
  }

  /**
   * The courses of a run. Applications of one method follow each other in one course unless a long
   * time lies between them (parameter {@code advice.courseGap}); so do those of several methods
   * that act at the same time, whose effects cannot be told apart.
   *
   * @param run the run
   * @param scenario its scenario
   * @return the courses by date; those that begin after the end of the run or the loss of the
   *     colony are left out
   */
  public static List<CourseEfficacy> of(CentralRun run, Scenario scenario) {
    long gap = (long) scenario.parameters().value(ParameterId.ADVICE_COURSE_GAP);
    List<PlanStep.Application> sorted =
        run.plan().steps().stream()
            .filter(step -> step instanceof PlanStep.Application)
            .map(step -> (PlanStep.Application) step)
            .sorted(Comparator.comparing(PlanStep.Application::date))
            .toList();
    List<List<PlanStep.Application>> courses = new ArrayList<>();
    for (PlanStep.Application next : sorted) {
      if (courses.isEmpty() || !follows(courses.get(courses.size() - 1), next, gap)) {
        courses.add(new ArrayList<>());
      }
      courses.get(courses.size() - 1).add(next);
    }
    return courses.stream().flatMap(course -> of(course, run.table()).stream()).toList();
  }

  private static boolean follows(
      List<PlanStep.Application> course, PlanStep.Application next, long gap) {
    LocalDate end = end(course);
    boolean same = course.get(course.size() - 1).method().id().equals(next.method().id());
    return !next.date().isAfter(same ? end.plusDays(gap) : end);
  }

  private static LocalDate end(List<PlanStep.Application> course) {
    return course.stream().map(PlanStep::until).max(Comparator.naturalOrder()).orElseThrow();
  }

  private static List<CourseEfficacy> of(List<PlanStep.Application> course, DailyTable table) {
    int first = (int) ChronoUnit.DAYS.between(table.start(), course.get(0).date());
    int last = (int) ChronoUnit.DAYS.between(table.start(), end(course));
    int end = Math.min(last, table.days() - 2);
    if (first < 0 || first > end) {
      return List.of();
    }
    double hazard = 0;
    double killed = 0;
    double mites = table.mites(first);
    for (int day = first; day <= end; day++) {
      hazard += hazardOnBees(table, day);
      killed += killed(table, day);
      mites += table.at(DailyColumn.MITES_ARRIVED, day) + born(table, day);
    }
    return List.of(
        new CourseEfficacy(
            course,
            table.start().plusDays(end),
            -StrictMath.expm1(-hazard),
            mites > 0 ? Math.min(1, killed / mites) : 0));
  }

  /** Hazard by treatment of the mites on bees on a day, from how many died and were left. */
  private static double hazardOnBees(DailyTable table, int day) {
    double killed = table.at(DailyColumn.MITES_KILLED_ON_BEES, day);
    double died = killed + table.at(DailyColumn.MITES_DIED_NATURALLY, day);
    double left = table.at(DailyColumn.MITES_ON_BEES, day + 1);
    return killed > 0 && left > 0 ? StrictMath.log1p(died / left) * killed / died : 0;
  }

  private static double killed(DailyTable table, int day) {
    return table.at(DailyColumn.MITES_KILLED_ON_BEES, day)
        + table.at(DailyColumn.MITES_KILLED_IN_CELLS, day);
  }

  /** Daughters of a day, from the account of the mites. */
  private static double born(DailyTable table, int day) {
    return Math.max(
        0,
        table.mites(day + 1)
            - table.mites(day)
            - table.at(DailyColumn.MITES_ARRIVED, day)
            + table.at(DailyColumn.MITES_LOST_AT_EMERGENCE, day)
            + table.at(DailyColumn.MITES_DIED_NATURALLY, day)
            + killed(table, day)
            + table.at(DailyColumn.MITES_REMOVED, day));
  }
}
