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
 * @param needless whether no treatment is needed at all: doing nothing harms the bees as little as
 *     any plan, and at least 9 of 10 members stay below the limit to the end
 * @param flips what would change the choice
 * @param anotherWash whether another wash is worth it
 * @param followup when to count again after the treatment
 * @param nextWash when to count again if no treatment is needed now; empty if one is
 */
public record Advice(
    Comparison comparison,
    List<List<Objection>> ruledOut,
    List<Integer> order,
    List<Optional<By>> behind,
    boolean needless,
    List<FlipPoint> flips,
    WashValue anotherWash,
    Optional<Followup> followup,
    Optional<NextWash> nextWash) {
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
   * @param followup when to count again after the treatment
   * @param nextWash when to count again if no treatment is needed now
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
    Choice ranked = Choice.of(outcomes(comparison), reasons, comparison.dates().judged());
    Optional<NextWash> wash = nextWash(comparison, ranked);
    boolean waits = wash.flatMap(NextWash::instead).isPresent();
    Choice choice = waits ? ranked.waiting() : ranked;
    int chosen = choice.order().get(0);
    return new Advice(
        comparison,
        reasons,
        choice.order(),
        choice.behind(),
        choice.needless(),
        waits || choice.order().size() < 2
            ? List.of()
            : FlipSearch.of(comparison, belief, scenario.plans().get(chosen)),
        WashValue.of(comparison, choice),
        followup(comparison, chosen),
        wash);
  }

  /**
   * The wash for which a colony can wait: no plan that begins before it would spare the bees harm
   * that anyone could see.
   */
  private static Optional<NextWash> nextWash(Comparison comparison, Choice choice) {
    Scenario scenario = comparison.scenario();
    int first = choice.order().get(0);
    return NextWash.of(scenario, comparison.results().get(NOTHING).bands())
        .flatMap(
            wash ->
                !wash.comesAfterTheBeginOf(scenario.plans().get(first))
                    ? Optional.of(wash)
                    : choice.nothingHarmsNoMore() && wash.allowsToWait(scenario)
                        ? Optional.of(wash.insteadOf(first))
                        : Optional.empty());
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
