package org.undercap.lesson;

import org.undercap.internal.Checks;

/**
 * A cell of a map.
 *
 * @param column number of the column, from 0 on the left
 * @param row number of the row, from 0 at the top
 * @param value what it shows (unit of the panel)
 * @param mark key of a remark on the cell, empty if there is none
 */
public record Cell(int column, int row, double value, String mark) {
  /**
   * Checks the numbers.
   *
   * @param column at least 0
   * @param row at least 0
   * @param value finite
   * @param mark key, may be empty
   * @throws IllegalArgumentException if a number is out of range
   */
  public Cell {
    Checks.notNegative(column, "column");
    Checks.notNegative(row, "row");
    Checks.finite(value, "value of a cell");
  }
}
