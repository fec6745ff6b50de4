package org.undercap.comparison;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.undercap.climate.SeasonDay;
import org.undercap.model.ColonyLanes;
import org.undercap.model.ModelParameters;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;
import org.undercap.simulation.DailyDrivers;
import org.undercap.simulation.DailyTable;
import org.undercap.simulation.DayObserver;
import org.undercap.simulation.Explanation;
import org.undercap.simulation.Intervention;
import org.undercap.simulation.Simulator;
import org.undercap.simulation.StartShape;
import org.undercap.treatment.Interventions;

/**
 * A plan run once with the middle values of all that is uncertain.
 *
 * @param plan the plan
 * @param table every day of the run
 */
public record CentralRun(Plan plan, DailyTable table) {
  /**
   * Runs plans of a scenario.
   *
   * @param scenario place, colony and time
   * @param mites all mites on the first day (mites), at least 0
   * @param plans the plans, each with the feeding of the scenario
   * @return one run for each plan, in their order
   * @throws IllegalArgumentException if no colony of this season and place can be scaled to the
   *     facts
   */
  public static List<CentralRun> of(Scenario scenario, double mites, List<Plan> plans) {
    Setting setting = new Setting(scenario, mites);
    return plans.stream().map(setting::run).toList();
  }

  /**
   * Runs a plan and lets others see every day of it.
   *
   * @param scenario place, colony and time
   * @param mites all mites on the first day (mites), at least 0
   * @param plan the plan, with the feeding of the scenario
   * @param observer sees every day
   */
  public static void watch(Scenario scenario, double mites, Plan plan, DayObserver observer) {
    Setting setting = new Setting(scenario, mites);
    setting.simulator.run(setting.start, setting.interventions(plan), List.of(observer));
  }

  /**
   * Tells what acted on a day of a plan, and why.
   *
   * @param scenario place, colony and time
   * @param mites all mites on the first day (mites), at least 0
   * @param plan the plan
   * @param date the day
   * @return chains of intermediate values; empty if nothing acted on that day
   * @throws IllegalArgumentException if the day lies outside the run
   */
  public static List<Explanation> explain(
      Scenario scenario, double mites, Plan plan, LocalDate date) {
    long index = ChronoUnit.DAYS.between(scenario.start(), date);
    if (index < 0 || index >= scenario.days()) {
      throw new IllegalArgumentException(
          "day " + date + " must lie in the run, " + scenario.start() + " to " + scenario.end());
    }
    Setting setting = new Setting(scenario, mites);
    return setting.simulator.explain(setting.start, setting.interventions(plan), (int) index, 0);
  }

  /** Start and drivers, which all plans share. */
  private static final class Setting {
    private final Scenario scenario;
    private final ColonyLanes start;
    private final DailyDrivers drivers;
    private final Simulator simulator;

    Setting(Scenario scenario, double mites) {
      this.scenario = scenario;
      ModelParameters parameters = ModelParameters.of(scenario.parameters());
      start = StartShape.at(scenario.climate(), SeasonDay.of(scenario.start()), parameters);
      start.setQueenQuality(0, scenario.hive().queenQuality());
      start.scaleTo(0, scenario.hive().bees(), scenario.hive().broodCells(), mites);
      drivers =
          DailyDrivers.of(
              scenario.climate(), scenario.start(), scenario.days(), scenario::arrivalsOn, 1);
      simulator = new Simulator(parameters, drivers);
    }

    List<Intervention> interventions(Plan plan) {
      return Interventions.of(scenario.stepsUnder(plan), scenario.circumstances());
    }

    CentralRun run(Plan plan) {
      DailyTable table = DailyTable.of(drivers, 0);
      simulator.run(start, interventions(plan), List.of(table));
      return new CentralRun(plan, table);
    }
  }
}
