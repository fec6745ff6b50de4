package org.undercap.ensemble;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.undercap.climate.SeasonDay;
import org.undercap.climate.TemperatureCourse;
import org.undercap.model.ColonyLanes;
import org.undercap.model.ModelParameters;
import org.undercap.parameter.Parameter;
import org.undercap.parameter.ParameterCatalogue;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.scenario.Scenario;
import org.undercap.simulation.DailyDrivers;
import org.undercap.simulation.Intervention;
import org.undercap.simulation.Simulator;
import org.undercap.simulation.StartShape;
import org.undercap.treatment.Interventions;
import org.undercap.treatment.PlanStep;
import org.undercap.treatment.Treatment;

/** Some members side by side with all that was drawn for them; the same under every plan. */
final class MemberBlock {
  private final Scenario scenario;
  private final ColonyLanes start;
  private final Simulator simulator;
  private final Map<String, double[]> strengths = new LinkedHashMap<>();

  MemberBlock(Scenario scenario, MiteBelief belief, Draws draws, int first, int count) {
    this.scenario = scenario;
    double[][] points = draws.points(first, count);
    ModelParameters parameters =
        ModelParameters.of(parameters(scenario.parameters(), draws, points));
    start = StartShape.at(scenario.climate(), SeasonDay.of(scenario.start()), parameters);
    DailyDrivers drivers =
        DailyDrivers.of(
            scenario.climate(), scenario.start(), scenario.days(), scenario::arrivalsOn, count);
    fill(points, belief);
    for (int lane = 0; lane < count; lane++) {
      weather(drivers, lane, points[lane][Draws.SEASON], draws.stream("weather", first + lane));
      arrive(
          drivers,
          lane,
          Quantiles.factor(ParameterId.ARRIVALS_SPREAD, points[lane][Draws.ARRIVALS]));
    }
    for (String method : draws.methods()) {
      double[] factors = new double[count];
      for (int lane = 0; lane < count; lane++) {
        factors[lane] =
            scenario.parameters().value(ParameterId.TREATMENT_STRENGTH)
                * Quantiles.factor(
                    ParameterId.TREATMENT_STRENGTH, points[lane][draws.strength(method)]);
      }
      strengths.put(method, factors);
    }
    simulator = new Simulator(parameters, drivers);
  }

  private static List<ParameterSet> parameters(ParameterSet base, Draws draws, double[][] points) {
    List<ParameterSet> sets = new ArrayList<>();
    for (double[] point : points) {
      ParameterSet set = base;
      for (Parameter parameter : draws.uncertain()) {
        double value =
            Quantiles.of(parameter, base.value(parameter.id()), point[draws.dimension(parameter)]);
        set = set.with(parameter.id(), value);
      }
      sets.add(set);
    }
    return sets;
  }

  private void fill(double[][] points, MiteBelief belief) {
    double[] places = column(points, Draws.MITES);
    double[] bees = column(points, Draws.BEES);
    double[] brood = column(points, Draws.BROOD);
    for (int lane = 0; lane < points.length; lane++) {
      bees[lane] = scenario.hive().bees() * Quantiles.factor(ParameterId.COLONY_SIZE, bees[lane]);
      brood[lane] =
          scenario.hive().broodCells() * Quantiles.factor(ParameterId.COLONY_SIZE, brood[lane]);
    }
    double[] mites = belief.mites(places, bees, brood);
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
      DailyDrivers drivers, int lane, double season, UniformRandomProvider stream) {
    ZigguratSampler.NormalizedGaussian gauss = ZigguratSampler.NormalizedGaussian.of(stream);
    ParameterSet p = scenario.parameters();
    double offset = spread(ParameterId.WEATHER_OFFSET) * Quantiles.normal(season);
    double persistence = p.value(ParameterId.WEATHER_PERSISTENCE);
    double sd = spread(ParameterId.WEATHER_DAILY);
    double fresh = StrictMath.sqrt(1 - persistence * persistence) * sd;
    double anomaly = sd * gauss.sample();
    TemperatureCourse course = scenario.climate().temperature();
    LocalDate date = scenario.start();
    for (int day = 0; day < drivers.days(); day++, date = date.plusDays(1)) {
      if (!course.measured(date)) {
        drivers.temperature(day)[lane] += offset + anomaly;
      }
      anomaly = persistence * anomaly + fresh * gauss.sample();
    }
  }

  private static double spread(ParameterId id) {
    return ParameterCatalogue.shipped().get(id).spread().amount();
  }

  private static void arrive(DailyDrivers drivers, int lane, double factor) {
    for (int day = 0; day < drivers.days(); day++) {
      drivers.arriving(day)[lane] *= factor;
    }
  }

  Simulator simulator() {
    return simulator;
  }

  ColonyLanes start() {
    return start;
  }

  List<Intervention> interventions(List<PlanStep> steps) {
    List<Intervention> result = new ArrayList<>();
    for (Intervention intervention : Interventions.of(steps, scenario.circumstances())) {
      result.add(
          intervention instanceof Treatment treatment
              ? treatment.withStrength(strengths.get(treatment.method().id()))
              : intervention);
    }
    return result;
  }
}
