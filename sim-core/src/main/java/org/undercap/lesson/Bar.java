package org.undercap.lesson;

import java.util.List;
import org.undercap.internal.Checks;

/**
 * A bar, or a part of one, in a row.
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

  /**
   * All mites of a colony by what a treatment did to them: killed, spared on the bees, out of reach
   * under the cappings.
   *
   * @param row number of the row
   * @param killed share killed (fraction)
   * @param onBees share that sat on bees that day (fraction)
   * @return three parts of one bar of 100 (%)
   */
  static List<Bar> reached(int row, double killed, double onBees) {
    double dead = 100 * killed;
    double reached = Math.max(dead, 100 * onBees);
    return List.of(
        new Bar(row, "killed", 0, dead),
        new Bar(row, "spared-on-bees", dead, reached),
        new Bar(row, "out-of-reach", reached, 100));
  }
}
