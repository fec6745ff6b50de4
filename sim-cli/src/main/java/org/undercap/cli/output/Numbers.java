package org.undercap.cli.output;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Numbers for people to read. They look the same in every country: a point before the decimals, no
 * separator of thousands (many keepers would read 1,300 as 1.3) and no exponent.
 *
 * <p>Files for programs hold unrounded numbers instead; see {@link JsonOutput} and {@link
 * CsvOutput}.
 */
public final class Numbers {
  private static final int PERCENT = 100;

  /** Figures of a share; a simulation or a count of mites hardly ever knows more. */
  private static final int SHARE_FIGURES = 2;

  private Numbers() {}

  /**
   * A number rounded to significant figures; zeros at the end of the decimals are left out.
   *
   * @param value the number, finite
   * @param figures significant figures, at least 1
   * @return for example {@code 1300} for 1347 and 2 figures
   * @throws IllegalArgumentException if the value is not finite or there are no figures
   */
  public static String rounded(double value, int figures) {
    if (!(figures >= 1)) {
      throw new IllegalArgumentException("figures " + figures + " must be at least 1");
    }
    MathContext context = new MathContext(figures, RoundingMode.HALF_UP);
    return plain(decimal(value).round(context));
  }

  /**
   * A number rounded to a fixed number of decimals, for columns whose points stand in line.
   *
   * @param value the number, finite
   * @param decimals decimals, at least 0
   * @return for example {@code 4.30} for 4.3 and 2 decimals
   * @throws IllegalArgumentException if the value is not finite
   */
  public static String fixed(double value, int decimals) {
    BigDecimal number = decimal(value).setScale(decimals, RoundingMode.HALF_UP);
    return number.toPlainString();
  }

  /**
   * A number as it was given, with all its figures.
   *
   * @param value the number; may be infinite
   * @return for example {@code 0.56}, {@code 12000} or {@code infinity}
   * @throws IllegalArgumentException if the value is not a number
   */
  public static String exact(double value) {
    if (Double.isInfinite(value)) {
      return value > 0 ? "infinity" : "-infinity";
    }
    return plain(decimal(value));
  }

  /**
   * Several numbers as they were given.
   *
   * @param values the numbers
   * @return for example {@code 3; 6; 12}
   * @throws IllegalArgumentException if one is not a number
   */
  public static String exact(List<Double> values) {
    return values.stream().map(Numbers::exact).collect(Collectors.joining("; "));
  }

  /**
   * A range with its ends rounded.
   *
   * @param low lower end, finite
   * @param high upper end, finite, not below the lower
   * @param figures significant figures, at least 1
   * @return for example {@code 900 to 2100}, or one number if both ends round to the same
   * @throws IllegalArgumentException if an end is not finite or the ends are in the wrong order
   */
  public static String range(double low, double high, int figures) {
    return joined(low, high, rounded(low, figures), rounded(high, figures));
  }

  /**
   * A range with its ends as they were given.
   *
   * @param low lower end
   * @param high upper end, not below the lower; may be infinite
   * @return for example {@code 0.28 to 0.8}
   * @throws IllegalArgumentException if an end is not a number or the ends are in the wrong order
   */
  public static String exactRange(double low, double high) {
    return joined(low, high, exact(low), exact(high));
  }

  /**
   * An estimate with the range that it lies in.
   *
   * @param value the estimate, finite
   * @param low lower end, finite
   * @param high upper end, finite, not below the lower
   * @param figures significant figures, at least 1
   * @return for example {@code 1300 (900 to 2100)}
   * @throws IllegalArgumentException if a number is not finite or the ends are in the wrong order
   */
  public static String estimate(double value, double low, double high, int figures) {
    return rounded(value, figures) + " (" + range(low, high, figures) + ")";
  }

  /**
   * A share in percent, to two figures. A share below one never reads as 100 %.
   *
   * @param share the share (fraction, 0 to 1)
   * @return for example {@code 55 %} or {@code over 99 %}
   * @throws IllegalArgumentException if the share is not in 0 to 1
   */
  public static String percent(double share) {
    if (!(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException("share " + share + " must be in [0, 1]");
    }
    String text = rounded(share * PERCENT, SHARE_FIGURES);
    boolean all = text.equals(Integer.toString(PERCENT));
    return all && share < 1 ? "over 99 %" : text + " %";
  }

  private static String joined(double low, double high, String lowText, String highText) {
    if (!(low <= high)) {
      throw new IllegalArgumentException("range from " + low + " to " + high + " is no range");
    }
    return lowText.equals(highText) ? lowText : lowText + " to " + highText;
  }

  private static BigDecimal decimal(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("value " + value + " must be a finite number");
    }
    return BigDecimal.valueOf(value);
  }

  private static String plain(BigDecimal number) {
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }
}
