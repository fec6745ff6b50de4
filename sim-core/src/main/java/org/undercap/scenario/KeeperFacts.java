package org.undercap.scenario;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.undercap.internal.Checks;

/**
 * What else bears on a decision beside the colony itself.
 *
 * @param supersUntil last day on which honey supers are on, if the user said so
 * @param treatedBefore how many times in a row each class of substances was used before (times)
 * @param costs cost of one application by id of the method (in the user's money)
 * @param limits what the user can spend on a colony
 * @param untested what lies outside the range in which the model was tested, in words; empty if
 *     nothing does
 */
public record KeeperFacts(
    Optional<LocalDate> supersUntil,
    Map<String, Integer> treatedBefore,
    Map<String, Double> costs,
    WorkLimits limits,
    List<String> untested) {
  /**
   * Copies the collections and checks the numbers.
   *
   * @param supersUntil last day on which honey supers are on
   * @param treatedBefore each at least 0 (times)
   * @param costs each at least 0 (in the user's money)
   * @param limits what the user can spend on a colony
   * @param untested what lies outside the tested range
   * @throws IllegalArgumentException if a number is out of range
   */
  public KeeperFacts {
    treatedBefore = Map.copyOf(treatedBefore);
    costs = Map.copyOf(costs);
    untested = List.copyOf(untested);
    treatedBefore.forEach(
        (substance, times) -> Checks.notNegative(times, "times " + substance + " was used"));
    costs.forEach((method, cost) -> Checks.notNegative(cost, "cost of " + method));
  }
}
