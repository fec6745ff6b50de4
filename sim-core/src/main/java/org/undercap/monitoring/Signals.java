package org.undercap.monitoring;

/**
 * What counts would meet in model colonies: for each colony (a number of the grid of mites times a
 * row of the unknowns) and each count, mites on a bee, fallen mites, or infested share of cells,
 * before any loss by the method. NaN where the colony has died, or has no such cells.
 */
final class Signals {
  private final int rows;
  private final double[][] perCount;
  private final double[] mites;
  private final double[] perBee;

  Signals(int counts, int points, int rows) {
    this.rows = rows;
    perCount = new double[counts][points * rows];
    mites = new double[points * rows];
    perBee = new double[points * rows];
  }

  int rows() {
    return rows;
  }

  int colonies() {
    return mites.length;
  }

  /** Values of one count, row within number of mites. */
  double[] ofCount(int count) {
    return perCount[count];
  }

  /** All mites on the day of the estimate (mites). */
  double[] mites() {
    return mites;
  }

  /** Mites on bees for each bee on the day of the estimate (mites per bee). */
  double[] perBee() {
    return perBee;
  }

  /** The values of one row, out of those of all colonies. */
  double[] ofRow(double[] values, int row) {
    double[] ofRow = new double[values.length / rows];
    for (int point = 0; point < ofRow.length; point++) {
      ofRow[point] = values[point * rows + row];
    }
    return ofRow;
  }

  /** Whether the model can tell anything about a count. */
  boolean tells(int count) {
    for (double value : perCount[count]) {
      if (!Double.isNaN(value)) {
        return true;
      }
    }
    return false;
  }
}
