package org.undercap.simulation;

import java.util.List;
import java.util.Locale;

/**
 * A value of the model and the values that it came from.
 *
 * @param what what the value is, in the trade's words
 * @param value the value
 * @param unit its unit, empty for a ratio
 * @param because the values it came from, in the order of reasoning
 */
public record Explanation(String what, double value, String unit, List<Explanation> because) {
  /**
   * Keeps a copy of the list.
   *
   * @param what what the value is
   * @param value the value
   * @param unit its unit
   * @param because the values it came from
   */
  public Explanation {
    because = List.copyOf(because);
  }

  /**
   * A value that is not explained further.
   *
   * @param what what the value is
   * @param value the value
   * @param unit its unit
   * @return the explanation
   */
  public static Explanation of(String what, double value, String unit) {
    return new Explanation(what, value, unit, List.of());
  }

  /**
   * The reasoning in one line, from the first cause to the result.
   *
   * @return as in {@code 13.2 C on the tray -> vapour 0.58 -> 14 % of the mites on bees killed}
   */
  public String toLine() {
    StringBuilder line = new StringBuilder();
    for (Explanation cause : because) {
      line.append(cause.toLine()).append(" -> ");
    }
    String number =
        "%".equals(unit)
            ? format(100 * value) + " %"
            : format(value) + (unit.isEmpty() ? "" : " " + unit);
    return line.append(what.contains("{}") ? what.replace("{}", number) : what + " " + number)
        .toString();
  }

  private static String format(double x) {
    double size = Math.abs(x);
    String pattern =
        size >= 100 || x == Math.rint(x)
            ? "%.0f"
            : size >= 10 ? "%.1f" : size >= 0.1 ? "%.2f" : "%.2g";
    return String.format(Locale.ROOT, pattern, x);
  }
}
