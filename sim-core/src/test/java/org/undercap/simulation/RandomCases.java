package org.undercap.simulation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.rng.UniformRandomProvider;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.parameter.Parameter;
import org.undercap.parameter.ParameterCatalogue;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.treatment.Circumstances;
import org.undercap.treatment.Method;
import org.undercap.treatment.MethodCatalogue;
import org.undercap.treatment.PlanStep;

/** Makes random cases: any place, season and plan, parameters within their ranges. */
final class RandomCases {
  private final UniformRandomProvider random;

  private RandomCases(UniformRandomProvider random) {
    this.random = random;
  }

  /** A case with parameters anywhere within the ranges of the catalogue. */
  static RandomCase any(UniformRandomProvider random) {
    return new RandomCases(random).make();
  }

  private RandomCase make() {
    Climate climate = climate();
    LocalDate start = LocalDate.of(2023, 1, 1).plusDays(random.nextInt(1000));
    int days = 30 + random.nextInt(400);
    ParameterSet parameters = parameters();
    return new RandomCase(
        climate,
        start,
        days,
        parameters,
        between(3_000, 40_000),
        between(0.2, 2),
        Math.exp(between(0, 8.5)),
        random.nextInt(3) == 0 ? 0 : between(0, 20),
        steps(start, days, MethodCatalogue.with(parameters).all()),
        circumstances(climate, parameters));
  }

  private Climate climate() {
    Climate climate = one(ClimateCatalogue.shipped().all());
    return random.nextBoolean() ? climate : climate.mirrored();
  }

  private ParameterSet parameters() {
    ParameterSet set = ParameterSet.shipped();
    for (Parameter p : ParameterCatalogue.shipped().all()) {
      if (p.low().isEmpty() || p.high().isEmpty()) {
        continue;
      }
      double[] values = new double[p.values().size()];
      for (int i = 0; i < values.length; i++) {
        values[i] = between(p.low().get(i), p.high().get(i));
      }
      if (p.id() == ParameterId.BROOD_WORKER_DAYS) {
        values = random.nextBoolean() ? new double[] {3, 5, 11} : new double[] {3, 6, 12};
      } else if (p.id() == ParameterId.DISPERSION_WORKER) {
        values[0] = random.nextBoolean() ? between(2, 8) : Double.POSITIVE_INFINITY;
      }
      set = set.with(p.id(), values);
    }
    return set;
  }

  private Circumstances circumstances(Climate climate, ParameterSet parameters) {
    Map<String, Double> resistant = new HashMap<>();
    for (String substance : List.of("amitraz", "pyrethroid", "thymol")) {
      if (random.nextInt(3) == 0) {
        resistant.put(substance, random.nextDouble());
      }
    }
    return new Circumstances(
        random.nextBoolean(), random.nextBoolean(), resistant, climate.eggs().max(), parameters);
  }

  private List<PlanStep> steps(LocalDate start, int days, List<Method> methods) {
    List<PlanStep> steps = new ArrayList<>();
    for (int left = random.nextInt(7); left > 0; left--) {
      LocalDate date = start.plusDays(random.nextInt(days));
      if (random.nextBoolean()) {
        Method method = one(methods);
        LocalDate again = date.plusDays(7 + random.nextInt(14));
        steps.add(new PlanStep.Application(date, method, between(0.2, 2)));
        steps.add(new PlanStep.Application(again, method, 1));
      } else {
        steps.add(measure(date));
      }
    }
    return steps;
  }

  private PlanStep measure(LocalDate date) {
    return switch (random.nextInt(7)) {
      case 0 -> new PlanStep.LayingStop(date, 1 + random.nextInt(30), random.nextBoolean());
      case 1 -> new PlanStep.DroneCombRemoval(date, random.nextDouble());
      case 2 -> new PlanStep.DroneFrame(date, date.plusDays(random.nextInt(60)), between(0, 30));
      case 3 -> new PlanStep.BroodRemoval(date, random.nextDouble());
      case 4 -> new PlanStep.ShookSwarm(date);
      case 5 ->
          new PlanStep.Split(date, random.nextDouble(), random.nextDouble(), random.nextInt(30));
      default -> new PlanStep.LateFeeding(date, date.plusDays(random.nextInt(30)));
    };
  }

  private double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  private <T> T one(List<T> all) {
    return all.get(random.nextInt(all.size()));
  }
}
