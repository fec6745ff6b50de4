package org.undercap.cli.chart;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.Map;
import java.util.function.Consumer;

/** One page of a chart, laid out and ready to be drawn. */
public final class ChartPage {
  static final Map<RenderingHints.Key, Object> SMOOTH =
      Map.of(
          RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON,
          RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON,
          RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON,
          RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);

  private final ChartStyle style;
  private final ChartText text;
  private final double height;
  private final Consumer<Graphics2D> painting;

  ChartPage(ChartStyle style, ChartText text, double height, Consumer<Graphics2D> painting) {
    this.style = style;
    this.text = text;
    this.height = Math.ceil(height);
    this.painting = painting;
  }

  /**
   * Width.
   *
   * @return width (points)
   */
  public double width() {
    return style.width();
  }

  /**
   * Height.
   *
   * @return height (points)
   */
  public double height() {
    return height;
  }

  /**
   * Resolution for a bitmap.
   *
   * @return resolution (dots per inch)
   */
  public int dotsPerInch() {
    return style.dotsPerInch();
  }

  /**
   * The words of the chart.
   *
   * @return the same for all pages of a chart
   */
  public ChartText text() {
    return text;
  }

  /**
   * Draws the page.
   *
   * @param g where to draw; one unit is one point, the origin is the upper left corner
   */
  public void draw(Graphics2D g) {
    g.addRenderingHints(SMOOTH);
    painting.accept(g);
  }
}
