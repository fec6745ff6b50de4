package org.undercap.cli.chart;

import java.time.LocalDate;
import java.util.List;
import org.undercap.internal.Checks;

/**
 * What comes of one treatment by the date on which it begins.
 *
 * @param name the treatment in words
 * @param points one for each start date, in order, at least one
 */
public record WaitingLine(String name, List<Point> points) {
  /**
   * Copies the list.
   *
   * @param name the treatment in words
   * @param points one for each start date, in order
   * @throws IllegalArgumentException if there is no point
   */
  public WaitingLine {
    points = List.copyOf(points);
    if (points.isEmpty()) {
      throw new IllegalArgumentException("a line needs at least one start date");
    }
  }

  /**
   * A start date.
   *
   * @param date day of the first application
   * @param harm parasitised winter brood (percent)
   * @param mites mites left
   * @param ruledOut whether something speaks against this date
   */
  public record Point(LocalDate date, Spread harm, Spread mites, boolean ruledOut) {}

  /**
   * An estimate with its range.
   *
   * @param low lower end
   * @param middle middle value
   * @param high upper end
   */
  public record Spread(double low, double middle, double high) {
    /**
     * Checks the numbers.
     *
     * @param low at least 0
     * @param middle not below the lower end
     * @param high not below the middle
     * @throws IllegalArgumentException if they are out of range or order
     */
    public Spread {
      Checks.notNegative(low, "lower end");
      Checks.finite(high, "upper end");
      if (!(low <= middle && middle <= high)) {
        throw new IllegalArgumentException(low + ", " + middle + ", " + high + " must rise");
      }
    }
  }
}
