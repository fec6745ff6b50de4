package org.undercap.treatment;

import org.undercap.internal.Checks;
import org.undercap.model.Hazard;

/** From the amount that acts to the hazard of the mites on bees. */
public sealed interface Response {
  /**
   * Hazard of the mites on bees.
   *
   * @param amount amount that acts today (1 = the method's full amount), at least 0
   * @param broodIndex open brood against a full brood nest (0 to 1)
   * @return hazard (per day)
   */
  double hazard(double amount, double broodIndex);

  /**
   * Strength of the side effects on bees and brood.
   *
   * @param amount amount that acts today, at least 0
   * @return strength (1 = full)
   */
  double relative(double amount);

  /**
   * A dose kills a share of the mites on bees, fewer where there is much brood.
   *
   * @param broodless share killed without brood (fraction)
   * @param fullBrood share killed with a full brood nest (fraction)
   */
  record Kill(double broodless, double fullBrood) implements Response {
    /**
     * Checks the shares.
     *
     * @param broodless at least 0 and below 1
     * @param fullBrood at least 0 and below 1
     * @throws IllegalArgumentException if a share is out of range
     */
    public Kill {
      if (!(broodless >= 0 && broodless < 1 && fullBrood >= 0 && fullBrood < 1)) {
        throw new IllegalArgumentException(
            "shares killed " + broodless + " and " + fullBrood + " must be at least 0 and below 1");
      }
    }

    @Override
    public double hazard(double amount, double broodIndex) {
      return Hazard.of(broodless + (fullBrood - broodless) * broodIndex) * amount;
    }

    @Override
    public double relative(double amount) {
      return amount;
    }
  }

  /**
   * Hazard in proportion to the amount.
   *
   * @param perDay hazard at the full amount (per day)
   */
  record Constant(double perDay) implements Response {
    /**
     * Checks the hazard.
     *
     * @param perDay at least 0 (per day)
     * @throws IllegalArgumentException if it is out of range
     */
    public Constant {
      Checks.notNegative(perDay, "hazard (per day)");
    }

    @Override
    public double hazard(double amount, double broodIndex) {
      return perDay * amount;
    }

    @Override
    public double relative(double amount) {
      return Math.min(1, amount);
    }
  }

  /**
   * Hill curve of the concentration in the hive air: {@code largest C^n / (C^n + half^n)} with
   * {@code C = full * amount}.
   *
   * @param largest hazard at very high concentration (per day)
   * @param full concentration at the full amount (micrograms per litre)
   * @param half concentration of half the effect (micrograms per litre)
   * @param exponent steepness n
   */
  record Hill(double largest, double full, double half, double exponent) implements Response {
    private static final int LARGEST_PRODUCT = 16;

    /**
     * Checks the numbers.
     *
     * @param largest at least 0 (per day)
     * @param full above 0 (micrograms per litre)
     * @param half above 0 (micrograms per litre)
     * @param exponent above 0
     * @throws IllegalArgumentException if a number is out of range
     */
    public Hill {
      Checks.notNegative(largest, "largest hazard (per day)");
      Checks.positive(full, "concentration at the full amount (ug/L)");
      Checks.positive(half, "concentration of half the effect (ug/L)");
      Checks.positive(exponent, "exponent");
    }

    @Override
    public double hazard(double amount, double broodIndex) {
      return largest * relative(amount);
    }

    @Override
    public double relative(double amount) {
      return 1 / (1 + power(half / (full * amount))); // stays a number for any amount
    }

    /** Products where the exponent is a small whole number, so that it is fast. */
    private double power(double base) {
      if (exponent != (int) exponent || exponent > LARGEST_PRODUCT) {
        return StrictMath.exp(exponent * StrictMath.log(base)); // StrictMath.pow would make objects
      }
      double product = base;
      for (int i = 1; i < exponent; i++) {
        product *= base;
      }
      return product;
    }
  }
}
