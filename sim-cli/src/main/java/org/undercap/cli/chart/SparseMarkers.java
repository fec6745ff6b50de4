package org.undercap.cli.chart;

import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;

/** Draws each curve as one path, with a marker only here and there. */
final class SparseMarkers extends XYLineAndShapeRenderer {
  private static final long serialVersionUID = 1L;

  private final int step;

  /** A renderer that sets a marker every so many days. */
  SparseMarkers(int step) {
    this.step = Math.max(1, step);
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
    int offset = (step / 2 + series * step / 3) % step;
    return item % step == offset;
  }
}
