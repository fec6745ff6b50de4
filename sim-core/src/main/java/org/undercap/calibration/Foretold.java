package org.undercap.calibration;

import java.time.LocalDate;

/**
 * A count that a fit foretells.
 *
 * @param colony name of the colony
 * @param date last day of the observation
 * @param kind kind of count, in words
 * @param found what was found (mites, or infested cells)
 * @param mean mean of what is foretold (same unit)
 * @param low 2.5 % of what is foretold lies below
 * @param high 2.5 % of what is foretold lies above
 */
public record Foretold(
    String colony,
    LocalDate date,
    String kind,
    double found,
    double mean,
    double low,
    double high) {
  /**
   * Whether the count lies in its interval.
   *
   * @return true if it does
   */
  public boolean inside() {
    return found >= low && found <= high;
  }
}
