package org.undercap.simulation;

import java.util.List;
import java.util.Locale;

/**
 * A value of the model and the values that it came from.
 *
 * @param what what the value is, in the trade's words, with {@code {}} where it is to stand
 * @param value the value
 * @param unit its unit, empty for a ratio, {@code %} for a fraction that is written as percent
 * @param because the values it came from, in the order of reasoning
 */
public record Explanation(String what, double value, String unit, List<Explanation> because) {
  private static final double LEAST_PERCENT = 0.1;

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
   * @return as in {@code 13.2 C outside -> 23.6 C on the carrier -> vapour 0.53 of that at 22.0 C
   *     outside -> 14 % of the mites on bees killed}
   */
  public String toLine() {
    StringBuilder line = new StringBuilder();
    for (Explanation cause : because) {
      line.append(cause.toLine()).append(" -> ");
    }
    String number = number();
    return line.append(what.contains("{}") ? what.replace("{}", number) : what + " " + number)
        .toString();
  }

  private String number() {
    return switch (unit) {
      case "" -> format(value);
      case "%" -> percent(100 * value);
      case "C" -> String.format(Locale.ROOT, "%.1f C", value);
      default -> format(value) + " " + unit;
    };
  }

  /** No more digits than a keeper can use; small shares and shares near all stay visible. */
  private static String percent(double x) {
    if (x > 0 && x < LEAST_PERCENT) {
      return "less than " + LEAST_PERCENT + " %";
    }
    boolean whole = x == Math.rint(x) || (x >= 9.95 && x <= 99);
    return String.format(Locale.ROOT, whole ? "%.0f %%" : "%.1f %%", x);
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
