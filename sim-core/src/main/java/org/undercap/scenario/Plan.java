package org.undercap.scenario;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.undercap.treatment.PlanStep;

/**
 * What the keeper does, on dates.
 *
 * @param name its name
 * @param steps what is done, in the order of the dates
 * @param supersUntil last day on which honey supers are on under this plan, where it is another
 *     than that of the colony
 */
public record Plan(String name, List<PlanStep> steps, Optional<LocalDate> supersUntil) {

  /** Name of the plan without steps that every scenario has. */
  public static final String DO_NOTHING = "Do nothing";

  /**
   * Copies the steps.
   *
   * @param name its name
   * @param steps what is done, in the order of the dates
   * @param supersUntil last day on which honey supers are on under this plan
   */
  public Plan {
    steps = List.copyOf(steps);
  }

  /**
   * A plan that leaves the honey supers as the colony has them.
   *
   * @param name its name
   * @param steps what is done, in the order of the dates
   */
  public Plan(String name, List<PlanStep> steps) {
    this(name, steps, Optional.empty());
  }

  /**
   * The plan to which all others are compared.
   *
   * @return a plan without steps
   */
  public static Plan doNothing() {
    return new Plan(DO_NOTHING, List.of());
  }
}
