package org.undercap.parameter;

/**
 * The numbers that make sense for a parameter at all. This is wider than the range in which its
 * value is believed to lie: a study may leave the range, never the domain.
 */
public enum Domain {
  /** Any finite number. */
  ANY("a finite number"),
  /** A finite number of at least zero. */
  NOT_NEGATIVE("a finite number >= 0"),
  /** A finite number above zero. */
  POSITIVE("a finite number > 0"),
  /** A number above zero; infinity is allowed. */
  POSITIVE_OR_INFINITE("a number > 0, or infinity"),
  /** A number from zero to one. */
  FRACTION("in [0, 1]"),
  /** A whole number from zero to ten thousand: days and the like, for which room is kept. */
  WHOLE("a whole number in 0 to 10000"),
  /** The same of at least one. */
  COUNT("a whole number in 1 to 10000");

  private static final double MOST = 10_000;

  private final String accepted;

  Domain(String accepted) {
    this.accepted = accepted;
  }

  /**
   * The accepted numbers in words, for messages.
   *
   * @return words that can follow "must be"
   */
  public String accepted() {
    return accepted;
  }

  /**
   * Whether a number makes sense.
   *
   * @param value the number; NaN never makes sense
   * @return true if it lies in this domain
   */
  public boolean accepts(double value) {
    return switch (this) {
      case ANY -> Double.isFinite(value);
      case NOT_NEGATIVE -> value >= 0 && Double.isFinite(value);
      case POSITIVE -> value > 0 && Double.isFinite(value);
      case POSITIVE_OR_INFINITE -> value > 0;
      case FRACTION -> value >= 0 && value <= 1;
      case WHOLE -> value >= 0 && isWhole(value);
      case COUNT -> value >= 1 && isWhole(value);
    };
  }

  private static boolean isWhole(double value) {
    return value <= MOST && value == StrictMath.rint(value);
  }
}
