package org.undercap.advice;

import java.util.List;
import java.util.Optional;
import org.undercap.comparison.Comparison;
import org.undercap.comparison.Ranking;
import org.undercap.comparison.Ranking.By;
import org.undercap.comparison.RecountDay;
import org.undercap.ensemble.MiteBelief;
import org.undercap.ensemble.OutcomeTable;
import org.undercap.ensemble.PlanResult;
import org.undercap.monitoring.Recheck;
import org.undercap.monitoring.WashMethod;
import org.undercap.parameter.ParameterSet;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;

/**
 * What to do.
 *
 * @param comparison all plans held against each other
 * @param ruledOut reasons against each plan by its place in the scenario; empty if nothing speaks
 *     against it
 * @param order places of the plans that nothing rules out, the best first
 * @param behind by what plans fell behind the best of these, by place in the scenario; empty for
 *     the best, for plans that nothing tells from it, and for those ruled out
 * @param needless whether doing nothing comes first because no treatment is needed: it harms the
 *     bees as little as any, and at least 9 of 10 runs stay below the limit
 * @param flips what would change the choice
 * @param anotherWash whether another wash is worth it
 * @param followup when to count again
 */
public record Advice(
    Comparison comparison,
    List<List<Objection>> ruledOut,
    List<Integer> order,
    List<Optional<By>> behind,
    boolean needless,
    List<FlipPoint> flips,
    WashValue anotherWash,
    Optional<Followup> followup) {
  private static final int WASH = 300;

  /** Doing nothing is the first of the plans. */
  private static final int NOTHING = 0;

  /**
   * Copies the lists.
   *
   * @param comparison all plans held against each other
   * @param ruledOut reasons against each plan
   * @param order places of the plans that nothing rules out, at least one
   * @param behind by what plans fell behind
   * @param needless whether no treatment is needed
   * @param flips what would change the choice
   * @param anotherWash whether another wash is worth it
   * @param followup when to count again
   * @throws IllegalArgumentException if all plans are ruled out
   */
  public Advice {
    ruledOut = ruledOut.stream().map(List::copyOf).toList();
    order = List.copyOf(order);
    behind = List.copyOf(behind);
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
    List<List<Objection>> reasons = scenario.plans().stream().map(rules::objections).toList();
    Choice choice = Choice.of(outcomes(comparison), reasons, comparison.dates().judged());
    Plan chosen = scenario.plans().get(choice.order().get(0));
    return new Advice(
        comparison,
        reasons,
        choice.order(),
        choice.behind(),
        choice.needless(),
        choice.order().size() < 2 ? List.of() : FlipSearch.of(comparison, belief, chosen),
        WashValue.of(comparison.results(), choice.order(), scenario.parameters()),
        followup(comparison, choice.order().get(0)));
  }

  private static List<OutcomeTable> outcomes(Comparison comparison) {
    return comparison.results().stream().map(PlanResult::outcomes).toList();
  }

  /**
   * Whether a plan would come before the one to take if nothing ruled it out.
   *
   * @param place a plan
   * @return what puts it first; empty if it would not come first
   */
  public Optional<By> wouldLeadBy(int place) {
    List<OutcomeTable> all = outcomes(comparison);
    Ranking two =
        Ranking.of(List.of(all.get(chosen()), all.get(place)), comparison.dates().judged());
    return two.order().get(0) == 1 ? two.behind().get(0) : Optional.empty();
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

  private static Optional<Followup> followup(Comparison comparison, int chosen) {
    Scenario scenario = comparison.scenario();
    Plan plan = scenario.plans().get(chosen);
    return RecountDay.of(plan, scenario)
        .map(
            day -> {
              double[] treated = comparison.results().get(chosen).washes().on(day);
              double[] untreated = comparison.results().get(NOTHING).washes().on(day);
              ParameterSet parameters = scenario.parameters();
              Recheck expected = Recheck.of(treated, WASH, WashMethod.ALCOHOL, parameters);
              return new Followup(
                  day,
                  expected,
                  Recheck.mean(untreated, WASH, WashMethod.ALCOHOL, parameters),
                  expected.noticed(untreated, WashMethod.ALCOHOL, parameters));
            });
  }
}
