package org.undercap.monitoring;

import java.time.LocalDate;
import org.undercap.internal.Checks;

/** Mites found on a sample of bees that was washed or rolled. */
public record Wash(LocalDate date, int bees, int mites, WashMethod method) implements Count {

  /**
   * Checks the numbers.
   *
   * @param date day of the count
   * @param bees bees of the sample (bees, at least 1)
   * @param mites mites found (mites, at least 0)
   * @param method how the mites were taken off
   * @throws IllegalArgumentException if a number is too small
   */
  public Wash {
    Checks.positive(bees, "bees of a wash");
    Checks.notNegative(mites, "mites of a wash");
  }

  @Override
  public double found() {
    return mites;
  }
}
