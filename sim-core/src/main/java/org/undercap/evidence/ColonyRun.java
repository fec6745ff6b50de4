package org.undercap.evidence;

import java.time.LocalDate;
import java.time.Month;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.climate.SeasonDay;
import org.undercap.climate.Sinusoid;
import org.undercap.hive.ArrivalCatalogue;
import org.undercap.hive.ArrivalLevel;
import org.undercap.model.ColonyLanes;
import org.undercap.model.ModelParameters;
import org.undercap.parameter.ParameterSet;
import org.undercap.simulation.DailyDrivers;
import org.undercap.simulation.DailyTable;
import org.undercap.simulation.DayObserver;
import org.undercap.simulation.Simulator;
import org.undercap.simulation.StartShape;
import org.undercap.treatment.Circumstances;
import org.undercap.treatment.Interventions;
import org.undercap.treatment.MethodCatalogue;
import org.undercap.treatment.PlanStep;

/**
 * One colony of a check, put together in a sentence: {@code
 * ColonyRun.in("central-european").from(on(MARCH, 1)).mites(50).until(on(OCTOBER, 1))}. With the
 * shipped parameters, the usual weather of the climate, no arrivals and no treatment unless said.
 */
final class ColonyRun {
  static final ModelParameters PARAMETERS = ModelParameters.of(ParameterSet.shipped());

  /** Runs begin in a common year, so that no 29 February lies within the first three of them. */
  private static final int FIRST_YEAR = 2021;

  private final Climate climate;
  private Climate weather;
  private LocalDate start = on(Month.JANUARY, 1);
  private Consumer<ColonyLanes> scaling = colony -> colony.scaleMites(0, 0);
  private ToDoubleFunction<LocalDate> arrivals = date -> 0;
  private final List<PlanStep> steps = new ArrayList<>();

  private ColonyRun(Climate climate) {
    this.climate = climate;
    weather = climate;
  }

  static ColonyRun in(String climateId) {
    return in(ClimateCatalogue.shipped().get(climateId));
  }

  static ColonyRun in(Climate climate) {
    return new ColonyRun(climate);
  }

  /** A day of the first year. */
  static LocalDate on(Month month, int day) {
    return LocalDate.of(FIRST_YEAR, month, day);
  }

  /** The first day; bees and brood are as usual on it. */
  ColonyRun from(LocalDate first) {
    start = first;
    return this;
  }

  /** All mites on the first day (mites); no mites unless said. */
  ColonyRun mites(double all) {
    scaling = colony -> colony.scaleMites(0, all);
    return this;
  }

  /** Bees, brood and mites on the first day are brought to what is known of a colony. */
  ColonyRun scaled(Consumer<ColonyLanes> toKnownNumbers) {
    scaling = toKnownNumbers;
    return this;
  }

  /** The same daily mean outside temperature (C) on every day of the run. */
  ColonyRun at(double celsius) {
    weather = climate.withTemperature(new Sinusoid(celsius, 0, 0));
    return this;
  }

  /** Mites that arrive on a date (mites per day). */
  ColonyRun arriving(ToDoubleFunction<LocalDate> mitesPerDay) {
    arrivals = mitesPerDay;
    return this;
  }

  /** A shipped level of arrivals. */
  ColonyRun arriving(String level) {
    ArrivalLevel shipped = ArrivalCatalogue.shipped().get(level);
    return arriving(date -> shipped.at(date, climate.hemisphere()));
  }

  /** A full dose of a shipped method on each of the dates. */
  ColonyRun treat(String method, LocalDate... dates) {
    Arrays.stream(dates)
        .map(date -> new PlanStep.Application(date, MethodCatalogue.shipped().get(method), 1))
        .forEach(steps::add);
    return this;
  }

  /** Something else that the keeper does. */
  ColonyRun doing(PlanStep step) {
    steps.add(step);
    return this;
  }

  /** The colony on the first day. */
  ColonyLanes firstDay() {
    ColonyLanes colony = StartShape.at(climate, SeasonDay.of(start), PARAMETERS);
    scaling.accept(colony);
    return colony;
  }

  /** Runs to the end of a day; observers see every day. */
  Course until(LocalDate last, DayObserver... observers) {
    return from(firstDay(), last, observers);
  }

  /** Runs on from a state on the first day to the end of a day. */
  Course from(ColonyLanes state, LocalDate last, DayObserver... observers) {
    int days = (int) ChronoUnit.DAYS.between(start, last) + 1;
    DailyDrivers drivers = DailyDrivers.of(weather, start, days, arrivals, 1);
    DailyTable table = DailyTable.of(drivers, 0);
    List<DayObserver> all = new ArrayList<>(List.of(observers));
    all.add(table);
    Circumstances circumstances = Circumstances.usual(climate.eggs().max());
    Simulator.RunEnd end =
        new Simulator(PARAMETERS, drivers).run(state, Interventions.of(steps, circumstances), all);
    return new Course(table, end.colony());
  }
}
