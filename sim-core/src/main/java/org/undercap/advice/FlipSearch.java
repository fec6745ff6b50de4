package org.undercap.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.undercap.comparison.Comparison;
import org.undercap.comparison.Ranking;
import org.undercap.ensemble.Ensemble;
import org.undercap.ensemble.EnsembleSettings;
import org.undercap.ensemble.MiteBelief;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;

/**
 * What would change the advice: for each thing that may differ from what was written down, the
 * smallest change, upwards and downwards, that brings another plan to the front, be it by the bees
 * it saves or because nothing rules it out any more. Found by halving on a small ensemble.
 */
final class FlipSearch {
  /** One block of members: enough to order plans, and fast. */
  private static final int MEMBERS = 64;

  private static final int HALVINGS = 4;
  private final Scenario scenario;
  private final MiteBelief belief;
  private final EnsembleSettings settings;
  private final String chosen;

  private FlipSearch(Comparison comparison, MiteBelief belief, String chosen) {
    scenario = comparison.scenario();
    this.belief = belief;
    settings =
        new EnsembleSettings(
            Math.min(MEMBERS, comparison.settings().members()), comparison.settings().seed(), 1);
    this.chosen = chosen;
  }

  /**
   * Searches in all directions at once.
   *
   * @param comparison all plans held against each other
   * @param belief what is believed about the mites
   * @param chosen name of the plan that comes first
   * @return one point for each direction, in the order of {@link Change}; empty if the small
   *     ensemble does not see the plan first
   */
  static List<FlipPoint> of(Comparison comparison, MiteBelief belief, String chosen) {
    FlipSearch search = new FlipSearch(comparison, belief, chosen);
    return search.leader(Change.MITES, 0).equals(chosen) ? search.find() : List.of();
  }

  private List<FlipPoint> find() {
    record Direction(Change change, int sign) {}
    List<Direction> directions = new ArrayList<>();
    for (Change change : Change.values()) {
      if (change != Change.START) {
        directions.add(new Direction(change, 1));
        directions.add(new Direction(change, -1));
      } else if (!chosen.equals(Plan.DO_NOTHING)) {
        directions.add(new Direction(change, 1));
      }
    }
    return directions.parallelStream()
        .map(direction -> find(direction.change, direction.sign))
        .toList();
  }

  private FlipPoint find(Change change, int sign) {
    String atMost = leader(change, sign);
    if (atMost.equals(chosen)) {
      return new FlipPoint(change.id(), change.words(sign), Optional.empty());
    }
    double leads = 0;
    double reversed = sign;
    String instead = atMost;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (leads + reversed) / 2;
      String leader = leader(change, middle);
      if (leader.equals(chosen)) {
        leads = middle;
      } else {
        reversed = middle;
        instead = leader;
      }
    }
    return new FlipPoint(change.id(), change.words(reversed), Optional.of(instead));
  }

  /**
   * The plan that comes first. A change that no colony could have, as brood in a season without
   * any, changes nothing.
   */
  private String leader(Change change, double size) {
    try {
      Scenario changed = change.apply(scenario, chosen, size);
      RuledOut rules = new RuledOut(changed);
      List<Plan> plans =
          changed.plans().stream().filter(plan -> rules.reasons(plan).isEmpty()).toList();
      Ensemble ensemble = new Ensemble(changed, change.apply(belief, size), settings);
      return plans.get(Ranking.of(ensemble.run(plans, members -> {})).get(0)).name();
    } catch (IllegalArgumentException e) {
      return chosen;
    }
  }
}
