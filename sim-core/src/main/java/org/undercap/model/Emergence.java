package org.undercap.model;

import static org.undercap.parameter.ParameterId.*;

/**
 * Step 2: the oldest sealed cells open. Bees emerge, healthy or weakened; mothers and the daughters
 * that ripened in time return to the bees or fall.
 */
final class Emergence {
  private final double[] sealedSurvival;
  private final double[] deathOfOne;
  private final double[] deathOfSeveral;
  private final double[] winterFactor;
  private final double[] droneSurvival;
  private final Brood workers;
  private final Brood drones;
  private final double[] fertility;

  /** Healthy workers emerging today (bees). */
  final double[] healthy;

  /** Weakened workers emerging today (bees). */
  final double[] weakened;

  /** Drones emerging today (bees). */
  final double[] emergedDrones;

  /** Mothers and daughters that return to the bees today (mites). */
  final double[] returned;

  /** What one kind of brood needs to let its mites go. */
  private static final class Brood {
    final CellSharing sharing;
    final double[] daughters;
    final double[] motherLoss;
    final double[] daughterLoss;
    final double[] mothersPerCell;
    final double[] infested;
    final double[] single;
    final double[] crowding;

    Brood(CellSharing sharing, double[] daughters, double[] motherLoss, double[] daughterLoss) {
      this.sharing = sharing;
      this.daughters = daughters;
      this.motherLoss = motherLoss;
      this.daughterLoss = daughterLoss;
      mothersPerCell = new double[daughters.length];
      infested = new double[daughters.length];
      single = new double[daughters.length];
      crowding = new double[daughters.length];
    }
  }

  Emergence(ModelParameters p) {
    sealedSurvival = p.perLane(BROOD_SURVIVAL_SEALED);
    deathOfOne = p.perLane(PARASITISED_PUPA_DEATH_ONE);
    deathOfSeveral = p.perLane(PARASITISED_PUPA_DEATH_SEVERAL);
    winterFactor = p.perLane(REPRODUCTION_WINTER_FACTOR);
    droneSurvival = p.perLane(DRONE_DEATH);
    for (int lane = 0; lane < droneSurvival.length; lane++) {
      droneSurvival[lane] = Hazard.survival(droneSurvival[lane]);
    }
    workers =
        new Brood(
            CellSharing.of(p.shared(DISPERSION_WORKER)[0], p.shared(CROWDING_WORKER)),
            p.perLane(REPRODUCTION_WORKER),
            p.perLane(EMERGENCE_LOSS_MOTHER_WORKER),
            p.perLane(EMERGENCE_LOSS_DAUGHTER_WORKER));
    drones =
        new Brood(
            CellSharing.of(p.shared(DISPERSION_DRONE)[0], p.shared(CROWDING_DRONE)),
            p.perLane(REPRODUCTION_DRONE),
            p.perLane(EMERGENCE_LOSS_MOTHER_DRONE),
            p.perLane(EMERGENCE_LOSS_DAUGHTER_DRONE));
    int lanes = p.lanes();
    fertility = new double[lanes];
    healthy = new double[lanes];
    weakened = new double[lanes];
    emergedDrones = new double[lanes];
    returned = new double[lanes];
  }

  void emerge(ColonyLanes colony, DayFlows flows) {
    double[] broodIndex = flows.of(Flow.BROOD_INDEX);
    for (int lane = 0; lane < fertility.length; lane++) {
      fertility[lane] = winterFactor[lane] + (1.0 - winterFactor[lane]) * broodIndex[lane];
      returned[lane] = 0;
    }
    letMitesGo(workers, colony.sealedWorkers.oldest(), colony.mothersInWorkers.oldest(), flows);
    letMitesGo(drones, colony.sealedDrones.oldest(), colony.mothersInDrones.oldest(), flows);
    letWorkersGo(colony.sealedWorkers.oldest(), flows);
    letDronesGo(colony.sealedDrones.oldest(), colony.drones);
  }

  private void letMitesGo(Brood b, double[] cells, double[] mothers, DayFlows flows) {
    double[] perCell = b.mothersPerCell;
    for (int lane = 0; lane < perCell.length; lane++) {
      double c = cells[lane];
      perCell[lane] = c > 0 ? mothers[lane] / c : 0.0;
    }
    b.sharing.share(perCell, b.infested, b.single, b.crowding);
    double[] born = flows.of(Flow.BORN);
    double[] lost = flows.of(Flow.LOST_AT_EMERGENCE);
    for (int lane = 0; lane < perCell.length; lane++) {
      double m = mothers[lane];
      double d = m * b.daughters[lane] * fertility[lane] * b.crowding[lane];
      double fallen = m * b.motherLoss[lane] + d * b.daughterLoss[lane];
      born[lane] += d;
      lost[lane] += fallen;
      returned[lane] += m + d - fallen;
    }
  }

  private void letWorkersGo(double[] cells, DayFlows flows) {
    double[] share = flows.of(Flow.PARASITISED_SHARE);
    double[] emergedHealthy = flows.of(Flow.EMERGED_HEALTHY);
    double[] emergedWeakened = flows.of(Flow.EMERGED_WEAKENED);
    for (int lane = 0; lane < cells.length; lane++) {
      double bees = cells[lane] * sealedSurvival[lane];
      double infested = workers.infested[lane];
      double one = workers.single[lane];
      share[lane] = infested;
      healthy[lane] = bees * (1.0 - infested);
      weakened[lane] =
          bees * (one * (1.0 - deathOfOne[lane]) + (infested - one) * (1.0 - deathOfSeveral[lane]));
      emergedHealthy[lane] = healthy[lane];
      emergedWeakened[lane] = weakened[lane];
    }
  }

  private void letDronesGo(double[] cells, double[] adultDrones) {
    for (int lane = 0; lane < cells.length; lane++) {
      emergedDrones[lane] = cells[lane] * sealedSurvival[lane];
      adultDrones[lane] = adultDrones[lane] * droneSurvival[lane] + emergedDrones[lane];
    }
  }
}
