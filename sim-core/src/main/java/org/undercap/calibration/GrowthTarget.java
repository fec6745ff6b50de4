package org.undercap.calibration;

import org.undercap.climate.Climate;
import org.undercap.internal.Checks;

/**
 * A growth rate that the model should show in a climate, measured as {@link
 * org.undercap.analysis.GrowthRates} does.
 *
 * @param climate the place
 * @param rate growth rate of the mites with brood (per day)
 * @param low lower end of its 95 % interval (per day)
 * @param high upper end of its 95 % interval (per day)
 */
public record GrowthTarget(Climate climate, double rate, double low, double high) {
  private static final double INTERVAL_DEVIATIONS = 2 * 1.959963984540054;

  /**
   * Checks the interval.
   *
   * @param climate the place
   * @param rate finite, inside the interval (per day)
   * @param low finite, below {@code high} (per day)
   * @param high finite (per day)
   * @throws IllegalArgumentException if a number is out of range
   */
  public GrowthTarget {
    Checks.finite(low, "lower end of a growth rate (per day)");
    Checks.finite(high, "upper end of a growth rate (per day)");
    if (!(low < high) || !(rate >= low && rate <= high)) {
      throw new IllegalArgumentException(
          "growth rate " + rate + " must lie inside its interval " + low + " to " + high);
    }
  }

  /** Standard deviation of the measurement, taken as normal (per day). */
  double deviation() {
    return (high - low) / INTERVAL_DEVIATIONS;
  }

  /** Logarithm of the likelihood of a growth rate against that of the measured one. */
  double logLikelihood(double modelled) {
    double z = (modelled - rate) / deviation();
    return -z * z / 2;
  }
}
