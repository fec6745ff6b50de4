package org.undercap.ensemble;

/**
 * What a run is judged by. Lower is better unless said. What only a living colony has is NaN in a
 * member that was lost before: quantiles and means are those of the living.
 */
public enum Outcome {
  /**
   * Share of the brood reared for winter that was parasitised (fraction); 1 if the colony was lost
   * before midwinter, or in a run that does not reach it.
   */
  WINTER_BROOD_PARASITISED("winter_brood_parasitised_fraction", true, false),
  /**
   * Share of the workers alive at midwinter that were parasitised under the cappings (fraction).
   */
  WEAKENED_AT_MIDWINTER("weakened_winter_bees_fraction", true, true),
  /** Adult workers at the end of winter (bees); more is better. */
  BEES_AFTER_WINTER("bees_after_winter", false, false),
  /** Mites on bees for each 100 bees on the first day (mites per 100 bees). */
  MITES_PER_100_START("mites_per_100_bees_first_day", true, true),
  /** Mites on bees for each 100 bees on the first count date (mites per 100 bees). */
  MITES_PER_100_FIRST("mites_per_100_bees_first_date", true, true),
  /** Mites on bees for each 100 bees on the second count date (mites per 100 bees). */
  MITES_PER_100_SECOND("mites_per_100_bees_second_date", true, true),
  /** Mites on bees for each 100 bees on the last count date (mites per 100 bees). */
  MITES_PER_100_LAST("mites_per_100_bees_last_date", true, true),
  /** Days above the chosen limit before midwinter (days). */
  DAYS_ABOVE_BEFORE_MIDWINTER("days_above_limit_before_midwinter", true, true),
  /** Days above the chosen limit from midwinter on (days). */
  DAYS_ABOVE_AFTER_MIDWINTER("days_above_limit_after_midwinter", true, true),
  /** All mites at midwinter (mites). */
  MITES_AT_MIDWINTER("mites_at_midwinter", true, true),
  /** All mites on the last day (mites). */
  MITES_AT_END("mites_on_last_day", true, true),
  /** Mites killed by treatments, on bees and under the cappings (mites). */
  MITES_KILLED("mites_killed_by_treatment", false, false),
  /** Mites taken out by the keeper with brood or bees (mites). */
  MITES_REMOVED("mites_removed_by_keeper", false, false),
  /** Mites that died by themselves or fell at emergence (mites). */
  MITES_DIED("mites_died_naturally", false, false),
  /** Mites that arrived from other colonies (mites). */
  MITES_ARRIVED("mites_arrived", true, false),
  /** Adult workers killed by treatments (bees). */
  BEES_KILLED("bees_killed_by_treatment", true, false),
  /** Whether the colony was lost (1) or lived (0). */
  LOST("colony_lost", true, false);

  private final String header;
  private final boolean lowerIsBetter;
  private final boolean ofLiving;

  Outcome(String header, boolean lowerIsBetter, boolean ofLiving) {
    this.header = header;
    this.lowerIsBetter = lowerIsBetter;
    this.ofLiving = ofLiving;
  }

  /**
   * Name of the outcome in files, with its unit.
   *
   * @return the name
   */
  public String header() {
    return header;
  }

  /**
   * Whether less of it is better for the keeper.
   *
   * @return false for bees after winter and for accounts that are neither good nor bad
   */
  public boolean lowerIsBetter() {
    return lowerIsBetter;
  }

  /**
   * Whether only a living colony has it.
   *
   * @return true if it is NaN in a colony that is lost
   */
  public boolean ofLiving() {
    return ofLiving;
  }
}
