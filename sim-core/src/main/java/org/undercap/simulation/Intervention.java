package org.undercap.simulation;

import java.util.List;
import org.undercap.model.DayEffects;

/**
 * Something that a keeper does to colonies on some days: a treatment, or a measure without a
 * substance.
 */
public interface Intervention {
  /**
   * Enters into the effects of a day what this does on it; nothing on days on which it does not
   * act.
   *
   * @param day the day, at its start
   * @param effects to be added to
   */
  void act(SimulationDay day, DayEffects effects);

  /**
   * Tells why it acts as it does on a day.
   *
   * @param day the day, at its start
   * @param lane the colony
   * @return chains of intermediate values, empty on days on which it does not act
   */
  default List<Explanation> explain(SimulationDay day, int lane) {
    return List.of();
  }
}
