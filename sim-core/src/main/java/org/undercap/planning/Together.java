package org.undercap.planning;

/**
 * Whether to treat all colonies of a yard on one day, and what that rests on. How many mites pass
 * between the hives of one yard is not modelled.
 *
 * @param advice what to do
 * @param aboveForSure colonies whose whole range lies above the limit (colonies)
 * @param perhapsAbove further colonies whose range reaches above the limit (colonies)
 * @param limit the limit (mites per 100 bees)
 * @param shareInWorstThird share of all mites of the yard that the worst third of the colonies
 *     holds (fraction)
 * @param harmByArrivals how much of the mean harm comes from mites that arrive from other colonies,
 *     under the best plan or without treatment, whichever is more (fraction)
 */
public record Together(
    Advice advice,
    int aboveForSure,
    int perhapsAbove,
    double limit,
    double shareInWorstThird,
    double harmByArrivals) {
  /** What to do. */
  public enum Advice {
    /** No colony reaches the limit: count again instead. */
    NONE_NOW,
    /** All on the same day. */
    ALL_ON_ONE_DAY,
    /** Arriving mites hardly matter and no colony is surely above the limit: low ones may wait. */
    LOW_ONES_MAY_WAIT
  }
}
