package org.undercap.analysis;

import java.time.LocalDate;
import java.time.Month;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.undercap.climate.Climate;
import org.undercap.climate.Hemisphere;
import org.undercap.climate.SeasonDay;
import org.undercap.model.ColonyLanes;
import org.undercap.model.Flow;
import org.undercap.model.ModelParameters;
import org.undercap.model.SideBySide;
import org.undercap.parameter.ParameterSet;
import org.undercap.simulation.DailyDrivers;
import org.undercap.simulation.DayObserver;
import org.undercap.simulation.SimulationDay;
import org.undercap.simulation.Simulator;
import org.undercap.simulation.StartShape;

/**
 * Growth of the mites in an untreated colony of a climate without arrivals, as field studies
 * measure it: 50 mites on 1 March, least-squares slope of the logarithm of all mites from 15 April
 * to 15 September, autumn on 1 October; in the south all half a year later.
 */
public final class GrowthRates {
  private static final int YEAR = 2021;
  private static final LocalDate START = LocalDate.of(YEAR, Month.MARCH, 1);
  private static final int FIRST = day(LocalDate.of(YEAR, Month.APRIL, 15));
  private static final int LAST = day(LocalDate.of(YEAR, Month.SEPTEMBER, 15));
  private static final int AUTUMN = day(LocalDate.of(YEAR, Month.OCTOBER, 1));
  private static final double START_MITES = 50;
  private static final int HALF_A_YEAR = 6;
  private static final int LANES = 64;

  private GrowthRates() {}

  /**
   * Growth with one set of parameters.
   *
   * @param climate place; its usual weather is used
   * @param parameters values of the parameters
   * @return growth over the season
   * @throws IllegalArgumentException if a healthy colony does not live in this climate
   * @throws IllegalStateException if the mites kill the colony before autumn
   */
  public static SeasonGrowth overSeason(Climate climate, ParameterSet parameters) {
    return overSeason(climate, List.of(parameters)).get(0);
  }

  /**
   * Growth with several sets of parameters, run side by side.
   *
   * @param climate place; its usual weather is used
   * @param parameters sets of values
   * @return growth over the season, one a set, in their order
   * @throws IllegalArgumentException if a healthy colony does not live in this climate
   * @throws IllegalStateException if the mites kill a colony before autumn
   */
  public static List<SeasonGrowth> overSeason(Climate climate, List<ParameterSet> parameters) {
    List<SeasonGrowth> growth = new ArrayList<>();
    for (Optional<SeasonGrowth> one : side(climate, parameters)) {
      growth.add(
          one.orElseThrow(
              () ->
                  new IllegalStateException(
                      "the mites kill the colony in climate "
                          + climate.id()
                          + " before autumn, or die out; there is no growth rate with these"
                          + " parameters")));
    }
    return List.copyOf(growth);
  }

  /**
   * Growth with several sets of parameters, some of which may be such that bees or mites cannot
   * live.
   *
   * @param climate place; its usual weather is used
   * @param parameters sets of values
   * @return growth over the season, one a set, in their order; empty where the mites kill the
   *     colony before autumn or die out, or where no healthy colony lives
   */
  public static List<Optional<SeasonGrowth>> whereTheyLive(
      Climate climate, List<ParameterSet> parameters) {
    try {
      return side(climate, parameters);
    } catch (IllegalArgumentException e) {
      if (parameters.size() == 1) {
        return List.of(Optional.empty());
      }
    }
    List<Optional<SeasonGrowth>> one = new ArrayList<>();
    parameters.forEach(set -> one.addAll(whereTheyLive(climate, List.of(set))));
    return one;
  }

  private static List<Optional<SeasonGrowth>> side(Climate climate, List<ParameterSet> parameters) {
    List<Optional<SeasonGrowth>> growth =
        new ArrayList<>(Collections.nCopies(parameters.size(), Optional.empty()));
    for (List<Integer> group : SideBySide.groups(parameters, LANES)) {
      double[][] mites = run(climate, group.stream().map(parameters::get).toList());
      for (int lane = 0; lane < group.size(); lane++) {
        growth.set(group.get(lane), growth(mites[lane]));
      }
    }
    return growth;
  }

  /** All mites by colony and day. */
  private static double[][] run(Climate climate, List<ParameterSet> sets) {
    int shift = climate.hemisphere() == Hemisphere.SOUTH ? HALF_A_YEAR : 0;
    LocalDate first = START.plusMonths(shift);
    ModelParameters parameters = ModelParameters.of(sets);
    ColonyLanes start = StartShape.at(climate, SeasonDay.of(first), parameters);
    double[][] mites = new double[sets.size()][AUTUMN + 1];
    for (int lane = 0; lane < mites.length; lane++) {
      start.scaleMites(lane, START_MITES);
    }
    DailyDrivers days = DailyDrivers.of(climate, first, AUTUMN + 1, date -> 0, sets.size());
    DayObserver counter =
        new DayObserver() {
          @Override
          public void dayBegins(SimulationDay day) {
            for (int lane = 0; lane < mites.length; lane++) {
              mites[lane][day.index()] = day.flows().of(Flow.MITES_BEFORE, lane);
            }
          }
        };
    new Simulator(parameters, days).run(start, List.of(), List.of(counter));
    return mites;
  }

  private static Optional<SeasonGrowth> growth(double[] mites) {
    if (!(mites[AUTUMN] > 0)) {
      return Optional.empty();
    }
    SimpleRegression line = new SimpleRegression();
    for (int day = FIRST; day <= LAST; day++) {
      line.addData(day, StrictMath.log(mites[day]));
    }
    return Optional.of(
        new SeasonGrowth(line.getSlope(), mites[LAST] / mites[FIRST], mites[AUTUMN] / START_MITES));
  }

  private static int day(LocalDate date) {
    return (int) ChronoUnit.DAYS.between(START, date);
  }
}
