package org.undercap.monitoring;

/**
 * Mites of one colony before and after a treatment, counted in the same way; or, of an untreated
 * colony, on the same days.
 *
 * @param before the count before
 * @param after the count after
 */
public record BeforeAfter(Tally before, Tally after) {
  /**
   * Both counts as washes or rolls.
   *
   * @param before the count before
   * @param after the count after, by the same method
   * @return the pair
   * @throws IllegalArgumentException if the methods find different shares of the mites
   */
  public static BeforeAfter of(Wash before, Wash after) {
    if (before.method().recovery() != after.method().recovery()) {
      throw new IllegalArgumentException(
          "a count by "
              + before.method().id()
              + " cannot be compared with one by "
              + after.method().id());
    }
    return new BeforeAfter(Tally.of(before), Tally.of(after));
  }

  /**
   * Both counts as boards.
   *
   * @param before the count before
   * @param after the count after, without what the treatment itself brought down
   * @return the pair
   */
  public static BeforeAfter of(Board before, Board after) {
    return new BeforeAfter(Tally.of(before), Tally.of(after));
  }

  BeforeAfter plus(BeforeAfter other) {
    return new BeforeAfter(before.plus(other.before), after.plus(other.after));
  }

  BeforeAfter times(double factor) {
    return new BeforeAfter(before.times(factor), after.times(factor));
  }
}
