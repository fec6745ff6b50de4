package org.undercap.model;

import static org.undercap.parameter.ParameterId.*;

/**
 * Step 6: adult workers age through a chain of stages, fast while they nurse and fly, slowly as
 * winter bees. Bees that were parasitised under the cappings age faster and never become winter
 * bees. The bees that emerged today enter the first stage.
 */
final class AdultAgeing {
  private final double[] minimum;
  private final double[] broodWeight;
  private final double[] flightFrom;
  private final double[] flightFull;
  private final double[] perStage;
  private final double[] weakenedRatio;
  private final double[] weakenedFloor;
  private final double[] pass;
  private final double[] passWeakened;
  private final double[] survival;

  AdultAgeing(ModelParameters p) {
    p.requireBelow(AGEING_FLIGHT_LOW, AGEING_FLIGHT_HIGH);
    minimum = p.perLane(AGEING_MINIMUM);
    broodWeight = p.perLane(AGEING_BROOD_WEIGHT);
    flightFrom = p.perLane(AGEING_FLIGHT_LOW);
    flightFull = p.perLane(AGEING_FLIGHT_HIGH);
    weakenedRatio = p.perLane(PARASITISED_AGEING);
    weakenedFloor = p.perLane(PARASITISED_AGEING_FLOOR);
    double stages = p.shared(ADULT_LIFE_STAGES)[0];
    perStage = p.perLane(ADULT_LIFE_SUMMER);
    for (int lane = 0; lane < perStage.length; lane++) {
      perStage[lane] = stages / perStage[lane];
    }
    pass = new double[p.lanes()];
    passWeakened = new double[p.lanes()];
    survival = new double[p.lanes()];
  }

  /** Ageing speed of the day from brood and flying weather. */
  void speed(DayDrivers season, DayFlows flows) {
    double[] broodIndex = flows.of(Flow.BROOD_INDEX);
    double[] speed = flows.of(Flow.AGEING_SPEED);
    double[] temperature = season.temperature;
    for (int lane = 0; lane < speed.length; lane++) {
      double flight =
          (temperature[lane] - flightFrom[lane]) / (flightFull[lane] - flightFrom[lane]);
      double flying = Math.max(0.0, Math.min(1.0, flight));
      double nursing = broodIndex[lane];
      double w = broodWeight[lane];
      speed[lane] = minimum[lane] + (1.0 - minimum[lane]) * (w * nursing + (1.0 - w) * flying);
    }
  }

  void age(ColonyLanes colony, Emergence emerged, DayEffects effects, DayFlows flows) {
    double[] speed = flows.of(Flow.AGEING_SPEED);
    double[] adults = flows.of(Flow.ADULTS);
    double[] killed = flows.of(Flow.ADULTS_KILLED);
    for (int lane = 0; lane < speed.length; lane++) {
      double v = speed[lane];
      double dead = Hazard.fraction(effects.adultHazard[lane]);
      pass[lane] = Math.min(1.0, v * perStage[lane]);
      passWeakened[lane] =
          Math.min(1.0, Math.max(v, weakenedFloor[lane]) * perStage[lane] * weakenedRatio[lane]);
      survival[lane] = 1.0 - dead;
      killed[lane] = adults[lane] * effects.adultsLeft[lane] * dead;
    }
    age(colony.healthy, pass, emerged.healthy);
    age(colony.weakened, passWeakened, emerged.weakened);
  }

  private void age(double[][] stages, double[] passing, double[] entering) {
    for (int stage = stages.length - 1; stage > 0; stage--) {
      double[] here = stages[stage];
      double[] younger = stages[stage - 1];
      for (int lane = 0; lane < here.length; lane++) {
        double p = passing[lane];
        here[lane] = (here[lane] * (1.0 - p) + younger[lane] * p) * survival[lane];
      }
    }
    double[] first = stages[0];
    for (int lane = 0; lane < first.length; lane++) {
      first[lane] = first[lane] * (1.0 - passing[lane]) * survival[lane] + entering[lane];
    }
  }
}
