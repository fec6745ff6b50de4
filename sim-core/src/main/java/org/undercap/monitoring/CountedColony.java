package org.undercap.monitoring;

import java.time.LocalDate;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.undercap.climate.Climate;
import org.undercap.internal.Checks;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.treatment.Circumstances;
import org.undercap.treatment.PlanStep;

/**
 * A colony of which mites were counted, and what happened to it while they were counted.
 *
 * @param climate the place, with its weather
 * @param date day for which bees and brood are given and the mites are wanted
 * @param bees adult workers (bees)
 * @param broodCells eggs, larvae and sealed brood (cells)
 * @param queenQuality laying against a good queen (ratio)
 * @param arrivals mites that come with bees from other colonies on a date (mites per day)
 * @param warmer how much warmer the days were than the climate says (C)
 * @param steps what the keeper did, before or between the counts
 * @param circumstances what treatments met, and the parameters
 */
public record CountedColony(
    Climate climate,
    LocalDate date,
    double bees,
    double broodCells,
    double queenQuality,
    ToDoubleFunction<LocalDate> arrivals,
    double warmer,
    List<PlanStep> steps,
    Circumstances circumstances) {

  /**
   * Checks the numbers.
   *
   * @param climate the place
   * @param date day for which bees and brood are given and the mites are wanted
   * @param bees above 0 (bees)
   * @param broodCells at least 0 (cells)
   * @param queenQuality at least 0 (ratio)
   * @param arrivals mites that arrive on a date (mites per day)
   * @param warmer finite (C)
   * @param steps what the keeper did
   * @param circumstances what treatments met, and the parameters
   * @throws IllegalArgumentException if a number is out of range
   */
  public CountedColony {
    Checks.positive(bees, "adult bees");
    Checks.notNegative(broodCells, "brood (cells)");
    Checks.notNegative(queenQuality, "queen quality");
    Checks.finite(warmer, "days warmer than the climate (C)");
    steps = List.copyOf(steps);
  }

  /**
   * A colony with a good queen that was left alone and met no foreign mites.
   *
   * @param climate the place
   * @param date day for which bees and brood are given and the mites are wanted
   * @param bees adult workers (bees, above 0)
   * @param broodCells eggs, larvae and sealed brood (cells, at least 0)
   * @return the colony, with the shipped parameters
   * @throws IllegalArgumentException if a number is out of range
   */
  public static CountedColony of(Climate climate, LocalDate date, double bees, double broodCells) {
    Circumstances usual = Circumstances.usual(climate.eggs().max());
    return new CountedColony(climate, date, bees, broodCells, 1, day -> 0, 0, List.of(), usual);
  }

  /**
   * The values of the parameters.
   *
   * @return those of the circumstances
   */
  public ParameterSet parameters() {
    return circumstances.parameters();
  }

  double parameter(ParameterId id) {
    return parameters().value(id);
  }

  /**
   * The same colony with a queen of another quality.
   *
   * @param quality laying against a good queen (ratio, at least 0)
   * @return the changed copy
   * @throws IllegalArgumentException if the number is out of range
   */
  public CountedColony withQueenQuality(double quality) {
    return new CountedColony(
        climate, date, bees, broodCells, quality, arrivals, warmer, steps, circumstances);
  }

  /**
   * The same colony with mites arriving.
   *
   * @param perDay mites that arrive on a date (mites per day, at least 0)
   * @return the changed copy
   */
  public CountedColony withArrivals(ToDoubleFunction<LocalDate> perDay) {
    return new CountedColony(
        climate, date, bees, broodCells, queenQuality, perDay, warmer, steps, circumstances);
  }

  /**
   * The same colony in other weather.
   *
   * @param celsius how much warmer the days were than the climate says (C); negative if colder
   * @return the changed copy
   * @throws IllegalArgumentException if the number is not finite
   */
  public CountedColony withWarmerDays(double celsius) {
    return new CountedColony(
        climate, date, bees, broodCells, queenQuality, arrivals, celsius, steps, circumstances);
  }

  /**
   * The same colony with another history.
   *
   * @param done what the keeper did, before or between the counts
   * @param met what treatments met, and the parameters
   * @return the changed copy
   */
  public CountedColony withSteps(List<? extends PlanStep> done, Circumstances met) {
    return new CountedColony(
        climate, date, bees, broodCells, queenQuality, arrivals, warmer, List.copyOf(done), met);
  }
}
