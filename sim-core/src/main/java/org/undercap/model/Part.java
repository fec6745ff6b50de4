package org.undercap.model;

/** The parts of a colony's state. */
public enum Part {
  /** Adult workers that were not parasitised under the cappings (bees). */
  HEALTHY_ADULTS,
  /** Adult workers that were parasitised under the cappings (bees). */
  WEAKENED_ADULTS,
  /** Worker eggs (cells). */
  WORKER_EGGS,
  /** Worker larvae in open cells (cells). */
  WORKER_LARVAE,
  /** Sealed worker brood (cells). */
  SEALED_WORKERS,
  /** Drone eggs (cells). */
  DRONE_EGGS,
  /** Drone larvae in open cells (cells). */
  DRONE_LARVAE,
  /** Sealed drone brood (cells). */
  SEALED_DRONES,
  /** Phoretic mites, on adult bees (mites). */
  MITES_ON_BEES,
  /** Mother mites in sealed worker cells (mites). */
  MITES_IN_WORKER_CELLS,
  /** Mother mites in sealed drone cells (mites). */
  MITES_IN_DRONE_CELLS,
  /** Adult drones (bees). */
  ADULT_DRONES
}
