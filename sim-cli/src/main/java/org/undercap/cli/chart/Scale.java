package org.undercap.cli.chart;

import java.util.Locale;

/** An axis from zero with round steps. */
record Scale(double top, double step) {
  /** A value so little above a step still ends there. */
  private static final double ROUNDING = 1e-9;

  /** The shortest axis of at most so many steps of 1, 2 or 5 times a power of ten. */
  static Scale covering(double largest, int maxSteps) {
    if (!(largest > 0)) {
      return new Scale(1, 1);
    }
    for (int exponent = (int) StrictMath.floor(StrictMath.log10(largest)) - 2; ; exponent++) {
      for (int digit : new int[] {1, 2, 5}) {
        double steps = Math.max(1, Math.ceil(times(largest, -exponent) / digit - ROUNDING));
        if (steps <= maxSteps) {
          return new Scale(times(steps * digit, exponent), times(digit, exponent));
        }
      }
    }
  }

  /** A number times a power of ten; whole numbers give the double next to the decimal one. */
  private static double times(double number, int exponent) {
    return exponent < 0
        ? number / StrictMath.pow(10, -exponent)
        : number * StrictMath.pow(10, exponent);
  }

  /** Label of a value on the axis, as in {@code 12,000} or {@code 0.5}. */
  String label(double value) {
    int decimals = step >= 1 ? 0 : (int) Math.ceil(-StrictMath.log10(step) - ROUNDING);
    return String.format(Locale.ROOT, "%,." + decimals + "f", value);
  }
}
