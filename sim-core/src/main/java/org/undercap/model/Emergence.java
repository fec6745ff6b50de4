package org.undercap.model;

import static org.undercap.parameter.ParameterId.*;

import java.util.Arrays;

/**
 * Step 2: the oldest sealed cells open. Bees emerge, healthy or weakened; mothers and the daughters
 * that ripened in time return to the bees or fall.
 */
final class Emergence {
  /**
   * Mothers a cell beyond which nothing changes: every cell is infested and crowded to the last
   * factor.
   */
  private static final double CROWDED = 50.0;

  private final double[] sealedSurvival;
  private final double[] deathOfOne;
  private final double[] deathOfSeveral;
  private final ReproductionRule reproduction;
  private final double[] droneSurvival;
  private final Brood workers;
  private final Brood drones;

  /** Mothers and daughters that return to the bees today (mites). */
  final double[] returned;

  /** What one kind of brood needs to let its mites go. */
  private static final class Brood {
    final ReproductionRule.Cells cells;
    final CellSharing sharing;
    final double[] motherLoss;
    final double[] daughterLoss;
    final double[] mothersPerCell;
    final double[] infested;
    final double[] single;
    final double[] crowding;

    Brood(
        ReproductionRule.Cells cells,
        CellSharing sharing,
        double[] motherLoss,
        double[] daughterLoss) {
      this.cells = cells;
      this.sharing = sharing;
      this.motherLoss = motherLoss;
      this.daughterLoss = daughterLoss;
      mothersPerCell = new double[motherLoss.length];
      infested = new double[motherLoss.length];
      single = new double[motherLoss.length];
      crowding = new double[motherLoss.length];
    }
  }

  Emergence(ModelParameters p) {
    sealedSurvival = p.perLane(BROOD_SURVIVAL_SEALED);
    deathOfOne = p.perLane(PARASITISED_PUPA_DEATH_ONE);
    deathOfSeveral = p.perLane(PARASITISED_PUPA_DEATH_SEVERAL);
    reproduction = p.submodels().reproduction().apply(p);
    droneSurvival = p.perLane(DRONE_DEATH);
    for (int lane = 0; lane < droneSurvival.length; lane++) {
      droneSurvival[lane] = Hazard.survival(droneSurvival[lane]);
    }
    workers =
        new Brood(
            ReproductionRule.Cells.WORKER,
            CellSharing.of(p.shared(DISPERSION_WORKER)[0], p.shared(CROWDING_WORKER)),
            p.perLane(EMERGENCE_LOSS_MOTHER_WORKER),
            p.perLane(EMERGENCE_LOSS_DAUGHTER_WORKER));
    drones =
        new Brood(
            ReproductionRule.Cells.DRONE,
            CellSharing.of(p.shared(DISPERSION_DRONE)[0], p.shared(CROWDING_DRONE)),
            p.perLane(EMERGENCE_LOSS_MOTHER_DRONE),
            p.perLane(EMERGENCE_LOSS_DAUGHTER_DRONE));
    returned = new double[p.lanes()];
  }

  void emerge(ColonyLanes colony, DayFlows flows) {
    Arrays.fill(returned, 0.0);
    open(workers, colony.sealedWorkers.oldest(), colony.mothersInWorkers.oldest());
    open(drones, colony.sealedDrones.oldest(), colony.mothersInDrones.oldest());
    letWorkersGo(colony.sealedWorkers.oldest(), flows);
    letDronesGo(colony.sealedDrones.oldest(), colony.drones);
    letMitesGo(workers, colony.mothersInWorkers.oldest(), flows);
    letMitesGo(drones, colony.mothersInDrones.oldest(), flows);
  }

  private static void open(Brood b, double[] cells, double[] mothers) {
    double[] perCell = b.mothersPerCell;
    for (int lane = 0; lane < perCell.length; lane++) {
      perCell[lane] = Math.min(CROWDED, mothers[lane] / Math.max(cells[lane], Double.MIN_NORMAL));
    }
    b.sharing.share(perCell, b.infested, b.single, b.crowding);
  }

  private void letMitesGo(Brood b, double[] mothers, DayFlows flows) {
    double[] born = flows.of(Flow.BORN);
    double[] lost = flows.of(Flow.LOST_AT_EMERGENCE);
    double[] daughters = b.single;
    reproduction.daughters(b.cells, mothers, b.crowding, flows.of(Flow.BROOD_INDEX), daughters);
    double[] motherLoss = b.motherLoss;
    double[] daughterLoss = b.daughterLoss;
    double[] back = returned;
    for (int lane = 0; lane < daughters.length; lane++) {
      born[lane] += daughters[lane];
      double fallen = mothers[lane] * motherLoss[lane] + daughters[lane] * daughterLoss[lane];
      lost[lane] += fallen;
      back[lane] += mothers[lane] + daughters[lane] - fallen;
    }
  }

  private void letWorkersGo(double[] cells, DayFlows flows) {
    double[] healthy = flows.of(Flow.EMERGED_HEALTHY);
    double[] weakened = flows.of(Flow.EMERGED_WEAKENED);
    double[] share = flows.of(Flow.PARASITISED_SHARE);
    double[] infested = workers.infested;
    double[] single = workers.single;
    double[] survival = sealedSurvival;
    double[] one = deathOfOne;
    double[] several = deathOfSeveral;
    System.arraycopy(infested, 0, share, 0, share.length);
    System.arraycopy(cells, 0, flows.of(Flow.OPENED_CELLS), 0, cells.length);
    for (int lane = 0; lane < cells.length; lane++) {
      double ofSeveral = (infested[lane] - single[lane]) * (1.0 - several[lane]);
      weakened[lane] = single[lane] * (1.0 - one[lane]) + ofSeveral;
    }
    for (int lane = 0; lane < cells.length; lane++) {
      double bees = cells[lane] * survival[lane];
      healthy[lane] = bees * (1.0 - infested[lane]);
      weakened[lane] = bees * weakened[lane];
    }
  }

  private void letDronesGo(double[] cells, double[] adultDrones) {
    double[] survival = sealedSurvival;
    double[] staying = droneSurvival;
    for (int lane = 0; lane < cells.length; lane++) {
      adultDrones[lane] = adultDrones[lane] * staying[lane] + cells[lane] * survival[lane];
    }
  }
}
