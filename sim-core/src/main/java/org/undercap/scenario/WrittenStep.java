package org.undercap.scenario;

import java.time.LocalDate;
import java.util.List;
import org.undercap.treatment.PlanStep;

/** A step of a plan as it was written, with the repetitions that it asks for. */
public record WrittenStep(Written<LocalDate> first, Written<LocalDate> last, List<PlanStep> steps) {

  /**
   * Copies the list.
   *
   * @param first day of the step
   * @param last day of its last repetition, or the last day that it names; the same as {@code
   *     first} if it is not repeated
   * @param steps what is done on these days
   */
  public WrittenStep {
    steps = List.copyOf(steps);
  }
}
