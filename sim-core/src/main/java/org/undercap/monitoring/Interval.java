package org.undercap.monitoring;

/** A closed interval of numbers; an end may be infinite. */
public record Interval(double low, double high) {
  /**
   * Checks the order of the ends.
   *
   * @param low lower end
   * @param high upper end, not below the lower one
   * @throws IllegalArgumentException if the ends are reversed or not numbers
   */
  public Interval {
    if (!(low <= high)) {
      throw new IllegalArgumentException("interval from " + low + " to " + high + " is reversed");
    }
  }

  /**
   * Whether a number lies in it.
   *
   * @param x the number
   * @return true if it lies between the ends or on one of them; false for NaN
   */
  public boolean contains(double x) {
    return x >= low && x <= high;
  }
}
