package org.undercap.scenario;

import java.util.List;

/** A plan as it was written. */
public record WrittenPlan(Written<String> name, List<WrittenStep> steps) {

  /**
   * Copies the list.
   *
   * @param name its name
   * @param steps what the keeper does, in the order of the file
   */
  public WrittenPlan {
    steps = List.copyOf(steps);
  }
}
