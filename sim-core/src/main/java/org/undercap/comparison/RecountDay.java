package org.undercap.comparison;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.undercap.parameter.ParameterId;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.PlanStep;

/** When to count again after the treatments of a plan. */
public final class RecountDay {
  /**
   * Daily mean outside below which hives stay closed: some 12 C in the warmest hour (C; assumption,
   * common practice).
   */
  private static final double OPENING = 8;

  private RecountDay() {}

  /**
   * Whether most hives stay closed at the usual temperature of a day.
   *
   * @param scenario its climate
   * @param date the day
   * @return true if bees should not be taken from the hive
   */
  public static boolean tooCold(Scenario scenario, LocalDate date) {
    return scenario.climate().temperature().at(date) < OPENING;
  }

  /**
   * The last day on which the first treatments act, with those that follow each other without a
   * long gap (parameter {@code advice.courseGap}).
   *
   * @param plan the plan
   * @param scenario its scenario
   * @return the day; empty if the plan has no treatment
   */
  public static Optional<LocalDate> lastDayOfTreatment(Plan plan, Scenario scenario) {
    List<PlanStep> applications =
        plan.steps().stream()
            .filter(step -> step instanceof PlanStep.Application)
            .sorted(Comparator.comparing(PlanStep::date))
            .toList();
    if (applications.isEmpty()) {
      return Optional.empty();
    }
    int gap = (int) scenario.parameters().value(ParameterId.ADVICE_COURSE_GAP);
    LocalDate end = applications.get(0).until();
    for (PlanStep step : applications) {
      if (!step.date().isAfter(end.plusDays(gap))) {
        end = step.until().isAfter(end) ? step.until() : end;
      }
    }
    return Optional.of(end);
  }

  /**
   * Some days after that (parameter {@code advice.recheckDays}).
   *
   * @param plan the plan
   * @param scenario its scenario
   * @return the day; empty if the plan has no treatment, or the day lies outside the run
   */
  public static Optional<LocalDate> of(Plan plan, Scenario scenario) {
    long later = (long) scenario.parameters().value(ParameterId.ADVICE_RECHECK_DAYS);
    return lastDayOfTreatment(plan, scenario)
        .map(day -> day.plusDays(later))
        .filter(day -> !day.isAfter(scenario.end()) && !day.isBefore(scenario.start()));
  }

  static List<LocalDate> all(Scenario scenario) {
    return scenario.plans().stream()
        .flatMap(plan -> of(plan, scenario).stream())
        .distinct()
        .toList();
  }
}
