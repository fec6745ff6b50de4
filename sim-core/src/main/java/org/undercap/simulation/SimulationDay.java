package org.undercap.simulation;

import java.time.LocalDate;
import org.undercap.model.ColonyLanes;
import org.undercap.model.DayFlows;
import org.undercap.model.DayStep;
import org.undercap.model.Flow;

/**
 * One day of a run as interventions and observers see it. The same object serves all days of a run.
 */
public final class SimulationDay {
  private final DailyDrivers drivers;
  private final DayStep step;
  private final long firstEpochDay;
  private int index;

  SimulationDay(DailyDrivers drivers, DayStep step) {
    this.drivers = drivers;
    this.step = step;
    firstEpochDay = drivers.start().toEpochDay();
  }

  void moveTo(int day) {
    index = day;
  }

  /**
   * Number of the day in the run.
   *
   * @return 0 for the first day
   */
  public int index() {
    return index;
  }

  /**
   * The date as a number, for reckoning without making dates.
   *
   * @return days since 1970-01-01
   */
  public long epochDay() {
    return firstEpochDay + index;
  }

  /**
   * The date.
   *
   * @return the date
   */
  public LocalDate date() {
    return LocalDate.ofEpochDay(epochDay());
  }

  /**
   * Day of the 365-day year.
   *
   * @return 1 to 365
   */
  public int seasonDay() {
    return drivers.seasonDay(index);
  }

  /**
   * Number of colonies side by side.
   *
   * @return lanes, at least 1
   */
  public int lanes() {
    return drivers.lanes();
  }

  /**
   * Temperature of the day.
   *
   * @param lane the colony
   * @return daily mean outside temperature (C)
   */
  public double temperature(int lane) {
    return drivers.temperature(index)[lane];
  }

  /**
   * Open brood for each adult at the start of the day, against a full brood nest.
   *
   * @param lane the colony
   * @return brood index (0 to 1)
   */
  public double broodIndex(int lane) {
    return step.flows().of(Flow.BROOD_INDEX, lane);
  }

  /**
   * The colonies: at the start of the day until the day is taken, then at its end.
   *
   * @return the state, live, not to be changed
   */
  public ColonyLanes colony() {
    return step.colony();
  }

  /**
   * What happened: adults and brood index at the start of the day, everything at its end.
   *
   * @return the flows, live, not to be changed
   */
  public DayFlows flows() {
    return step.flows();
  }

  /**
   * Whether a colony is lost.
   *
   * @param lane the colony
   * @return true from the end of the day on which it had too few bees
   */
  public boolean isLost(int lane) {
    return step.isLost(lane);
  }
}
