package org.undercap.model;

/** Step 1: brood and bees that the keeper takes out, with the mites in and on them. */
final class KeeperRemoval {
  private final double[] before;
  private final double[] after;

  KeeperRemoval(int lanes) {
    before = new double[lanes];
    after = new double[lanes];
  }

  void remove(ColonyLanes colony, DayEffects effects, DayFlows flows) {
    if (!effects.removal) {
      return;
    }
    colony.mitesTo(before);
    takeBrood(
        effects.workerBroodLeft,
        colony.workerEggs,
        colony.workerLarvae,
        colony.sealedWorkers,
        colony.mothersInWorkers);
    takeBrood(
        effects.droneBroodLeft,
        colony.droneEggs,
        colony.droneLarvae,
        colony.sealedDrones,
        colony.mothersInDrones);
    takeBees(colony, effects.adultsLeft);
    colony.mitesTo(after);
    double[] removed = flows.of(Flow.REMOVED);
    for (int lane = 0; lane < removed.length; lane++) {
      removed[lane] = before[lane] - after[lane];
    }
  }

  private static void takeBrood(double[] left, Cohorts... brood) {
    for (Cohorts cohorts : brood) {
      cohorts.scale(left);
    }
  }

  private static void takeBees(ColonyLanes colony, double[] left) {
    for (int lane = 0; lane < left.length; lane++) {
      for (int stage = 0; stage < colony.healthy.length; stage++) {
        colony.healthy[stage][lane] *= left[lane];
        colony.weakened[stage][lane] *= left[lane];
      }
      colony.drones[lane] *= left[lane];
      colony.phoretic[lane] *= left[lane];
    }
  }
}
