package org.undercap.simulation;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;

/** Keeps every day of one colony's run, column by column. */
public final class DailyTable implements DayObserver {
  private final LocalDate start;
  private final int lane;
  private final Map<DailyColumn, double[]> values = new EnumMap<>(DailyColumn.class);
  private int days;
  private boolean lost;

  private DailyTable(LocalDate start, int capacity, int lane) {
    this.start = start;
    this.lane = lane;
    for (DailyColumn column : DailyColumn.values()) {
      values.put(column, new double[capacity]);
    }
  }

  /**
   * An empty table for a run.
   *
   * @param drivers the run's days
   * @param lane the colony to keep
   * @return a table to be given to the simulator as an observer
   */
  public static DailyTable of(DailyDrivers drivers, int lane) {
    return new DailyTable(drivers.start(), drivers.days(), lane);
  }

  @Override
  public void dayBegins(SimulationDay day) {
    if (lost) {
      return;
    }
    values.forEach(
        (column, kept) -> {
          if (!column.isFlow()) {
            kept[days] = column.atStart(day, lane);
          }
        });
  }

  @Override
  public void dayEnds(SimulationDay day) {
    if (lost) {
      return;
    }
    values.forEach(
        (column, kept) -> {
          if (column.isFlow()) {
            kept[days] = column.atEnd(day, lane);
          }
        });
    days++;
    lost = day.isLost(lane);
  }

  /**
   * First day.
   *
   * @return its date
   */
  public LocalDate start() {
    return start;
  }

  /**
   * Days kept.
   *
   * @return number of days
   */
  public int days() {
    return days;
  }

  /**
   * Whether the colony was lost on the last day kept.
   *
   * @return true if lost
   */
  public boolean lost() {
    return lost;
  }

  /**
   * One column.
   *
   * @param column which
   * @return a copy, one value a day
   */
  public double[] column(DailyColumn column) {
    return Arrays.copyOf(values.get(column), days);
  }

  /**
   * One value.
   *
   * @param column which
   * @param day number of the day, from 0
   * @return the value; unit as {@link DailyColumn} says
   */
  public double at(DailyColumn column, int day) {
    return values.get(column)[day];
  }

  /**
   * All mites at the start of a day.
   *
   * @param day number of the day, from 0
   * @return mites on bees and mothers under the cappings (mites)
   */
  public double mites(int day) {
    return at(DailyColumn.MITES_ON_BEES, day) + mitesInCells(day);
  }

  /**
   * Mites under the cappings at the start of a day.
   *
   * @param day number of the day, from 0
   * @return mother mites in sealed brood (mites)
   */
  public double mitesInCells(int day) {
    return at(DailyColumn.MITES_IN_WORKER_CELLS, day) + at(DailyColumn.MITES_IN_DRONE_CELLS, day);
  }

  /**
   * Adult workers at the start of a day.
   *
   * @param day number of the day, from 0
   * @return healthy and weakened (bees)
   */
  public double adults(int day) {
    return at(DailyColumn.ADULTS_HEALTHY, day) + at(DailyColumn.ADULTS_WEAKENED, day);
  }

  /**
   * Brood at the start of a day.
   *
   * @param day number of the day, from 0
   * @return eggs, larvae and sealed brood of workers and drones (cells)
   */
  public double brood(int day) {
    double sum = 0;
    for (DailyColumn column : EnumSet.range(DailyColumn.EGGS_WORKER, DailyColumn.SEALED_DRONE)) {
      sum += at(column, day);
    }
    return sum;
  }

  /**
   * Mites on bees for each 100 adult bees, as a wash would find with perfect recovery.
   *
   * @param day number of the day, from 0
   * @return mites per 100 bees; 0 if there are no bees
   */
  public double mitesPer100Bees(int day) {
    double bees = adults(day);
    return bees > 0 ? 100 * at(DailyColumn.MITES_ON_BEES, day) / bees : 0;
  }

  /**
   * Mites that fall on the floor on a day, by themselves or killed on the bees or falling when bees
   * emerge.
   *
   * @param day number of the day, from 0
   * @return mite fall (mites per day)
   */
  public double miteFall(int day) {
    return at(DailyColumn.MITES_LOST_AT_EMERGENCE, day)
        + at(DailyColumn.MITES_DIED_NATURALLY, day)
        + at(DailyColumn.MITES_KILLED_ON_BEES, day)
        + at(DailyColumn.MITES_KILLED_IN_CELLS, day);
  }
}
