package org.undercap.scenario;

import java.util.List;
import org.undercap.treatment.PlanStep;

/**
 * What the keeper did before any plan.
 *
 * @param told whether the user said what was done, if only that it was nothing; then all counts
 *     tell how many mites there are, else those up to the first day
 * @param steps what was done, on dates before, on or after the first day; it goes with every plan
 */
public record History(boolean told, List<PlanStep> steps) {
  /** Nothing is known to have been done. */
  public static final History UNKNOWN = new History(false, List.of());

  /**
   * Copies the list.
   *
   * @param told whether the user said what was done
   * @param steps what was done
   * @throws IllegalArgumentException if steps are given but not told
   */
  public History {
    steps = List.copyOf(steps);
    if (!told && !steps.isEmpty()) {
      throw new IllegalArgumentException("steps that were done must be told");
    }
  }
}
