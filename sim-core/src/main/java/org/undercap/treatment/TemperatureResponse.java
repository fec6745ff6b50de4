package org.undercap.treatment;

import org.undercap.internal.Checks;

/**
 * How the amount that acts depends on the temperature of the day. May be replaced: an own response
 * goes into an {@link EfficacyProfile}. It must serve several threads.
 */
public interface TemperatureResponse {
  /**
   * Factor on the amount.
   *
   * @param outside daily mean outside temperature (C)
   * @return factor, 1 at the reference temperature
   */
  double factor(double outside);

  /**
   * Whether the treatment works by evaporating, so that an open floor weakens it.
   *
   * @return false unless the response says otherwise
   */
  default boolean evaporates() {
    return false;
  }

  /** Temperature does not matter. */
  record None() implements TemperatureResponse {
    @Override
    public double factor(double outside) {
      return 1;
    }
  }

  /**
   * What evaporates goes with the vapour pressure on the carrier, whose temperature lies between
   * outside and brood nest: {@code c(T) = T + share (nest - T)}, factor {@code p(c(T)) /
   * p(c(reference))}.
   *
   * @param line vapour pressure of the substance
   * @param reference outside temperature at which the factor is 1 (C)
   * @param carrierShare how far the carrier's temperature goes from outside to the brood nest
   *     (fraction)
   * @param nest temperature of the brood nest (C)
   */
  record Vapour(VapourPressure line, double reference, double carrierShare, double nest)
      implements TemperatureResponse {
    /**
     * Checks the numbers.
     *
     * @param line vapour pressure of the substance
     * @param reference finite (C)
     * @param carrierShare 0 to 1
     * @param nest finite (C)
     * @throws IllegalArgumentException if a number is out of range
     */
    public Vapour {
      Checks.finite(reference, "reference temperature (C)");
      Checks.share(carrierShare, "carrier share");
      Checks.finite(nest, "temperature of the brood nest (C)");
    }

    /**
     * Temperature of the carrier.
     *
     * @param outside daily mean outside temperature (C)
     * @return temperature of tray or pad (C)
     */
    public double carrier(double outside) {
      return outside + carrierShare * (nest - outside);
    }

    @Override
    public boolean evaporates() {
      return true;
    }

    @Override
    public double factor(double outside) {
      return line.ratio(carrier(outside), carrier(reference));
    }
  }
}
