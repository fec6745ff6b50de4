package org.undercap.calibration;

import org.undercap.internal.Checks;

/**
 * How much counts scatter around what the model expects.
 *
 * @param wash correlation of the bees of a sample (fraction): 0 is binomial, else beta-binomial
 * @param board variance of a board beyond Poisson, as a share of the squared mean (fraction): 0 is
 *     Poisson, else negative binomial
 * @param total standard deviation of the logarithm of a total (ratio)
 */
public record CountErrors(double wash, double board, double total) {
  /**
   * Checks the numbers.
   *
   * @param wash at least 0, below 1
   * @param board at least 0
   * @param total above 0
   * @throws IllegalArgumentException if a number is out of range
   */
  public CountErrors {
    if (!(wash >= 0 && wash < 1)) {
      throw new IllegalArgumentException("correlation in a wash " + wash + " must be in [0, 1)");
    }
    Checks.notNegative(board, "variance of boards beyond Poisson");
    Checks.positive(total, "spread of totals");
  }

  /**
   * Washes and boards scatter by chance alone.
   *
   * @param total standard deviation of the logarithm of a total (ratio), above 0
   * @return the errors
   */
  public static CountErrors chanceAlone(double total) {
    return new CountErrors(0, 0, total);
  }
}
