package org.undercap.monitoring;

import java.time.LocalDate;
import org.undercap.internal.Checks;

/** Mites that fell on a board under the combs. */
public record Board(LocalDate date, int days, double mites) implements Count {

  /**
   * Checks the numbers.
   *
   * @param date day on which the board was taken out
   * @param days how long it lay in the hive (days, at least 1)
   * @param mites mites on it, over all days (mites, at least 0)
   * @throws IllegalArgumentException if a number is too small or not finite
   */
  public Board {
    Checks.positive(days, "days of a board");
    Checks.notNegative(mites, "mites on a board");
  }

  @Override
  public LocalDate firstDay() {
    return date.minusDays(days);
  }

  @Override
  public double found() {
    return mites;
  }
}
