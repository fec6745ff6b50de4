package org.undercap.model;

import static org.undercap.parameter.ParameterId.REPRODUCTION_DRONE;
import static org.undercap.parameter.ParameterId.REPRODUCTION_WINTER_FACTOR;
import static org.undercap.parameter.ParameterId.REPRODUCTION_WORKER;

/**
 * How many daughters ripen in the cells that open today. Asked once a day and kind of cell for all
 * colonies side by side; to be given to {@link ModelParameters#with(Submodels)}.
 */
@FunctionalInterface
public interface ReproductionRule {
  /** Kinds of cells. */
  enum Cells {
    /** Worker cells. */
    WORKER,
    /** Drone cells. */
    DRONE
  }

  /**
   * Daughters of one day. Arrays hold one value a colony.
   *
   * @param cells kind of the cells
   * @param mothers mothers in the cells that open (mites), at least 0
   * @param crowding what sharing cells leaves of each mother's daughters, by the mean number of
   *     mothers a cell and the parameters {@code dispersion} and {@code crowding} (fraction)
   * @param broodIndex open brood against a full brood nest (0 to 1)
   * @param daughters to be filled: ripe daughters of all these mothers (mites), finite, at least 0,
   *     before some fall with the emerging bee
   */
  void daughters(
      Cells cells, double[] mothers, double[] crowding, double[] broodIndex, double[] daughters);

  /**
   * The rule that ships: each mother has so many daughters in a full brood nest, and without brood
   * a share of them; {@code mothers * perMother * (winter + (1 - winter) * broodIndex) * crowding}.
   *
   * @param p parameters {@code reproduction.worker}, {@code reproduction.drone} and {@code
   *     reproduction.winterFactor}
   * @return the rule
   */
  static ReproductionRule byBroodNest(ModelParameters p) {
    double[] ofWorker = p.perLane(REPRODUCTION_WORKER);
    double[] ofDrone = p.perLane(REPRODUCTION_DRONE);
    double[] winter = p.perLane(REPRODUCTION_WINTER_FACTOR);
    return (cells, mothers, crowding, broodIndex, daughters) -> {
      double[] perMother = cells == Cells.WORKER ? ofWorker : ofDrone;
      for (int lane = 0; lane < winter.length; lane++) {
        double fertility = winter[lane] + (1.0 - winter[lane]) * broodIndex[lane];
        daughters[lane] = mothers[lane] * perMother[lane] * fertility * crowding[lane];
      }
    };
  }
}
