package org.undercap.model;

/**
 * From a hazard to the fraction that it kills.
 *
 * <p>{@code 1 - exp(-h)} is evaluated as a polynomial of {@code h / 64} that is doubled six times
 * by {@code (1-a) = (1-b)(1-b)}. It consists of additions and products only, so it gives the same
 * bits on every machine and the compiler can work on several colonies at once. The absolute error
 * is below 1e-15 for every {@code h >= 0}, and the relative error below 1e-14 down to hazards of
 * 1e-300.
 */
public final class Hazard {
  /** Beyond this hazard nothing is left within the precision of a number. */
  private static final double ALL = 50.0;

  private static final double PART = 1.0 / 64.0;

  private Hazard() {}

  /**
   * The fraction that a hazard kills.
   *
   * @param hazard hazard (per day), at least 0
   * @return {@code 1 - exp(-hazard)} (fraction, 0 to 1)
   */
  public static double fraction(double hazard) {
    double x = Math.min(hazard, ALL) * PART;
    double sum = x * (1.0 / 362880.0);
    sum = x * (1.0 / 40320.0 - sum);
    sum = x * (1.0 / 5040.0 - sum);
    sum = x * (1.0 / 720.0 - sum);
    sum = x * (1.0 / 120.0 - sum);
    sum = x * (1.0 / 24.0 - sum);
    sum = x * (1.0 / 6.0 - sum);
    sum = x * (0.5 - sum);
    double f = x * (1.0 - sum);
    f = f * (2.0 - f);
    f = f * (2.0 - f);
    f = f * (2.0 - f);
    f = f * (2.0 - f);
    f = f * (2.0 - f);
    return f * (2.0 - f);
  }

  /**
   * The fraction that survives a hazard.
   *
   * @param hazard hazard (per day), at least 0
   * @return {@code exp(-hazard)} (fraction, 0 to 1)
   */
  public static double survival(double hazard) {
    return 1.0 - fraction(hazard);
  }

  /**
   * The hazard that kills a given fraction.
   *
   * @param fraction fraction killed, at least 0 and below 1
   * @return {@code -ln(1 - fraction)} (per day)
   */
  public static double of(double fraction) {
    return -StrictMath.log1p(-fraction);
  }
}
