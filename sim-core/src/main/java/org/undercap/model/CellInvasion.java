package org.undercap.model;

import static org.undercap.parameter.ParameterId.ADULT_WEIGHT;
import static org.undercap.parameter.ParameterId.INVASION_DRONE;
import static org.undercap.parameter.ParameterId.INVASION_WORKER;

import java.util.Arrays;

/**
 * Step 4: mites leave the bees for the cells that are sealed today. Each cell is a hazard that gets
 * smaller the more bees there are: {@code h = rate * cells / grams of bees}. Before, mites and
 * brood in the older sealed cells meet what acts under the cappings; the cells sealed today are
 * spared on their first day.
 */
final class CellInvasion {
  private final double[] workerRate;
  private final double[] droneRate;
  private final double[] beeWeight;
  private final double[] mitesLeft;
  private final double[] broodLeft;
  private final double[] before;

  CellInvasion(ModelParameters p) {
    workerRate = p.perLane(INVASION_WORKER);
    droneRate = p.perLane(INVASION_DRONE);
    beeWeight = p.perLane(ADULT_WEIGHT);
    mitesLeft = new double[p.lanes()];
    broodLeft = new double[p.lanes()];
    before = new double[p.lanes()];
  }

  void invade(ColonyLanes colony, BroodAgeing brood, DayEffects effects, DayFlows flows) {
    double[] workerCells = colony.sealedWorkers.age();
    double[] droneCells = colony.sealedDrones.age();
    double[] inWorkers = colony.mothersInWorkers.age();
    double[] inDrones = colony.mothersInDrones.age();
    for (int lane = 0; lane < workerCells.length; lane++) {
      workerCells[lane] = droneCells[lane] = inWorkers[lane] = inDrones[lane] = 0.0;
    }
    actUnderCappings(colony, effects, flows);
    double[] adults = flows.of(Flow.ADULTS);
    double[] invaded = flows.of(Flow.INVADED);
    double[] phoretic = colony.phoretic;
    for (int lane = 0; lane < workerCells.length; lane++) {
      double grams = adults[lane] * beeWeight[lane];
      double perGram = grams > 0 ? 1.0 / grams : 0.0;
      double toWorkers = workerRate[lane] * brood.sealedWorkers[lane] * perGram;
      double toDrones = droneRate[lane] * brood.sealedDrones[lane] * perGram;
      double hazard = toWorkers + toDrones;
      double leaving = phoretic[lane] * Hazard.fraction(hazard);
      double workerPart = hazard > 0 ? leaving * (toWorkers / hazard) : 0.0;
      workerCells[lane] = brood.sealedWorkers[lane];
      droneCells[lane] = brood.sealedDrones[lane];
      inWorkers[lane] = workerPart;
      inDrones[lane] = leaving - workerPart;
      invaded[lane] = leaving;
      phoretic[lane] -= leaving;
    }
  }

  private void actUnderCappings(ColonyLanes colony, DayEffects effects, DayFlows flows) {
    if (!effects.inCells) {
      return;
    }
    double[] killed = flows.of(Flow.KILLED_IN_CELLS);
    Arrays.fill(before, 0.0);
    colony.mothersInWorkers.addTo(before);
    colony.mothersInDrones.addTo(before);
    for (int lane = 0; lane < killed.length; lane++) {
      broodLeft[lane] = Hazard.survival(effects.sealedBroodHazard[lane]);
      mitesLeft[lane] = broodLeft[lane] * Hazard.survival(effects.hazardInCells[lane]);
      killed[lane] = before[lane] * (1.0 - mitesLeft[lane]);
    }
    colony.sealedWorkers.scale(broodLeft);
    colony.sealedDrones.scale(broodLeft);
    colony.mothersInWorkers.scale(mitesLeft);
    colony.mothersInDrones.scale(mitesLeft);
  }
}
