package org.undercap.model;

import static org.undercap.parameter.ParameterId.DRONES_SIZE_HIGH;
import static org.undercap.parameter.ParameterId.DRONES_SIZE_LOW;
import static org.undercap.parameter.ParameterId.LAYING_HALF_SATURATION;

/**
 * Eggs of the day: the season's potential, the queen, and the number of bees that can care for
 * them.
 */
final class Laying {
  private final double[] halfSaturation;
  private final double[] dronesFrom;
  private final double[] dronesFullAt;

  /** Worker eggs of the day (eggs). */
  final double[] worker;

  /** Drone eggs of the day (eggs). */
  final double[] drone;

  Laying(ModelParameters p) {
    p.requireBelow(DRONES_SIZE_LOW, DRONES_SIZE_HIGH);
    halfSaturation = p.perLane(LAYING_HALF_SATURATION);
    dronesFrom = p.perLane(DRONES_SIZE_LOW);
    dronesFullAt = p.perLane(DRONES_SIZE_HIGH);
    worker = new double[p.lanes()];
    drone = new double[p.lanes()];
  }

  void lay(ColonyLanes colony, DayDrivers season, DayEffects effects, DayFlows flows) {
    double[] adults = flows.of(Flow.ADULTS);
    double[] eggs = flows.of(Flow.EGGS_LAID);
    double[] floor = effects.layingFloor;
    double[] factor = effects.layingFactor;
    double[] droneFactor = effects.droneFactor;
    double[] queenQuality = colony.queenQuality;
    double potential = season.potentialEggs;
    double droneShare = season.droneShare;
    double[] half = halfSaturation;
    for (int lane = 0; lane < eggs.length; lane++) {
      double bees = adults[lane];
      double cared = bees / (bees + half[lane]);
      eggs[lane] = Math.max(potential, floor[lane]) * queenQuality[lane] * cared * factor[lane];
    }
    double[] toDrones = drone;
    double[] from = dronesFrom;
    double[] full = dronesFullAt;
    for (int lane = 0; lane < eggs.length; lane++) {
      double strength = (adults[lane] - from[lane]) / (full[lane] - from[lane]);
      toDrones[lane] = Math.max(0.0, Math.min(1.0, strength));
    }
    double[] toWorkers = worker;
    for (int lane = 0; lane < eggs.length; lane++) {
      double share = Math.min(1.0, droneShare * toDrones[lane] * droneFactor[lane]);
      toDrones[lane] = eggs[lane] * share;
      toWorkers[lane] = eggs[lane] * (1.0 - share);
    }
  }
}
