package org.undercap.scenario;

/** What a number in a scenario file may be. */
public record InputLimit(String field, double low, double high, boolean whole, String unit) {

  private static final String NO_UNIT = "-";

  /**
   * Checks the range.
   *
   * @param field the field, as in {@code colony.bees}
   * @param low least number accepted (in {@code unit})
   * @param high greatest number accepted (in {@code unit})
   * @param whole whether only whole numbers make sense
   * @param unit the unit, {@code -} for ratios and the like
   * @throws IllegalArgumentException if low is above high or one is not finite
   */
  public InputLimit {
    if (!(low <= high && Double.isFinite(low) && Double.isFinite(high))) {
      throw new IllegalArgumentException(field + ": " + low + " to " + high + " is no range");
    }
  }

  /**
   * Checks a number.
   *
   * @param value the number (in the unit of this limit)
   * @return the same number
   * @throws BadValueException if it is outside the range, not a number, or not whole but should be
   */
  public double check(double value) throws BadValueException {
    if (!(value >= low && value <= high)) {
      throw new BadValueException(
          with(Quantities.format(value)) + " is outside what is accepted: " + range(), "");
    }
    if (whole && value != StrictMath.rint(value)) {
      throw new BadValueException(with(Quantities.format(value)) + " must be a whole number", "");
    }
    return value;
  }

  /**
   * The range in words.
   *
   * @return for example {@code 500 to 150000 bees}
   */
  public String range() {
    return with(Quantities.format(low) + " to " + Quantities.format(high));
  }

  private String with(String numbers) {
    return unit.equals(NO_UNIT) ? numbers : numbers + " " + unit;
  }
}
