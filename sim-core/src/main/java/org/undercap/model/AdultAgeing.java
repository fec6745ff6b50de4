package org.undercap.model;

import static org.undercap.parameter.ParameterId.*;

import java.util.Arrays;

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
    double[] from = flightFrom;
    double[] full = flightFull;
    for (int lane = 0; lane < speed.length; lane++) {
      double flight = (temperature[lane] - from[lane]) / (full[lane] - from[lane]);
      speed[lane] = Math.max(0.0, Math.min(1.0, flight));
    }
    double[] weight = broodWeight;
    double[] least = minimum;
    for (int lane = 0; lane < speed.length; lane++) {
      double w = weight[lane];
      double busy = w * broodIndex[lane] + (1.0 - w) * speed[lane];
      speed[lane] = least[lane] + (1.0 - least[lane]) * busy;
    }
  }

  void age(ColonyLanes colony, DayEffects effects, DayFlows flows) {
    double[] speed = flows.of(Flow.AGEING_SPEED);
    survive(effects, flows.of(Flow.ADULTS), flows.of(Flow.ADULTS_KILLED));
    double[] stage = perStage;
    double[] ratio = weakenedRatio;
    double[] floor = weakenedFloor;
    double[] well = move;
    double[] weak = moveWeakened;
    for (int lane = 0; lane < well.length; lane++) {
      well[lane] = Math.min(1.0, speed[lane] * stage[lane]);
    }
    for (int lane = 0; lane < weak.length; lane++) {
      weak[lane] = Math.min(1.0, Math.max(speed[lane], floor[lane]) * stage[lane] * ratio[lane]);
    }
    age(colony.healthy, move, flows.of(Flow.EMERGED_HEALTHY));
    age(colony.weakened, moveWeakened, flows.of(Flow.EMERGED_WEAKENED));
  }

  /** Which share of the adults outlives what acts on them today. */
  private void survive(DayEffects effects, double[] adults, double[] killed) {
    double[] alive = survival;
    if (!effects.onAdults) {
      Arrays.fill(alive, 1.0);
      Arrays.fill(killed, 0.0);
      return;
    }
    double[] hazard = effects.adultHazard;
    for (int lane = 0; lane < alive.length; lane++) {
      killed[lane] = Hazard.fraction(hazard[lane]);
    }
    double[] left = effects.adultsLeft;
    for (int lane = 0; lane < alive.length; lane++) {
      double dead = killed[lane];
      alive[lane] = 1.0 - dead;
      killed[lane] = adults[lane] * left[lane] * dead;
    }
  }

  private void age(double[][] stages, double[] passing, double[] entering) {
    double[] staying = stay;
    double[] alive = survival;
    for (int lane = 0; lane < staying.length; lane++) {
      staying[lane] = (1.0 - passing[lane]) * alive[lane];
      passing[lane] *= alive[lane];
    }
    int stage = stages.length - 1;
    for (; stage > 1; stage -= 2) {
      age(stages[stage], stages[stage - 1], stages[stage - 2], staying, passing);
    }
    if (stage == 1) {
      double[] here = stages[1];
      double[] younger = stages[0];
      for (int lane = 0; lane < here.length; lane++) {
        here[lane] = here[lane] * staying[lane] + younger[lane] * passing[lane];
      }
    }
    double[] first = stages[0];
    for (int lane = 0; lane < first.length; lane++) {
      first[lane] = first[lane] * staying[lane] + entering[lane];
    }
  }

  /** Two stages at a time, which saves traffic. */
  private static void age(
      double[] old, double[] middle, double[] young, double[] staying, double[] passing) {
    for (int lane = 0; lane < old.length; lane++) {
      double stay = staying[lane];
      double pass = passing[lane];
      double between = middle[lane];
      old[lane] = old[lane] * stay + between * pass;
      middle[lane] = between * stay + young[lane] * pass;
    }
  }
}
