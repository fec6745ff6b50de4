package org.undercap.advice;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.undercap.comparison.Comparison;
import org.undercap.ensemble.Ensemble;
import org.undercap.ensemble.MiteBelief;
import org.undercap.monitoring.Recheck;
import org.undercap.monitoring.WashMethod;
import org.undercap.parameter.ParameterId;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.PlanStep;

/**
 * What to do: the plan that harms winter bees least among those that nothing rules out, and all
 * that a keeper needs to judge it.
 *
 * @param comparison all plans held against each other
 * @param ruledOut reasons against each plan, in the order of the scenario; empty lists where there
 *     are none
 * @param order places of the plans that are not ruled out, the best first; doing nothing is never
 *     ruled out
 * @param flips what would turn the first two round; empty if a small ensemble cannot even tell
 *     their order
 * @param anotherWash whether another wash would change the choice
 * @param followup when to count again; empty if the chosen plan has no treatment or ends with the
 *     run
 */
public record Advice(
    Comparison comparison,
    List<List<String>> ruledOut,
    List<Integer> order,
    List<FlipPoint> flips,
    WashValue anotherWash,
    Optional<Followup> followup) {
  private static final int WASH = 300;

  /**
   * Copies the lists.
   *
   * @param comparison all plans held against each other
   * @param ruledOut reasons against each plan
   * @param order places of the plans that are not ruled out, at least one
   * @param flips what would turn the first two round
   * @param anotherWash whether another wash would change the choice
   * @param followup when to count again
   * @throws IllegalArgumentException if every plan is ruled out
   */
  public Advice {
    ruledOut = ruledOut.stream().map(List::copyOf).toList();
    order = List.copyOf(order);
    flips = List.copyOf(flips);
    if (order.isEmpty()) {
      throw new IllegalArgumentException("at least one plan must not be ruled out");
    }
  }

  /**
   * Makes advice of a comparison.
   *
   * @param comparison all plans held against each other
   * @param belief what is believed about the mites
   * @return the advice
   */
  public static Advice of(Comparison comparison, MiteBelief belief) {
    Scenario scenario = comparison.scenario();
    RuledOut rules = new RuledOut(scenario);
    List<List<String>> reasons = scenario.plans().stream().map(rules::reasons).toList();
    List<Integer> order =
        comparison.ranking().stream().filter(plan -> reasons.get(plan).isEmpty()).toList();
    String chosen = scenario.plans().get(order.get(0)).name();
    List<FlipPoint> flips =
        order.size() < 2 ? List.of() : FlipSearch.of(comparison, belief, chosen);
    return new Advice(
        comparison,
        reasons,
        order,
        flips,
        WashValue.of(comparison.results(), order, scenario.parameters()),
        followup(comparison, belief, scenario.plans().get(order.get(0))));
  }

  /**
   * The plan to take.
   *
   * @return its place in the scenario
   */
  public int chosen() {
    return order.get(0);
  }

  /**
   * The plan to take.
   *
   * @return the plan
   */
  public Plan chosenPlan() {
    return comparison.scenario().plans().get(chosen());
  }

  /**
   * The next best plan that is not ruled out.
   *
   * @return its place in the scenario; empty if there is none
   */
  public Optional<Integer> second() {
    return order.size() > 1 ? Optional.of(order.get(1)) : Optional.empty();
  }

  private static Optional<Followup> followup(Comparison comparison, MiteBelief belief, Plan plan) {
    Scenario scenario = comparison.scenario();
    Optional<LocalDate> date = recheckDate(scenario, plan);
    return date.map(
        day -> {
          Ensemble ensemble = new Ensemble(scenario, belief, comparison.settings());
          double[] treated = ensemble.mitesPerBee(plan, day);
          double[] untreated = ensemble.mitesPerBee(Plan.doNothing(), day);
          Recheck expected = Recheck.of(treated, WASH, WashMethod.ALCOHOL, scenario.parameters());
          Recheck without = Recheck.of(untreated, WASH, WashMethod.ALCOHOL, scenario.parameters());
          return new Followup(
              day,
              expected,
              without.expected(),
              expected.noticed(untreated, WashMethod.ALCOHOL, scenario.parameters()));
        });
  }

  /**
   * Some days after the first course of treatments has ended; treatments months later are another
   * course.
   */
  private static Optional<LocalDate> recheckDate(Scenario scenario, Plan plan) {
    List<PlanStep> applications =
        new ArrayList<>(
            plan.steps().stream().filter(step -> step instanceof PlanStep.Application).toList());
    if (applications.isEmpty()) {
      return Optional.empty();
    }
    Collections.sort(applications, Comparator.comparing(PlanStep::date));
    int gap = (int) scenario.parameters().value(ParameterId.ADVICE_COURSE_GAP);
    LocalDate end = applications.get(0).until();
    for (PlanStep step : applications) {
      if (!step.date().isAfter(end.plusDays(gap))) {
        end = step.until().isAfter(end) ? step.until() : end;
      }
    }
    LocalDate day =
        end.plusDays((long) scenario.parameters().value(ParameterId.ADVICE_RECHECK_DAYS));
    return day.isAfter(scenario.end()) ? Optional.empty() : Optional.of(day);
  }
}
