package org.undercap.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.undercap.comparison.Comparison;
import org.undercap.comparison.Ranking;
import org.undercap.ensemble.Ensemble;
import org.undercap.ensemble.EnsembleSettings;
import org.undercap.ensemble.MiteBelief;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;

/**
 * What would change the advice: for each thing that may differ from what was written down, the
 * smallest change, upwards and downwards, that brings the second plan before the first. Found by
 * halving on a small ensemble.
 */
final class FlipSearch {
  /** One block of members: enough to order two plans, and fast. */
  private static final int MEMBERS = 64;

  private static final int HALVINGS = 5;
  private final Scenario scenario;
  private final MiteBelief belief;
  private final EnsembleSettings settings;
  private final Plan first;
  private final Plan second;

  FlipSearch(
      Scenario scenario, MiteBelief belief, EnsembleSettings settings, Plan first, Plan second) {
    this.scenario = scenario.withPlans(List.of(first, second));
    this.belief = belief;
    this.settings = new EnsembleSettings(Math.min(MEMBERS, settings.members()), settings.seed(), 1);
    this.first = first;
    this.second = second;
  }

  List<FlipPoint> find() {
    if (!firstLeads(Change.MITES, 0)) {
      return List.of();
    }
    List<FlipPoint> points = new ArrayList<>();
    record Direction(Change change, int sign) {}
    Stream.of(Change.values())
        .flatMap(change -> Stream.of(new Direction(change, 1), new Direction(change, -1)))
        .filter(direction -> !(direction.change == Change.START && first.steps().isEmpty()))
        .parallel()
        .map(direction -> find(direction.change, direction.sign))
        .forEachOrdered(points::add);
    return List.copyOf(points);
  }

  private FlipPoint find(Change change, int sign) {
    if (firstLeads(change, sign)) {
      return new FlipPoint(change.id(), change.words(sign), false);
    }
    double leads = 0;
    double reversed = sign;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (leads + reversed) / 2;
      if (firstLeads(change, middle)) {
        leads = middle;
      } else {
        reversed = middle;
      }
    }
    return new FlipPoint(change.id(), change.words(reversed), true);
  }

  /**
   * A change that no colony could have, as brood in a season without any, leaves the order as it
   * is.
   */
  private boolean firstLeads(Change change, double size) {
    try {
      Scenario changed = change.apply(scenario, size);
      Ensemble ensemble = new Ensemble(changed, change.apply(belief, size), settings);
      List<Plan> both =
          changed.plans().stream()
              .filter(plan -> isOne(plan, first) || isOne(plan, second))
              .toList();
      List<Integer> order = Ranking.of(ensemble.run(both, members -> {}));
      return isOne(both.get(order.get(0)), first);
    } catch (IllegalArgumentException e) {
      return true;
    }
  }

  private static boolean isOne(Plan plan, Plan wanted) {
    return plan.name().equals(wanted.name());
  }

  static List<FlipPoint> of(Comparison comparison, MiteBelief belief, int first, int second) {
    List<Plan> plans = comparison.scenario().plans();
    return new FlipSearch(
            comparison.scenario(),
            belief,
            comparison.settings(),
            plans.get(first),
            plans.get(second))
        .find();
  }
}
