package org.undercap.ensemble;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.undercap.climate.TemperatureCourse;
import org.undercap.model.ColonyLanes;
import org.undercap.model.ModelParameters;
import org.undercap.parameter.Draw;
import org.undercap.parameter.Parameter;
import org.undercap.parameter.ParameterCatalogue;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;
import org.undercap.simulation.DailyDrivers;
import org.undercap.simulation.DayObserver;
import org.undercap.simulation.Intervention;
import org.undercap.simulation.Simulator;
import org.undercap.treatment.Interventions;
import org.undercap.treatment.Treatment;

/** Some members side by side with all that was drawn for them; the same under every plan. */
final class MemberBlock {
  private final Members members;
  private final Scenario scenario;
  private final int first;
  private final ColonyLanes start;
  private final Simulator simulator;
  private final Map<String, double[]> strengths = new LinkedHashMap<>();

  MemberBlock(Members members, int first, int count) {
    this.members = members;
    this.first = first;
    scenario = members.scenario();
    Draws draws = members.draws();
    double[][] points = draws.points(first, count);
    ModelParameters parameters = ModelParameters.of(parameters(draws, points));
    start = members.shape().of(parameters);
    fill(points);
    DailyDrivers drivers =
        DailyDrivers.of(
            scenario.climate(), scenario.start(), scenario.days(), scenario::arrivalsOn, count);
    double[] warmer = drawn(ParameterId.WEATHER_OFFSET, column(points, Draws.SEASON));
    double[] arriving = drawn(ParameterId.ARRIVALS_SPREAD, column(points, Draws.ARRIVALS));
    for (int lane = 0; lane < count; lane++) {
      weather(drivers, lane, warmer[lane], draws.stream("weather", first + lane));
      arrive(drivers, lane, arriving[lane]);
    }
    for (String method : draws.methods()) {
      double[] places = column(points, draws.strength(method));
      strengths.put(method, drawn(ParameterId.TREATMENT_STRENGTH, places));
    }
    simulator = new Simulator(parameters, drivers);
  }

  private List<ParameterSet> parameters(Draws draws, double[][] points) {
    ParameterSet[] sets = new ParameterSet[points.length];
    Arrays.fill(sets, scenario.parameters());
    for (Parameter parameter : draws.uncertain()) {
      double[] values = drawn(parameter.id(), column(points, draws.dimension(parameter)));
      for (int lane = 0; lane < sets.length; lane++) {
        sets[lane] = sets[lane].with(parameter.id(), values[lane]);
      }
    }
    return List.of(sets);
  }

  private double[] drawn(ParameterId id, double[] places) {
    Draw spread = Draw.of(id, scenario.parameters());
    return Arrays.stream(places).map(spread::at).toArray();
  }

  private void fill(double[][] points) {
    double[] bees = drawn(ParameterId.COLONY_SIZE, column(points, Draws.BEES));
    double[] brood = drawn(ParameterId.COLONY_SIZE, column(points, Draws.BROOD));
    for (int lane = 0; lane < points.length; lane++) {
      bees[lane] *= scenario.hive().bees();
      brood[lane] *= scenario.hive().broodCells();
    }
    double[] mites = members.belief().mites(column(points, Draws.MITES), bees, brood);
    for (int lane = 0; lane < points.length; lane++) {
      start.setQueenQuality(lane, scenario.hive().queenQuality());
      start.scaleTo(lane, bees[lane], brood[lane], mites[lane]);
    }
  }

  private static double[] column(double[][] points, int place) {
    return Arrays.stream(points).mapToDouble(point -> point[place]).toArray();
  }

  /**
   * A warm or cold season, and days that are like the day before. What was measured on a date stays
   * as it is.
   */
  private void weather(
      DailyDrivers drivers, int lane, double warmer, UniformRandomProvider stream) {
    ZigguratSampler.NormalizedGaussian gauss = ZigguratSampler.NormalizedGaussian.of(stream);
    double persistence = scenario.parameters().value(ParameterId.WEATHER_PERSISTENCE);
    double sd = ParameterCatalogue.shipped().get(ParameterId.WEATHER_DAILY).spread().amount();
    double fresh = StrictMath.sqrt(1 - persistence * persistence) * sd;
    double anomaly = sd * gauss.sample();
    TemperatureCourse course = scenario.climate().temperature();
    LocalDate date = scenario.start();
    for (int day = 0; day < drivers.days(); day++, date = date.plusDays(1)) {
      if (!course.measured(date)) {
        drivers.temperature(day)[lane] += warmer + anomaly;
      }
      anomaly = persistence * anomaly + fresh * gauss.sample();
    }
  }

  private static void arrive(DailyDrivers drivers, int lane, double factor) {
    for (int day = 0; day < drivers.days(); day++) {
      drivers.arriving(day)[lane] *= factor;
    }
  }

  int first() {
    return first;
  }

  int lanes() {
    return start.lanes();
  }

  /**
   * Runs a plan.
   *
   * @param plan the plan
   * @param observers told of each day until all members are lost
   * @return the end of the run
   */
  Simulator.RunEnd run(Plan plan, List<DayObserver> observers) {
    return simulator.run(start, interventions(plan), observers);
  }

  /**
   * Runs a plan and writes down its outcomes.
   *
   * @param plan the plan
   * @param table where the outcomes of these members go
   * @param more told of each day too
   * @return the end of the run
   */
  Simulator.RunEnd run(Plan plan, OutcomeTable table, List<DayObserver> more) {
    OutcomeObserver outcomes = new OutcomeObserver(members, table, first, lanes());
    List<DayObserver> observers = new ArrayList<>(more);
    observers.add(outcomes);
    Simulator.RunEnd end = run(plan, observers);
    outcomes.close(end);
    return end;
  }

  private List<Intervention> interventions(Plan plan) {
    List<Intervention> result = new ArrayList<>();
    for (Intervention intervention :
        Interventions.of(scenario.stepsUnder(plan), scenario.circumstances())) {
      result.add(
          intervention instanceof Treatment treatment
              ? treatment.withStrength(strengths.get(treatment.method().id()))
              : intervention);
    }
    return result;
  }
}
