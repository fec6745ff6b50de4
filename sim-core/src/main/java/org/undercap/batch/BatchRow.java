package org.undercap.batch;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.undercap.climate.Climate;
import org.undercap.hive.ArrivalLevel;
import org.undercap.internal.Checks;
import org.undercap.parameter.ParameterSet;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;

/** One run of a batch: a scenario with what the run changes in it. */
public record BatchRow(
    long number,
    String label,
    Scenario scenario,
    Climate climate,
    LocalDate start,
    LocalDate end,
    Plan plan,
    ParameterSet parameters,
    double bees,
    double broodCells,
    double mites,
    double queenQuality,
    ArrivalLevel arrivals,
    double warmer) {

  /**
   * Checks the numbers.
   *
   * @param number number of the run in its design, from 1
   * @param label what the user calls it, possibly empty
   * @param scenario all that is not said here
   * @param climate the place, in its own months
   * @param start first day
   * @param end last day, after the first
   * @param plan what the keeper does
   * @param parameters values of the parameters
   * @param bees adult workers on the first day (bees, above 0)
   * @param broodCells eggs, larvae and sealed brood on the first day (cells, at least 0)
   * @param mites all mites on the first day (mites, at least 0)
   * @param queenQuality laying against a good queen (ratio, at least 0)
   * @param arrivals mites from other colonies
   * @param warmer warmth of every day above the weather of the scenario (C)
   * @throws IllegalArgumentException if a number is out of range or the run ends before it begins
   */
  public BatchRow {
    if (number < 1) {
      throw new IllegalArgumentException("number of the run " + number + " must be at least 1");
    }
    Checks.positive(bees, "bees");
    Checks.notNegative(broodCells, "brood (cells)");
    Checks.notNegative(mites, "mites");
    Checks.notNegative(queenQuality, "queen quality");
    Checks.finite(warmer, "warmer (C)");
    if (!end.isAfter(start)) {
      throw new IllegalArgumentException("last day " + end + " must lie after first day " + start);
    }
  }

  /**
   * Length of the run, first and last day included.
   *
   * @return number of days (days, at least 2)
   */
  public int days() {
    return (int) ChronoUnit.DAYS.between(start, end) + 1;
  }
}
