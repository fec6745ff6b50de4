package org.undercap.lesson;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A line of points.
 *
 * @param key what it shows, a key of the texts
 * @param of the number by which it differs from others of its key, if there is one, as a
 *     temperature (C)
 * @param x across, ascending; dates as days since 1970-01-01
 * @param y up, as many values; the unit is that of the panel
 */
public record Series(String key, OptionalDouble of, List<Double> x, List<Double> y) {
  /**
   * Copies the lists.
   *
   * @param key not blank
   * @param of a number that belongs to the key
   * @param x at least one value
   * @param y as many values, each finite
   * @throws IllegalArgumentException if the lengths differ, there is no point or a value is not
   *     finite
   */
  public Series {
    x = List.copyOf(x);
    y = List.copyOf(y);
    if (key.isBlank() || x.isEmpty() || x.size() != y.size()) {
      throw new IllegalArgumentException(
          "series '" + key + "' has " + x.size() + " places and " + y.size() + " values");
    }
    for (double value : y) {
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException("series '" + key + "' holds " + value);
      }
    }
  }

  static Series of(String key, List<Double> x, List<Double> y) {
    return new Series(key, OptionalDouble.empty(), x, y);
  }

  /** The last value. */
  double last() {
    return y.get(y.size() - 1);
  }
}
