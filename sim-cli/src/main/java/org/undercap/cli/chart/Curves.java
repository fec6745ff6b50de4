package org.undercap.cli.chart;

/** Small sums over daily series. */
final class Curves {
  private Curves() {}

  /** Largest value, 0 if there is none; days that are not a number are passed over. */
  static double largest(double[] values) {
    double largest = 0;
    for (double value : values) {
      if (value > largest) {
        largest = value;
      }
    }
    return largest;
  }
}
