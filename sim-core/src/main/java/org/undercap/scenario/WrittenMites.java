package org.undercap.scenario;

import java.util.List;
import java.util.Optional;

/** What the user knows about mites, as it was written. */
public record WrittenMites(
    Place place, Optional<Written<Double>> inColony, List<WrittenCount> counts) {

  /**
   * Copies the list.
   *
   * @param place where it begins
   * @param inColony all mites of the colony (mites)
   * @param counts counts in the order of the file
   */
  public WrittenMites {
    counts = List.copyOf(counts);
  }
}
