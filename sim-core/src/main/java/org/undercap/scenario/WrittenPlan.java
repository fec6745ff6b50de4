package org.undercap.scenario;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** A plan as it was written. */
public record WrittenPlan(
    Written<String> name, List<WrittenStep> steps, Optional<Written<LocalDate>> supersUntil) {

  /**
   * Copies the list.
   *
   * @param name its name
   * @param steps what the keeper does, in the order of the file
   * @param supersUntil last day on which honey supers are on under this plan
   */
  public WrittenPlan {
    steps = List.copyOf(steps);
  }
}
