package org.undercap.cli.chart;

import java.util.Locale;

/** An axis from zero with round steps. */
record Scale(double top, double step) {

  /** The shortest axis of at most so many steps of 1, 2 or 5 times a power of ten. */
  static Scale covering(double largest, int maxSteps) {
    if (!(largest > 0)) {
      return new Scale(1, 1);
    }
    for (double power = StrictMath.pow(10, StrictMath.floor(StrictMath.log10(largest)) - 2);
        ;
        power *= 10) {
      for (int digit : new int[] {1, 2, 5}) {
        double step = roundToDigits(digit * power);
        double steps = Math.max(1, Math.ceil(largest / step - 1e-9));
        if (steps <= maxSteps) {
          return new Scale(roundToDigits(steps * step), step);
        }
      }
    }
  }

  /** Label of a value on the axis, as in {@code 12,000} or {@code 0.5}. */
  String label(double value) {
    int decimals = step >= 1 ? 0 : (int) Math.ceil(-StrictMath.log10(step) - 1e-9);
    return String.format(Locale.ROOT, "%,." + decimals + "f", value);
  }

  /** Steps below one are not exact in binary; dividing by a power of ten keeps 0.3 at 0.3. */
  private static double roundToDigits(double value) {
    if (value >= 1) {
      return Math.rint(value);
    }
    double shift = StrictMath.pow(10, Math.ceil(-StrictMath.log10(value)) + 1);
    return Math.rint(value * shift) / shift;
  }
}
