package org.undercap.cli.lesson;

import java.util.Locale;

/** Units of temperature on charts and pages. */
public enum Units {
  /** Celsius. */
  METRIC,
  /** Fahrenheit. */
  IMPERIAL;

  private static final double STEP = 1.8;
  private static final double FREEZING = 32;

  double temperature(double celsius) {
    return this == METRIC ? celsius : FREEZING + STEP * celsius;
  }

  /**
   * The word in commands.
   *
   * @return in lower case
   */
  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT);
  }
}
