package org.undercap.model;

/** What a day of the model reports for each colony. */
public enum Flow {
  /** Adult workers at the start of the day (bees). */
  ADULTS,
  /** All mites at the start of the day (mites). */
  MITES_BEFORE,
  /** Open brood for each adult against that of a full brood nest (0 to 1). */
  BROOD_INDEX,
  /** Ageing speed of the workers (1 = summer). */
  AGEING_SPEED,
  /** Eggs laid, worker and drone (eggs). */
  EGGS_LAID,
  /** Sealed worker cells whose time had come to open (cells). */
  OPENED_CELLS,
  /** Healthy workers that emerged (bees). */
  EMERGED_HEALTHY,
  /** Workers that emerged after being parasitised under the cappings (bees). */
  EMERGED_WEAKENED,
  /** Share of the emerging worker cells that held at least one mother mite (fraction). */
  PARASITISED_SHARE,
  /** Daughters born (mites). */
  BORN,
  /** Mothers that entered cells that were sealed (mites). */
  INVADED,
  /** Mites that fell when the bees emerged (mites). */
  LOST_AT_EMERGENCE,
  /** Mites that died on the bees by themselves (mites). */
  DIED_NATURALLY,
  /** Mites killed on the bees (mites). */
  KILLED_ON_BEES,
  /** Mites killed under the cappings (mites). */
  KILLED_IN_CELLS,
  /** Mites that arrived from other colonies (mites). */
  ARRIVED,
  /** Mites taken out by the keeper, with brood or bees (mites). */
  REMOVED,
  /** Adult workers killed by a treatment (bees). */
  ADULTS_KILLED,
  /** Adult workers at the end of the day (bees). */
  ADULTS_AFTER,
  /** All mites at the end of the day (mites). */
  MITES_AFTER
}
