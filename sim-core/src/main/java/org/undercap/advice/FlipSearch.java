package org.undercap.advice;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import org.undercap.comparison.Comparison;
import org.undercap.ensemble.EnsembleSettings;
import org.undercap.ensemble.MiteBelief;
import org.undercap.ensemble.Trials;
import org.undercap.internal.Parallel;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.Method;
import org.undercap.treatment.PlanStep;

/**
 * What would change the advice: for each thing that may differ from what was written down, the
 * smallest change, upwards and downwards, that brings another plan to the front, be it by the bees
 * it saves or because nothing rules it out any more. Found on a small ensemble: changes are tried
 * from small to large, then the border is halved.
 */
final class FlipSearch {
  /** Enough to find where the order may turn, and fast. */
  private static final int MEMBERS = 32;

  /** What the few members find must hold among so many: their draws may be unlike the rest. */
  private static final int MEMBERS_THAT_CONFIRM = 256;

  /** Sizes that are tried, as parts of the most. */
  private static final double[] SIZES = {0.5, 1};

  /** What is so or not has no size between. */
  private static final double[] WHOLE = {1};

  private static final int HALVINGS = 3;
  private final Scenario scenario;
  private final MiteBelief belief;
  private final Trials few;
  private final Trials many;
  private final Plan chosen;

  private FlipSearch(Comparison comparison, MiteBelief belief, Plan chosen) {
    scenario = comparison.scenario();
    this.belief = belief.remembered();
    few = trials(comparison.settings(), MEMBERS);
    many = trials(comparison.settings(), MEMBERS_THAT_CONFIRM);
    this.chosen = chosen;
  }

  private Trials trials(EnsembleSettings settings, int members) {
    return new Trials(
        scenario,
        belief,
        new EnsembleSettings(Math.min(members, settings.members()), settings.seed(), 1));
  }

  /**
   * Searches in all directions.
   *
   * @param comparison all plans held against each other
   * @param belief what is believed about the mites
   * @param chosen the plan that comes first
   * @return one point for each direction that can be tried, in the order of {@link Change}; empty
   *     if the small ensemble does not see the plan first
   */
  static List<FlipPoint> of(Comparison comparison, MiteBelief belief, Plan chosen) {
    FlipSearch search = new FlipSearch(comparison, belief, chosen);
    Optional<String> leader = search.leader(Change.MITES, 0);
    if (!leader.equals(Optional.of(chosen.name()))) {
      return List.of();
    }
    List<Direction> directions = search.directions();
    FlipPoint[] points = new FlipPoint[directions.size()];
    Parallel.run(
        points.length,
        comparison.settings().threads(),
        () -> number -> points[number] = search.find(directions.get(number)).orElse(null));
    return Arrays.stream(points).filter(Objects::nonNull).toList();
  }

  /** A change, and which way: sizes lie between 0 and {@code most}. */
  private record Direction(Change change, double most) {}

  private List<Direction> directions() {
    List<Direction> directions = new ArrayList<>();
    for (Change change : Change.values()) {
      switch (change) {
        case START -> {
          if (!chosen.name().equals(Plan.DO_NOTHING)) {
            directions.add(new Direction(change, Change.START.sizeOf(daysLeft())));
          }
        }
        case FLOOR -> {
          if (anyMethod(method -> method.profile().evaporates())) {
            directions.add(new Direction(change, scenario.hive().openFloor() ? 1 : -1));
          }
        }
        case HUMID -> {
          if (anyMethod(method -> method.humidFactor() != 1)) {
            directions.add(new Direction(change, scenario.humid() ? -1 : 1));
          }
        }
        default -> {
          directions.add(new Direction(change, 1));
          directions.add(new Direction(change, -1));
        }
      }
    }
    return directions;
  }

  /** Whether any plan uses such a method. */
  private boolean anyMethod(Predicate<Method> such) {
    return scenario.plans().stream()
        .flatMap(plan -> plan.steps().stream())
        .anyMatch(
            step ->
                step instanceof PlanStep.Application application
                    && such.test(application.method()));
  }

  /** Days by which the chosen plan can be late and still end within the run. */
  private double daysLeft() {
    return chosen.steps().stream()
        .map(PlanStep::until)
        .mapToDouble(until -> ChronoUnit.DAYS.between(until, scenario.end()))
        .min()
        .orElse(0);
  }

  /** Empty if no colony could have even the smallest change, as brood in a season without any. */
  private Optional<FlipPoint> find(Direction direction) {
    Change change = direction.change;
    double leads = 0;
    for (double part : change.isWhole() ? WHOLE : SIZES) {
      double size = part * direction.most;
      Optional<String> leader = size == 0 ? Optional.empty() : leader(change, size);
      if (leader.isEmpty()) {
        break;
      }
      if (!leader.get().equals(chosen.name())) {
        return Optional.of(border(change, leads, size, leader.get()));
      }
      leads = size;
    }
    return leads == 0
        ? Optional.empty()
        : Optional.of(new FlipPoint(change.id(), change.words(leads), Optional.empty()));
  }

  private FlipPoint border(Change change, double from, double to, String plan) {
    double leads = from;
    double reversed = to;
    String instead = plan;
    for (int i = 0; i < HALVINGS && !change.isWhole(); i++) {
      double middle = (leads + reversed) / 2;
      String leader = leader(change, middle).orElse(chosen.name());
      if (leader.equals(chosen.name())) {
        leads = middle;
      } else {
        reversed = middle;
        instead = leader;
      }
    }
    return new FlipPoint(change.id(), change.words(reversed), Optional.of(instead));
  }

  /** The chosen plan stays first until something tells it from a better one. */
  private int first(Choice choice, List<Plan> plans) {
    List<Integer> kept =
        choice.order().stream()
            .filter(plan -> plans.get(plan).name().equals(chosen.name()))
            .filter(plan -> choice.behind().get(plan).isEmpty() && !choice.needless())
            .toList();
    return kept.isEmpty() ? choice.order().get(0) : kept.get(0);
  }

  /** The plan that comes first; empty if no colony could be changed so. */
  private Optional<String> leader(Change change, double size) {
    Optional<String> found = leader(few, change, size);
    return found.isEmpty() || found.get().equals(chosen.name())
        ? found
        : leader(many, change, size);
  }

  private Optional<String> leader(Trials today, Change change, double size) {
    Scenario changed;
    Trials trials;
    try {
      changed = change.apply(scenario, chosen.name(), size);
      trials = today.in(changed, change.apply(belief, size));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
    RuledOut rules = new RuledOut(changed);
    List<Plan> plans =
        changed.plans().stream().filter(plan -> rules.reasons(plan).isEmpty()).toList();
    List<List<Objection>> none = Collections.nCopies(plans.size(), List.of());
    Choice choice = Choice.of(trials.run(plans), none, trials.dates().judged());
    return Optional.of(plans.get(first(choice, plans)).name());
  }
}
