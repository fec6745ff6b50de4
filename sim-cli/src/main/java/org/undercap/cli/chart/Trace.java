package org.undercap.cli.chart;

import java.awt.geom.Rectangle2D;
import java.time.LocalDate;

/**
 * A curve in points of the page, for finding room for its label.
 *
 * @param x across, ascending
 * @param y down; not a number where the curve is interrupted
 */
@SuppressWarnings("ArrayRecordComponent") // never leaves this package and is never compared
record Trace(double[] x, double[] y) {

  /** Daily values from a date on, drawn in a plot with an axis from zero to the top. */
  static Trace of(double[] values, LocalDate start, DaySpan span, Rectangle2D plot, double top) {
    double[] x = new double[values.length];
    double[] y = new double[values.length];
    for (int day = 0; day < values.length; day++) {
      x[day] = span.x((double) start.toEpochDay() + day);
      y[day] = plot.getMaxY() - plot.getHeight() * values[day] / top;
    }
    return new Trace(x, y);
  }

  int length() {
    return x.length;
  }

  /** Height of the curve at the value that lies nearest (points down); not a number in a gap. */
  double yNear(double across) {
    int low = 0;
    int high = x.length - 1;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (x[middle] <= across) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Math.abs(x[low] - across) <= Math.abs(x[high] - across) ? y[low] : y[high];
  }
}
