package org.undercap.scenario;

import java.util.List;
import org.undercap.treatment.PlanStep;

/** What the keeper does, on dates. */
public record Plan(String name, List<PlanStep> steps) {

  /** Name of the plan without steps that every scenario has. */
  public static final String DO_NOTHING = "Do nothing";

  /**
   * Copies the steps.
   *
   * @param name its name
   * @param steps what is done, in the order of the dates
   */
  public Plan {
    steps = List.copyOf(steps);
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
