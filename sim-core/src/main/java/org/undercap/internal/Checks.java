package org.undercap.internal;

/** Checks of numbers that also fail for NaN, with messages that name what, value and range. */
public final class Checks {
  private Checks() {}

  /**
   * A finite number of at least 0.
   *
   * @param value the number
   * @param what what it is, with its unit
   * @return the number
   * @throws IllegalArgumentException if it is negative, infinite or NaN
   */
  public static double notNegative(double value, String what) {
    if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          what + " " + value + " must be a finite number of at least 0");
    }
    return value;
  }

  /**
   * A finite number above 0.
   *
   * @param value the number
   * @param what what it is, with its unit
   * @return the number
   * @throws IllegalArgumentException if it is 0, negative, infinite or NaN
   */
  public static double positive(double value, String what) {
    if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(what + " " + value + " must be a finite number above 0");
    }
    return value;
  }

  /**
   * A share.
   *
   * @param value the number
   * @param what what it is
   * @return the number
   * @throws IllegalArgumentException if it is not in [0, 1]
   */
  public static double share(double value, String what) {
    if (!(value >= 0 && value <= 1)) {
      throw new IllegalArgumentException(what + " " + value + " must be in [0, 1]");
    }
    return value;
  }

  /**
   * A finite number.
   *
   * @param value the number
   * @param what what it is, with its unit
   * @return the number
   * @throws IllegalArgumentException if it is infinite or NaN
   */
  public static double finite(double value, String what) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(what + " " + value + " must be a finite number");
    }
    return value;
  }
}
