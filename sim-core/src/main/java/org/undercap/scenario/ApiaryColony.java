package org.undercap.scenario;

import java.util.List;
import java.util.Optional;

/** A colony of an apiary: what its row means at the place and on the day of a scenario. */
public record ApiaryColony(
    String name, Optional<Scenario> scenario, String note, List<Problem> doubts) {
  /**
   * Copies the list.
   *
   * @param name name of the colony
   * @param scenario the scenario of the site with bees, brood and counts of this colony; empty if
   *     nothing was counted
   * @param note remark of the user, possibly empty
   * @param doubts what can be used but should be looked at, each with its place in the table
   */
  public ApiaryColony {
    doubts = List.copyOf(doubts);
  }
}
