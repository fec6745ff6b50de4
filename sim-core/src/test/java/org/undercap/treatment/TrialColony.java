package org.undercap.treatment;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.climate.SeasonDay;
import org.undercap.climate.Sinusoid;
import org.undercap.model.ColonyLanes;
import org.undercap.model.Flow;
import org.undercap.model.ModelParameters;
import org.undercap.parameter.ParameterSet;
import org.undercap.simulation.DailyDrivers;
import org.undercap.simulation.DailyTable;
import org.undercap.simulation.DayObserver;
import org.undercap.simulation.Intervention;
import org.undercap.simulation.SimulationDay;
import org.undercap.simulation.Simulator;
import org.undercap.simulation.StartShape;

/** A colony of early August at a constant temperature, to see what plans do to it. */
final class TrialColony {
  static final LocalDate START = LocalDate.of(2023, 8, 1);
  static final double TEMPERATURE = 13.2;
  static final double MITES = 500;
  private static final int DAYS = 90;
  private static final Climate USUAL = ClimateCatalogue.shipped().get("central-european");
  private static final Climate CLIMATE = USUAL.withTemperature(new Sinusoid(TEMPERATURE, 0, 1));

  private TrialColony() {}

  /** What was seen on a day: hazards of the mites, bees at its start, bees killed and eggs. */
  record Seen(double onBees, double inCells, double bees, double beesKilled, double eggs) {}

  static Simulator simulator() {
    return new Simulator(
        ModelParameters.of(ParameterSet.shipped()),
        DailyDrivers.of(CLIMATE, START, DAYS, date -> 0, 1));
  }

  static ColonyLanes colony() {
    ColonyLanes colony =
        StartShape.at(USUAL, SeasonDay.of(START), ModelParameters.of(ParameterSet.shipped()));
    colony.scaleTo(0, 20_000, 25_000, MITES);
    return colony;
  }

  static List<Seen> see(List<? extends PlanStep> steps, Circumstances circumstances) {
    return watch(Interventions.of(steps, circumstances));
  }

  static List<Seen> watch(List<Intervention> interventions) {
    List<double[]> hazards = new ArrayList<>();
    List<Intervention> watched = new ArrayList<>(interventions);
    watched.add(
        (day, effects) ->
            hazards.add(new double[] {effects.hazardOnBees(0), effects.hazardInCells(0)}));
    List<Seen> seen = new ArrayList<>();
    DayObserver evening =
        new DayObserver() {
          @Override
          public void dayEnds(SimulationDay day) {
            double[] today = hazards.get(day.index());
            seen.add(
                new Seen(
                    today[0],
                    today[1],
                    day.flows().of(Flow.ADULTS, 0),
                    day.flows().of(Flow.ADULTS_KILLED, 0),
                    day.flows().of(Flow.EGGS_LAID, 0)));
          }
        };
    simulator().run(colony(), watched, List.of(evening));
    return seen;
  }

  static DailyTable table(PlanStep... steps) {
    DailyTable table = DailyTable.of(DailyDrivers.of(CLIMATE, START, DAYS, date -> 0, 1), 0);
    simulator()
        .run(
            colony(),
            Interventions.of(List.of(steps), Circumstances.usual(CLIMATE.eggs().max())),
            List.of(table));
    return table;
  }

  static double potentialEggs(int day) {
    return CLIMATE.potentialEggs(SeasonDay.of(START.plusDays(day)));
  }

  static double droneShare(int day) {
    return CLIMATE.droneShare(SeasonDay.of(START.plusDays(day)));
  }
}
