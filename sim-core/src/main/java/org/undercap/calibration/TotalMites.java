package org.undercap.calibration;

import java.time.LocalDate;
import org.undercap.internal.Checks;

/**
 * All mites of a colony, as a study found them by taking a colony apart or by killing them all.
 *
 * @param date day, before anything happens on it
 * @param mites mites on bees and mothers under the cappings (mites)
 */
public record TotalMites(LocalDate date, double mites) {
  /**
   * Checks the number.
   *
   * @param date day, before anything happens on it
   * @param mites finite, above 0 (mites)
   * @throws IllegalArgumentException if the number is out of range
   */
  public TotalMites {
    Checks.positive(mites, "all mites of a colony");
  }
}
