package org.undercap.cli.chart;

import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.util.stream.DoubleStream;

/**
 * A curve in points of the page, for finding room for its label.
 *
 * @param x across, ascending
 * @param y down; not a number where the curve is interrupted
 */
@SuppressWarnings("ArrayRecordComponent") // never leaves this package and is never compared
record Trace(double[] x, double[] y) {
  /** Points of a drawn line that lie this near count as the line itself (points). */
  private static final double CLOSE = 2;

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

  /** The straight pieces between points that may lie far apart, with points close together. */
  static Trace through(double[] x, double[] y) {
    DoubleStream.Builder across = DoubleStream.builder();
    DoubleStream.Builder down = DoubleStream.builder();
    for (int i = 1; i < x.length; i++) {
      int steps = Math.max(1, (int) Math.ceil((x[i] - x[i - 1]) / CLOSE));
      for (int step = 0; step < steps; step++) {
        double part = (double) step / steps;
        across.add(x[i - 1] + part * (x[i] - x[i - 1]));
        down.add(y[i - 1] + part * (y[i] - y[i - 1]));
      }
    }
    across.add(x[x.length - 1]);
    down.add(y[y.length - 1]);
    return new Trace(across.build().toArray(), down.build().toArray());
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
