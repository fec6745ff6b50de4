package org.undercap.cli.chart;

import java.util.List;

/**
 * A table of filled cells with their values written on them.
 *
 * @param title words above the plot, may be empty
 * @param unit what the values are, with the unit
 * @param across words above the heads of the columns
 * @param columns heads of the columns
 * @param rows heads of the rows
 * @param cells cells
 * @param key what the fillings mean
 */
public record MapPlot(
    String title,
    String unit,
    String across,
    List<String> columns,
    List<String> rows,
    List<Cell> cells,
    List<Sample> key)
    implements Plot {
  /**
   * Copies the lists.
   *
   * @param title words above the plot
   * @param unit what the values are
   * @param across words above the columns
   * @param columns heads of the columns
   * @param rows heads of the rows
   * @param cells cells
   * @param key what the fillings mean
   * @throws IllegalArgumentException if there is no row or column
   */
  public MapPlot {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
    cells = List.copyOf(cells);
    key = List.copyOf(key);
    if (columns.isEmpty() || rows.isEmpty()) {
      throw new IllegalArgumentException("a map needs rows and columns");
    }
  }

  /**
   * A cell.
   *
   * @param column number of the column, from 0
   * @param row number of the row, from 0
   * @param fill how it is filled
   * @param value written on it
   * @param framed whether a thick frame marks it
   * @param struck whether a line through it says that it is ruled out
   */
  public record Cell(
      int column, int row, Fill fill, String value, boolean framed, boolean struck) {}

  /**
   * A filling and what it means.
   *
   * @param words what it means
   * @param fill the filling
   * @param framed whether the sample has a thick frame
   * @param struck whether a line goes through the sample
   */
  public record Sample(String words, Fill fill, boolean framed, boolean struck) {}
}
