package org.undercap.cli.chart;

import java.util.List;

/**
 * Bars in rows, each row with its head on the left and its value on the right.
 *
 * @param title words above the plot, may be empty
 * @param unit what the values are, with the unit
 * @param rows heads and values of the rows, the first on top
 * @param bars bars, drawn in this order
 * @param whole value that the axis reaches at least, as 100 for percent; may be zero
 */
public record BarPlot(String title, String unit, List<Row> rows, List<Bar> bars, double whole)
    implements Plot {
  /**
   * Copies the lists.
   *
   * @param title words above the plot
   * @param unit what the values are
   * @param rows at least one
   * @param bars bars
   * @param whole value that the axis reaches at least
   * @throws IllegalArgumentException if there is no row
   */
  public BarPlot {
    rows = List.copyOf(rows);
    bars = List.copyOf(bars);
    if (rows.isEmpty()) {
      throw new IllegalArgumentException("bars need at least one row");
    }
  }

  /**
   * Whether the rows are the steps of an account: bars that begin where those of the row above end.
   *
   * @return true if a row has bars, but none that begins at zero
   */
  public boolean isAccount() {
    return bars.stream()
        .anyMatch(bar -> bars.stream().noneMatch(b -> b.row() == bar.row() && b.from() == 0));
  }

  /** Right end of the bars of a row; zero if there is none. */
  double end(int row) {
    return bars.stream().filter(bar -> bar.row() == row).mapToDouble(Bar::to).max().orElse(0);
  }

  /** Where an account stands after a row: the end of the bars that it shares with the next row. */
  double level(int row) {
    double begin =
        bars.stream().filter(bar -> bar.row() == row).mapToDouble(Bar::from).min().orElse(0);
    boolean goesOn =
        bars.stream()
            .anyMatch(
                bar -> bar.row() == row + 1 && (bar.from() == end(row) || bar.to() == end(row)));
    return goesOn ? end(row) : begin;
  }

  /**
   * A row.
   *
   * @param head what it shows
   * @param value written behind the bars, may be empty
   */
  public record Row(String head, String value) {}

  /**
   * A bar.
   *
   * @param row number of its row, from 0
   * @param words what it shows, for the key; empty if it needs no key
   * @param fill how it is filled
   * @param from where it begins
   * @param to where it ends
   */
  public record Bar(int row, String words, Fill fill, double from, double to) {}
}
