package org.undercap.parameter;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.undercap.internal.Nearest;

/** How a value differs between the members of an ensemble. */
public record Spread(Shape shape, double amount) {

  /** Form of the distribution of a value. */
  public enum Shape {
    /** The same in all members. */
    FIXED("fixed"),
    /** Normal around the value. */
    NORMAL("normal sd"),
    /** The value is the median. */
    LOGNORMAL("lognormal sigma"),
    /** A fraction around the value, between the low and the high bound of the parameter. */
    BETA("beta");

    private final String words;

    Shape(String words) {
      this.words = words;
    }

    /**
     * Whether the shape needs an amount.
     *
     * @return true for normal and lognormal
     */
    public boolean hasAmount() {
      return this == NORMAL || this == LOGNORMAL;
    }
  }

  /**
   * Checks the amount.
   *
   * @param shape form of the distribution
   * @param amount standard deviation for {@link Shape#NORMAL} (unit of the value), standard
   *     deviation of the natural logarithm for {@link Shape#LOGNORMAL} (ratio), else 0
   * @throws IllegalArgumentException if the amount is not finite and above 0 for a shape that needs
   *     one, or not 0 for a shape that needs none
   */
  public Spread {
    if (shape.hasAmount() ? !(amount > 0 && Double.isFinite(amount)) : amount != 0) {
      throw new IllegalArgumentException(
          "amount of spread " + amount + " does not fit the shape \"" + shape.words + "\"");
    }
  }

  /**
   * Reads a spread as written in files: {@code fixed}, {@code normal sd 0.12}, {@code lognormal
   * sigma 0.25} or {@code beta}.
   *
   * @param text the text
   * @return the spread
   * @throws IllegalArgumentException if the text is none of these
   */
  public static Spread of(String text) {
    for (Shape shape : Shape.values()) {
      if (shape.hasAmount() && text.startsWith(shape.words + " ")) {
        return new Spread(shape, Double.parseDouble(text.substring(shape.words.length() + 1)));
      }
      if (!shape.hasAmount() && text.equals(shape.words)) {
        return new Spread(shape, 0);
      }
    }
    List<String> accepted =
        Arrays.stream(Shape.values()).map(s -> s.hasAmount() ? s.words + " x" : s.words).toList();
    throw Nearest.unknown("spread", text.toLowerCase(Locale.ROOT), accepted);
  }

  @Override
  public String toString() {
    return shape.hasAmount() ? shape.words + " " + amount : shape.words;
  }
}
