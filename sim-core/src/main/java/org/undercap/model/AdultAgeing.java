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
  private final double[] move;
  private final double[] moveWeakened;
  private final double[] stay;
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
    move = new double[p.lanes()];
    moveWeakened = new double[p.lanes()];
    stay = new double[p.lanes()];
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

  void age(ColonyLanes colony, DayEffects effects, DayFlows flows) {
    double[] speed = flows.of(Flow.AGEING_SPEED);
    double[] adults = flows.of(Flow.ADULTS);
    double[] killed = flows.of(Flow.ADULTS_KILLED);
    double[] left = effects.adultsLeft;
    double[] alive = survival;
    for (int lane = 0; lane < alive.length; lane++) {
      double dead = Hazard.fraction(effects.adultHazard[lane]);
      alive[lane] = 1.0 - dead;
      killed[lane] = adults[lane] * left[lane] * dead;
    }
    double[] stage = perStage;
    double[] ratio = weakenedRatio;
    double[] floor = weakenedFloor;
    for (int lane = 0; lane < alive.length; lane++) {
      move[lane] = Math.min(1.0, speed[lane] * stage[lane]);
      moveWeakened[lane] =
          Math.min(1.0, Math.max(speed[lane], floor[lane]) * stage[lane] * ratio[lane]);
    }
    age(colony.healthy, move, flows.of(Flow.EMERGED_HEALTHY));
    age(colony.weakened, moveWeakened, flows.of(Flow.EMERGED_WEAKENED));
  }

  private void age(double[][] stages, double[] passing, double[] entering) {
    double[] staying = stay;
    double[] alive = survival;
    for (int lane = 0; lane < staying.length; lane++) {
      staying[lane] = (1.0 - passing[lane]) * alive[lane];
      passing[lane] *= alive[lane];
    }
    for (int stage = stages.length - 1; stage > 0; stage--) {
      double[] here = stages[stage];
      double[] younger = stages[stage - 1];
      for (int lane = 0; lane < here.length; lane++) {
        here[lane] = here[lane] * staying[lane] + younger[lane] * passing[lane];
      }
    }
    double[] first = stages[0];
    for (int lane = 0; lane < first.length; lane++) {
      first[lane] = first[lane] * staying[lane] + entering[lane];
    }
  }
}
