package org.undercap.evidence;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.function.IntToDoubleFunction;
import org.undercap.model.ColonyLanes;
import org.undercap.simulation.DailyColumn;
import org.undercap.simulation.DailyTable;

/**
 * What happened to one colony, by date. States are those at the start of a day; a colony has no
 * bees and no mites after it was lost.
 *
 * @param table every day
 * @param end the colony after the last day
 */
record Course(DailyTable table, ColonyLanes end) {

  /** Number of a date in the run, from 0. */
  int day(LocalDate date) {
    int day = (int) ChronoUnit.DAYS.between(table.start(), date);
    if (day < 0 || (day >= table.days() && !table.lost())) {
      throw new IllegalArgumentException(date + " is not in the run");
    }
    return day;
  }

  LocalDate date(int day) {
    return table.start().plusDays(day);
  }

  private double whileAlive(LocalDate date, IntToDoubleFunction value) {
    int day = day(date);
    return day < table.days() ? value.applyAsDouble(day) : 0;
  }

  /** All mites at the start of a date (mites). */
  double mites(LocalDate date) {
    return whileAlive(date, table::mites);
  }

  /** Adult workers at the start of a date (bees). */
  double adults(LocalDate date) {
    return whileAlive(date, table::adults);
  }

  /** Mites on bees at the start of a date (mites per 100 bees). */
  double mitesPer100Bees(LocalDate date) {
    return whileAlive(date, table::mitesPer100Bees);
  }

  /** One column on a date. */
  double at(DailyColumn column, LocalDate date) {
    return whileAlive(date, day -> table.at(column, day));
  }

  /** Sum of a value over dates, both ends included. */
  double sum(LocalDate from, LocalDate until, IntToDoubleFunction value) {
    double sum = 0;
    for (int day = day(from); day <= day(until); day++) {
      sum += value.applyAsDouble(day);
    }
    return sum;
  }

  /** Mean of a value over dates, both ends included. */
  double mean(LocalDate from, LocalDate until, IntToDoubleFunction value) {
    return sum(from, until, value) / (ChronoUnit.DAYS.between(from, until) + 1);
  }

  /** Mites killed by treatments on a day, on bees and under the cappings (mites). */
  double killed(int day) {
    return table.at(DailyColumn.MITES_KILLED_ON_BEES, day)
        + table.at(DailyColumn.MITES_KILLED_IN_CELLS, day);
  }
}
