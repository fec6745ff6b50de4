package org.undercap.cli.chart;

import java.time.LocalDate;
import java.util.List;

/**
 * Counts of one colony against what a fit foretells.
 *
 * @param name name of the colony
 * @param points counts in the order of their dates, at least one
 */
public record FittedPanel(String name, List<Point> points) {
  /**
   * Copies the list.
   *
   * @param name name of the colony
   * @param points counts in the order of their dates
   * @throws IllegalArgumentException if there is no count
   */
  public FittedPanel {
    points = List.copyOf(points);
    if (points.isEmpty()) {
      throw new IllegalArgumentException("a panel of counts needs at least one count");
    }
  }

  /**
   * A count.
   *
   * @param date its day
   * @param found what was found
   * @param mean mean of what is foretold
   * @param low lower end of what is foretold
   * @param high upper end of what is foretold
   */
  public record Point(LocalDate date, double found, double mean, double low, double high) {}
}
