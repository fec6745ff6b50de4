package org.undercap.model;

import static org.undercap.parameter.ParameterId.BROOD_SURVIVAL_EGG;
import static org.undercap.parameter.ParameterId.BROOD_SURVIVAL_LARVA;

/** Step 3: the brood ages by a day; eggs hatch, the oldest larvae are sealed. */
final class BroodAgeing {
  private final double[] eggSurvival;
  private final double[] workerLarvaSurvival;
  private final double[] droneLarvaSurvival;
  private final double[] survival;

  /** Worker cells sealed today (cells). */
  final double[] sealedWorkers;

  /** Drone cells sealed today (cells). */
  final double[] sealedDrones;

  BroodAgeing(ModelParameters p, ColonyLanes shape) {
    eggSurvival = p.perLane(BROOD_SURVIVAL_EGG);
    workerLarvaSurvival = daily(p.perLane(BROOD_SURVIVAL_LARVA), shape.workerLarvae.ages());
    droneLarvaSurvival = daily(p.perLane(BROOD_SURVIVAL_LARVA), shape.droneLarvae.ages());
    survival = new double[p.lanes()];
    sealedWorkers = new double[p.lanes()];
    sealedDrones = new double[p.lanes()];
  }

  private static double[] daily(double[] wholeStage, int days) {
    double[] daily = new double[wholeStage.length];
    for (int lane = 0; lane < daily.length; lane++) {
      daily[lane] = StrictMath.pow(wholeStage[lane], 1.0 / days);
    }
    return daily;
  }

  void age(ColonyLanes colony, Laying laid, DayEffects effects) {
    age(
        colony.workerEggs,
        colony.workerLarvae,
        laid.worker,
        larvae(workerLarvaSurvival, effects),
        sealedWorkers);
    age(
        colony.droneEggs,
        colony.droneLarvae,
        laid.drone,
        larvae(droneLarvaSurvival, effects),
        sealedDrones);
  }

  private double[] larvae(double[] daily, DayEffects effects) {
    if (!effects.onBrood) {
      return daily;
    }
    for (int lane = 0; lane < survival.length; lane++) {
      survival[lane] = daily[lane] * Hazard.survival(effects.openBroodHazard[lane]);
    }
    return survival;
  }

  private void age(
      Cohorts eggs, Cohorts larvae, double[] laid, double[] larvaSurvival, double[] nowSealed) {
    larvae.scale(larvaSurvival);
    System.arraycopy(larvae.oldest(), 0, nowSealed, 0, nowSealed.length);
    double[] hatching = eggs.oldest();
    double[] youngest = larvae.age();
    for (int lane = 0; lane < youngest.length; lane++) {
      youngest[lane] = hatching[lane] * eggSurvival[lane];
    }
    System.arraycopy(laid, 0, eggs.age(), 0, laid.length);
  }
}
