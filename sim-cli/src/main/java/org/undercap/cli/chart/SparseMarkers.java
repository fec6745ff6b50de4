package org.undercap.cli.chart;

import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;

/** Draws each curve as one path, with a marker only here and there. */
final class SparseMarkers extends XYLineAndShapeRenderer {
  private static final long serialVersionUID = 1L;

  private final int step;
  private final int curves;

  /** A renderer that sets a marker every so many days, on three curves in turn on other days. */
  SparseMarkers(int step) {
    this(step, 3);
  }

  /** A renderer that sets a marker every so many days, on each curve on other days. */
  SparseMarkers(int step, int curves) {
    this.step = Math.max(1, step);
    this.curves = Math.max(1, curves);
    setDrawSeriesLineAsPath(true);
    setAutoPopulateSeriesShape(false);
  }

  /** Gives a curve its look. */
  void setLook(int series, Look look, double lineWidth) {
    setSeriesPaint(series, look.color());
    setSeriesStroke(series, look.dash().stroke(lineWidth));
    setSeriesShape(series, look.marker().shape(1.6 * lineWidth));
  }

  @Override
  public boolean getItemShapeVisible(int series, int item) {
    int offset = (step / 2 + series * step / curves) % step;
    return item % step == offset;
  }
}
