package org.undercap.model;

import java.util.Arrays;

/**
 * Step 4: mites leave the bees for the cells that are sealed today. An {@link InvasionRule} says
 * how strongly the cells draw them. Before, mites and brood in the older sealed cells meet what
 * acts under the cappings; the cells sealed today are spared on their first day.
 */
final class CellInvasion {
  private final InvasionRule rule;
  private final double[] mitesLeft;
  private final double[] broodLeft;
  private final double[] before;

  CellInvasion(ModelParameters p) {
    rule = p.submodels().invasion().apply(p);
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
    double[] invaded = flows.of(Flow.INVADED);
    double[] hazard = mitesLeft;
    rule.hazards(flows.of(Flow.ADULTS), workerCells, droneCells, inWorkers, inDrones);
    for (int lane = 0; lane < hazard.length; lane++) {
      double workers = inWorkers[lane];
      hazard[lane] = workers + inDrones[lane];
      inWorkers[lane] = workers / Math.max(hazard[lane], Double.MIN_NORMAL);
    }
    for (int lane = 0; lane < hazard.length; lane++) {
      invaded[lane] = Hazard.fraction(hazard[lane]);
    }
    for (int lane = 0; lane < hazard.length; lane++) {
      double leaving = phoretic[lane] * invaded[lane];
      invaded[lane] = leaving;
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
