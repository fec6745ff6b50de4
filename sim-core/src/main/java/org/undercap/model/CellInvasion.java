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
    Arrays.fill(workerCells, 0.0);
    Arrays.fill(droneCells, 0.0);
    Arrays.fill(inWorkers, 0.0);
    Arrays.fill(inDrones, 0.0);
    actUnderCappings(colony, effects, flows);
    System.arraycopy(brood.sealedWorkers, 0, workerCells, 0, workerCells.length);
    System.arraycopy(brood.sealedDrones, 0, droneCells, 0, droneCells.length);
    enterCells(colony.phoretic, workerCells, droneCells, inWorkers, inDrones, flows);
  }

  private void enterCells(
      double[] phoretic,
      double[] workerCells,
      double[] droneCells,
      double[] inWorkers,
      double[] inDrones,
      DayFlows flows) {
    double[] adults = flows.of(Flow.ADULTS);
    double[] invaded = flows.of(Flow.INVADED);
    double[] weight = beeWeight;
    double[] toWorker = workerRate;
    double[] toDrone = droneRate;
    double[] hazard = mitesLeft;
    for (int lane = 0; lane < hazard.length; lane++) {
      double perGram = 1.0 / Math.max(adults[lane] * weight[lane], Double.MIN_NORMAL);
      double workers = toWorker[lane] * workerCells[lane] * perGram;
      hazard[lane] = workers + toDrone[lane] * droneCells[lane] * perGram;
      inWorkers[lane] = workers / Math.max(hazard[lane], Double.MIN_NORMAL);
    }
    for (int lane = 0; lane < hazard.length; lane++) {
      invaded[lane] = phoretic[lane] * Hazard.fraction(hazard[lane]);
    }
    for (int lane = 0; lane < hazard.length; lane++) {
      double leaving = invaded[lane];
      double workerPart = leaving * inWorkers[lane];
      inWorkers[lane] = workerPart;
      inDrones[lane] = leaving - workerPart;
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
