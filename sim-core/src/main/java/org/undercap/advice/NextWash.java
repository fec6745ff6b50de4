package org.undercap.advice;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.undercap.comparison.RecountDay;
import org.undercap.ensemble.CurveBands;
import org.undercap.ensemble.Series;
import org.undercap.monitoring.Count;
import org.undercap.monitoring.Wash;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.PlanStep;

/**
 * When to wash bees again in a colony that needs no treatment now: on the day on which nine in ten
 * untreated members no longer stay below the limit, and after four weeks at the latest.
 *
 * @param date day of the wash
 * @param bees bees in the wash (bees)
 * @param treatAt mites in it at which to treat (mites), at least 1
 * @param mayReachLimit whether the mites may have reached the limit that day; else it is the
 *     longest wait
 * @param instead place of the plan that waits for this wash; empty if none would begin before
 */
public record NextWash(
    LocalDate date, int bees, int treatAt, boolean mayReachLimit, Optional<Integer> instead) {
  /** Longest time without a count in the season (days; assumption, common practice). */
  private static final int LONGEST = 28;

  /** With less time than this there is nothing to wait for (days; assumption). */
  private static final int SHORTEST = 14;

  /** Share of the members that stay below the limit (fraction). */
  private static final double NEARLY_ALL = 0.9;

  private static final int BEES = 300;
  private static final int HUNDRED = 100;

  /**
   * The next wash of an untreated colony.
   *
   * @param scenario dates and limit
   * @param untreated how the curves of the untreated colony spread
   * @return the wash; empty if the mites may be too many within two weeks
   */
  static Optional<NextWash> of(Scenario scenario, CurveBands untreated) {
    double[] upper = untreated.quantile(Series.MITES_PER_100_BEES, NEARLY_ALL);
    int day = 0;
    while (day < upper.length && day < LONGEST && upper[day] < scenario.limit()) {
      day++;
    }
    LocalDate date = scenario.start().plusDays(day);
    if (day < SHORTEST || date.isAfter(scenario.end())) {
      return Optional.empty();
    }
    int treatAt = Math.max(1, (int) Math.ceil(scenario.limit() * BEES / HUNDRED));
    boolean reached = day < LONGEST;
    return Optional.of(new NextWash(date, BEES, treatAt, reached, Optional.empty()));
  }

  /** Whether a plan would treat on the day of the wash or before. */
  boolean comesAfterTheBeginOf(Plan plan) {
    return plan.steps().stream()
        .filter(PlanStep.Application.class::isInstance)
        .map(PlanStep::date)
        .min(Comparator.naturalOrder())
        .filter(first -> !first.isAfter(date))
        .isPresent();
  }

  /**
   * Whether a treatment may wait for it: bees can be taken from the hive that day, and the mites of
   * today are known from a sample of bees, or were given. What falls on a board tells them less
   * well than that.
   */
  boolean allowsToWait(Scenario scenario) {
    List<Count> counts = scenario.countsThatTell();
    return !RecountDay.tooCold(scenario, date)
        && (counts.isEmpty() || counts.stream().anyMatch(Wash.class::isInstance));
  }

  NextWash insteadOf(int plan) {
    return new NextWash(date, bees, treatAt, mayReachLimit, Optional.of(plan));
  }
}
