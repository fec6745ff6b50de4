package org.undercap.lesson;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.undercap.climate.Climate;
import org.undercap.ensemble.SeasonDates;
import org.undercap.parameter.ParameterSet;
import org.undercap.simulation.DailyColumn;
import org.undercap.simulation.DailyTable;

/**
 * What happened to one colony, by date. Values are those at the start of a day; the last day has
 * none after it, so a run ends a day after the last date that is asked for.
 */
record LessonCourse(DailyTable table) {

  /** Number of a date in the run, at most the last day before a loss. */
  int day(LocalDate date) {
    int day = (int) ChronoUnit.DAYS.between(table.start(), date);
    if (day < 0) {
      throw new IllegalArgumentException(date + " lies before the run");
    }
    return Math.min(day, table.days() - 1);
  }

  LocalDate date(int day) {
    return table.start().plusDays(day);
  }

  double mites(LocalDate date) {
    return table.mites(day(date));
  }

  double adults(LocalDate date) {
    return table.adults(day(date));
  }

  double brood(LocalDate date) {
    return table.brood(day(date));
  }

  double per100(LocalDate date) {
    return table.mitesPer100Bees(day(date));
  }

  /** Share of the mites that sit on bees (fraction). */
  double shareOnBees(LocalDate date) {
    int day = day(date);
    return table.at(DailyColumn.MITES_ON_BEES, day) / table.mites(day);
  }

  /** Sum of a column from one date to the day before another. */
  double sum(DailyColumn column, LocalDate from, LocalDate to) {
    return IntStream.range(day(from), day(to)).mapToDouble(d -> table.at(column, d)).sum();
  }

  /** Mites killed by treatments, on bees and under the cappings. */
  double killed(LocalDate from, LocalDate to) {
    return sum(DailyColumn.MITES_KILLED_ON_BEES, from, to)
        + sum(DailyColumn.MITES_KILLED_IN_CELLS, from, to);
  }

  /** Daughters born, from the account of the mites, which closes. */
  double born(LocalDate from, LocalDate to) {
    return mites(to)
        - mites(from)
        - sum(DailyColumn.MITES_ARRIVED, from, to)
        + sum(DailyColumn.MITES_LOST_AT_EMERGENCE, from, to)
        + sum(DailyColumn.MITES_DIED_NATURALLY, from, to)
        + sum(DailyColumn.MITES_REMOVED, from, to)
        + killed(from, to);
  }

  /** Day with the largest value. */
  LocalDate peak(IntToDoubleFunction value) {
    int best = 0;
    for (int day = 1; day < table.days(); day++) {
      best = value.applyAsDouble(day) > value.applyAsDouble(best) ? day : best;
    }
    return date(best);
  }

  /**
   * Share of the worker cells that held a mite among those that emerged while winter bees were
   * reared (fraction).
   */
  double parasitisedWinterBrood(Climate climate) {
    SeasonDates dates = seasonDates(climate);
    double cells = 0;
    double parasitised = 0;
    for (int day = day(dates.winterBeesFrom()); day <= day(dates.winterBeesUntil()); day++) {
      double share = table.at(DailyColumn.PARASITISED_SHARE, day);
      double opened =
          share < 1 ? table.at(DailyColumn.WORKERS_EMERGED_HEALTHY, day) / (1 - share) : 0;
      cells += opened;
      parasitised += opened * share;
    }
    return cells > 0 ? parasitised / cells : 0;
  }

  /** When the winter bees of the run emerge. */
  SeasonDates seasonDates(Climate climate) {
    return SeasonDates.of(climate, table.start(), date(table.days() - 1), ParameterSet.shipped());
  }

  /** A daily value as a line over dates, every so many days. */
  Series series(String key, IntToDoubleFunction value, LocalDate from, LocalDate to, int every) {
    List<Integer> days =
        IntStream.rangeClosed(day(from), day(to))
            .filter(day -> (day - day(from)) % every == 0)
            .boxed()
            .toList();
    return new Series(
        key,
        OptionalDouble.empty(),
        days.stream().map(day -> (double) date(day).toEpochDay()).toList(),
        days.stream().map(day -> value.applyAsDouble(day)).toList());
  }

  Series series(String key, IntToDoubleFunction value, LocalDate from, LocalDate to) {
    return series(key, value, from, to, 1);
  }
}
