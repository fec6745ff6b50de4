package org.undercap.treatment;

import org.undercap.internal.Checks;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;

/**
 * Vapour pressure of a substance by the Antoine equation {@code ln p = a - b / (K - c)}, p in Pa
 * and K in kelvin.
 *
 * @param a first constant (ln Pa)
 * @param b second constant (K)
 * @param c third constant (K)
 */
public record VapourPressure(double a, double b, double c) {
  /** 0 C in kelvin. */
  private static final double ZERO_CELSIUS = 273.15;

  /**
   * Checks the constants.
   *
   * @param a finite (ln Pa)
   * @param b above 0 (K)
   * @param c finite (K)
   * @throws IllegalArgumentException if a constant is out of range
   */
  public VapourPressure {
    Checks.finite(a, "constant a (ln Pa)");
    Checks.positive(b, "constant b (K)");
    Checks.finite(c, "constant c (K)");
  }

  /**
   * The constants of a parameter.
   *
   * @param parameters where to find them
   * @param id parameter with three values
   * @return the vapour pressure
   */
  public static VapourPressure of(ParameterSet parameters, ParameterId id) {
    return new VapourPressure(
        parameters.value(id, 0), parameters.value(id, 1), parameters.value(id, 2));
  }

  /**
   * Vapour pressure at a temperature.
   *
   * @param celsius temperature (C)
   * @return pressure (Pa)
   */
  public double pascal(double celsius) {
    return StrictMath.exp(a - b / (celsius + ZERO_CELSIUS - c));
  }

  /**
   * Vapour pressure at a temperature against that at another.
   *
   * @param celsius temperature (C)
   * @param reference temperature to compare with (C)
   * @return ratio of the pressures
   */
  public double ratio(double celsius, double reference) {
    return StrictMath.exp(b / (reference + ZERO_CELSIUS - c) - b / (celsius + ZERO_CELSIUS - c));
  }
}
