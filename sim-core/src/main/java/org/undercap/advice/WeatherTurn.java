package org.undercap.advice;

import java.util.OptionalDouble;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;

/** How much warmer or cooler it must be until nothing rules a plan out. */
public final class WeatherTurn {
  /** Steps that are tried (C): forecasts are no finer. */
  private static final double STEP = 0.5;

  private WeatherTurn() {}

  /**
   * The smallest change of the first eight weeks with which a plan can be used.
   *
   * @param scenario place and rules
   * @param plan a plan
   * @return the change (C, above 0 if warmer, at most 6 either way); empty if the plan can be used
   *     as it is, or if no such change helps
   */
  public static OptionalDouble degrees(Scenario scenario, Plan plan) {
    if (new RuledOut(scenario).reasons(plan).isEmpty()) {
      return OptionalDouble.empty();
    }
    double most = Change.TEMPERATURE.amount(1);
    for (double degrees = STEP; degrees <= most; degrees += STEP) {
      for (double signed : new double[] {degrees, -degrees}) {
        Scenario changed = Change.TEMPERATURE.apply(scenario, plan.name(), signed / most);
        if (new RuledOut(changed).reasons(plan).isEmpty()) {
          return OptionalDouble.of(signed);
        }
      }
    }
    return OptionalDouble.empty();
  }
}
