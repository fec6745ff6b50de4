package org.undercap.cli.chart;

import java.awt.geom.Rectangle2D;

/** Which parts of a plot are covered by lines or words, on a grid of small squares. */
final class Ground {
  private static final double CELL = 2;

  private final Rectangle2D plot;
  private final int columns;
  private final int rows;
  private final boolean[] covered;

  Ground(Rectangle2D plot) {
    this.plot = plot;
    this.columns = (int) Math.ceil(plot.getWidth() / CELL) + 1;
    this.rows = (int) Math.ceil(plot.getHeight() / CELL) + 1;
    this.covered = new boolean[columns * rows];
  }

  /** Covers a curve and a margin around it. */
  void cover(Trace trace, double margin) {
    for (int i = 0; i < trace.length(); i++) {
      coverPiece(trace, Math.max(0, i - 1), i, margin);
    }
  }

  private void coverPiece(Trace trace, int from, int to, double margin) {
    double dx = trace.x()[to] - trace.x()[from];
    double dy = trace.y()[to] - trace.y()[from];
    if (Double.isNaN(dy)) {
      return;
    }
    int steps = (int) Math.ceil(Math.max(Math.abs(dx), Math.abs(dy)) / CELL);
    for (int step = 0; step <= steps; step++) {
      double part = steps == 0 ? 0 : (double) step / steps;
      double x = trace.x()[from] + part * dx;
      double y = trace.y()[from] + part * dy;
      cover(new Rectangle2D.Double(x - margin, y - margin, 2 * margin, 2 * margin));
    }
  }

  /** Covers a rectangle, as far as it lies in the plot. */
  void cover(Rectangle2D box) {
    int bottom = row(box.getMaxY());
    int right = column(box.getMaxX());
    for (int row = row(box.getMinY()); row <= bottom; row++) {
      for (int column = column(box.getMinX()); column <= right; column++) {
        covered[row * columns + column] = true;
      }
    }
  }

  /** Whether a rectangle lies in the plot and touches nothing. */
  boolean isFree(Rectangle2D box) {
    if (!plot.contains(box)) {
      return false;
    }
    int bottom = row(box.getMaxY());
    int right = column(box.getMaxX());
    for (int row = row(box.getMinY()); row <= bottom; row++) {
      for (int column = column(box.getMinX()); column <= right; column++) {
        if (covered[row * columns + column]) {
          return false;
        }
      }
    }
    return true;
  }

  private int column(double x) {
    return Math.min(Math.max((int) ((x - plot.getX()) / CELL), 0), columns - 1);
  }

  private int row(double y) {
    return Math.min(Math.max((int) ((y - plot.getY()) / CELL), 0), rows - 1);
  }
}
