package org.undercap.monitoring;

import org.undercap.internal.Checks;

/**
 * Mites that were counted, and how much was looked at.
 *
 * @param mites mites found (mites)
 * @param of bees washed (bees), or days that a board lay (days)
 */
public record Tally(long mites, double of) {
  /**
   * Checks the numbers.
   *
   * @param mites at least 0 (mites)
   * @param of above 0 (bees or days)
   * @throws IllegalArgumentException if a number is out of range
   */
  public Tally {
    Checks.notNegative((double) mites, "mites counted");
    Checks.positive(of, "bees or days of a count");
  }

  /**
   * The tally of a wash or roll.
   *
   * @param wash the count
   * @return mites among its bees
   */
  public static Tally of(Wash wash) {
    return new Tally(wash.mites(), wash.bees());
  }

  /**
   * The tally of a board.
   *
   * @param board the count
   * @return mites over its days, rounded to whole mites
   */
  public static Tally of(Board board) {
    return new Tally(Math.round(board.mites()), board.days());
  }

  Tally plus(Tally other) {
    return new Tally(mites + other.mites, of + other.of);
  }

  Tally times(double factor) {
    return new Tally(Math.round(mites * factor), of * factor);
  }

  double rate() {
    return mites / of;
  }
}
