package org.undercap.lesson;

import org.undercap.internal.Checks;

/**
 * A bar, or a part of one, in a row of its own or within another.
 *
 * @param row number of the row in the panel, from 0
 * @param part what it shows, a key of the texts
 * @param from where it begins (unit of the panel)
 * @param to where it ends (unit of the panel)
 */
public record Bar(int row, String part, double from, double to) {
  /**
   * Checks the numbers.
   *
   * @param row at least 0
   * @param part what it shows
   * @param from at least 0
   * @param to not below {@code from}
   * @throws IllegalArgumentException if a number is out of range
   */
  public Bar {
    Checks.notNegative(row, "row");
    Checks.notNegative(from, "begin of bar " + part);
    Checks.notNegative(to - from, "length of bar " + part);
  }
}
