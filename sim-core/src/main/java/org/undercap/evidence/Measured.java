package org.undercap.evidence;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Optional;
import org.undercap.monitoring.Interval;

/**
 * A number that the model gives as an answer to a published finding.
 *
 * @param what what it is, as in the name of a climate; empty if the finding says it
 * @param value the number
 * @param unit its unit; empty for a pure number
 * @param accepted interval in which it must lie; empty if it is only shown
 */
public record Measured(String what, double value, String unit, Optional<Interval> accepted) {
  private static final MathContext FOUR_DIGITS = new MathContext(4);

  /**
   * Whether it is inside.
   *
   * @return false if it lies outside the accepted interval or is no number
   */
  public boolean inside() {
    return accepted.isEmpty() || accepted.get().contains(value);
  }

  /**
   * The number with four digits.
   *
   * @return as in {@code central-european 0.0213 per day}
   */
  public String toText() {
    String number = Double.isFinite(value) ? digits(value) : String.valueOf(value);
    return (what + " " + number + (unit.equals("ratio") ? "" : " " + unit)).trim();
  }

  private static String digits(double value) {
    if (value != 0 && Math.abs(value) < 1e-4) {
      return String.format(Locale.ROOT, "%.1e", value);
    }
    return new BigDecimal(value).round(FOUR_DIGITS).stripTrailingZeros().toPlainString();
  }
}
