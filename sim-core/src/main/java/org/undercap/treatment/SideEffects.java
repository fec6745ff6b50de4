package org.undercap.treatment;

import org.undercap.internal.Checks;

/**
 * What a treatment does to bees and brood at full strength. For single doses the figures are totals
 * over the days of the pulse.
 *
 * @param laying share by which laying falls (fraction)
 * @param adults hazard of adult workers (per day)
 * @param openBrood hazard of larvae (per day)
 */
public record SideEffects(double laying, double adults, double openBrood) {
  /** No side effect. */
  public static final SideEffects NONE = new SideEffects(0, 0, 0);

  /**
   * Checks the numbers.
   *
   * @param laying 0 to 1
   * @param adults at least 0 (per day)
   * @param openBrood at least 0 (per day)
   * @throws IllegalArgumentException if a number is out of range
   */
  public SideEffects {
    Checks.share(laying, "fall of laying");
    Checks.notNegative(adults, "hazard of adults (per day)");
    Checks.notNegative(openBrood, "hazard of open brood (per day)");
  }
}
