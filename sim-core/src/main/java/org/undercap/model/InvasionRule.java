package org.undercap.model;

import static org.undercap.parameter.ParameterId.ADULT_WEIGHT;
import static org.undercap.parameter.ParameterId.INVASION_DRONE;
import static org.undercap.parameter.ParameterId.INVASION_WORKER;

/**
 * How strongly cells that are sealed today draw mites off the bees. Asked once a day for all
 * colonies side by side, so that a rule of one's own costs no more than its arithmetic; to be given
 * to {@link ModelParameters#with(Submodels)}.
 */
@FunctionalInterface
public interface InvasionRule {
  /**
   * Hazards of one day for a mite on the bees. Arrays hold one value a colony.
   *
   * @param adults adult workers at the start of the day (bees), 0 in a lost colony
   * @param workerCells worker cells sealed today (cells), at least 0
   * @param droneCells drone cells sealed today (cells), at least 0
   * @param intoWorkers to be filled: hazard of entering a worker cell (per day), finite, at least 0
   * @param intoDrones to be filled: hazard of entering a drone cell (per day), finite, at least 0
   */
  void hazards(
      double[] adults,
      double[] workerCells,
      double[] droneCells,
      double[] intoWorkers,
      double[] intoDrones);

  /**
   * The rule that ships: {@code h = rate * cells / grams of bees}.
   *
   * @param p parameters {@code invasion.worker}, {@code invasion.drone} and {@code adult.weight}
   * @return the rule
   */
  static InvasionRule perGramOfBees(ModelParameters p) {
    double[] toWorker = p.perLane(INVASION_WORKER);
    double[] toDrone = p.perLane(INVASION_DRONE);
    double[] weight = p.perLane(ADULT_WEIGHT);
    return (adults, workerCells, droneCells, intoWorkers, intoDrones) -> {
      for (int lane = 0; lane < weight.length; lane++) {
        double perGram = 1.0 / Math.max(adults[lane] * weight[lane], Double.MIN_NORMAL);
        intoWorkers[lane] = toWorker[lane] * workerCells[lane] * perGram;
        intoDrones[lane] = toDrone[lane] * droneCells[lane] * perGram;
      }
    };
  }
}
