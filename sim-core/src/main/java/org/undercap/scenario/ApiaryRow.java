package org.undercap.scenario;

import java.util.List;
import java.util.Optional;
import org.undercap.monitoring.Count;

/** A colony of an apiary as it was written: one row of a table. */
public record ApiaryRow(
    Written<String> colony,
    Optional<Written<Amount<BeeUnit>>> bees,
    Optional<Written<Amount<BroodUnit>>> brood,
    List<Count> counts,
    String note,
    List<Problem> doubts) {
  /**
   * Copies the lists.
   *
   * @param colony name of the colony
   * @param bees how many bees; empty if as in the scenario file
   * @param brood how much brood; empty if as in the scenario file
   * @param counts counts of the first day of the run
   * @param note remark of the user, possibly empty
   * @param doubts what can be used but should be looked at
   */
  public ApiaryRow {
    counts = List.copyOf(counts);
    doubts = List.copyOf(doubts);
  }
}
