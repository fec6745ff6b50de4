package org.undercap.lesson;

/**
 * A time or place on the axis across that is marked.
 *
 * @param key what it is, a key of the texts
 * @param from where it begins
 * @param to where it ends
 */
public record Span(String key, double from, double to) {
  /**
   * Checks the order.
   *
   * @param key not blank
   * @param from where it begins
   * @param to not before {@code from}
   * @throws IllegalArgumentException if the ends are reversed or the key is blank
   */
  public Span {
    if (key.isBlank() || !(from <= to)) {
      throw new IllegalArgumentException("span '" + key + "' from " + from + " to " + to);
    }
  }
}
