package org.undercap.simulation;

/** Sees every day of a run. */
public interface DayObserver {
  /**
   * Called at the start of each day, before anything happens.
   *
   * @param day the day; valid during the call only
   */
  default void dayBegins(SimulationDay day) {}

  /**
   * Called at the end of each day.
   *
   * @param day the day; valid during the call only
   */
  default void dayEnds(SimulationDay day) {}
}
