package org.undercap.scenario;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.undercap.hive.ArrivalLevel;
import org.undercap.parameter.ParameterSet;
import org.undercap.treatment.Method;

/**
 * A scenario as the user wrote it: every value with its text and place, nothing assumed. Parts that
 * are missing or cannot be used are empty. {@link ScenarioResolver} makes a {@link Scenario} of it.
 */
public record WrittenScenario(
    Optional<Written<String>> name,
    Optional<Written<String>> about,
    Optional<WrittenSite> site,
    Optional<WrittenColony> colony,
    Optional<WrittenMites> mites,
    Optional<Written<ArrivalLevel>> arrivals,
    List<WrittenPeriod> feeding,
    Optional<List<WrittenStep>> done,
    Optional<Written<Horizon>> horizon,
    Optional<ChosenThreshold> threshold,
    Map<String, Double> resistance,
    ParameterSet parameters,
    List<Written<Method>> methods,
    List<WrittenPlan> plans,
    boolean study,
    List<Written<Method>> allowed,
    boolean organic,
    Map<String, Integer> treatedBefore,
    Map<String, Double> costs,
    WorkLimits limits) {

  /**
   * Copies the collections.
   *
   * @param name what the scenario is called
   * @param about remarks of the user
   * @param site the place
   * @param colony the colony
   * @param mites what is known about mites
   * @param arrivals mites from other colonies
   * @param feeding spans of late feeding
   * @param done what was done before any plan; empty if the user does not say
   * @param horizon length of the run
   * @param threshold infestation at which the user wants to act
   * @param resistance share of resistant mites by class of substances (fraction)
   * @param parameters the shipped parameters with the changes of the user
   * @param methods methods of the user's own
   * @param plans the plans
   * @param study whether this is a study run, which may go beyond labels
   * @param allowed methods that the user may use; all if empty
   * @param organic whether the user keeps to organic schemes
   * @param treatedBefore how many times in a row each class of substances was used before (times)
   * @param costs cost of one application by id of the method (in the user's money)
   * @param limits what the user can spend on a colony
   */
  public WrittenScenario {
    feeding = List.copyOf(feeding);
    done = done.map(List::copyOf);
    resistance = Map.copyOf(resistance);
    methods = List.copyOf(methods);
    plans = List.copyOf(plans);
    allowed = List.copyOf(allowed);
    treatedBefore = Map.copyOf(treatedBefore);
    costs = Map.copyOf(costs);
  }
}
