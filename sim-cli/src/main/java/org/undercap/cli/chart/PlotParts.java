package org.undercap.cli.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Stroke;
import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.DefaultXYDataset;

/** Builds the parts of JFreeChart that all charts share, so that they look alike. */
final class PlotParts {
  private static final Stroke HAIRLINE = new BasicStroke(0.5f);

  private PlotParts() {}

  /** A plot without background and frame, with hairlines at the ticks. */
  static XYPlot plot(DayAxis days, NumberAxis values) {
    XYPlot plot = new XYPlot();
    plot.setDomainAxis(days);
    plot.setRangeAxis(values);
    plot.setBackgroundPaint(null);
    plot.setOutlineVisible(false);
    plot.setInsets(RectangleInsets.ZERO_INSETS);
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
    plot.setDomainGridlinePaint(Palette.LIGHT_GREY);
    plot.setDomainGridlineStroke(HAIRLINE);
    plot.setRangeGridlinePaint(Palette.LIGHT_GREY);
    plot.setRangeGridlineStroke(HAIRLINE);
    plot.setRangeZeroBaselineVisible(true);
    plot.setRangeZeroBaselinePaint(Palette.BLACK);
    return plot;
  }

  /** A plot with its values on the right side, without hairlines, to lie behind another one. */
  static XYPlot behind(DayAxis days, NumberAxis values) {
    XYPlot plot = plot(days, values);
    plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_RIGHT);
    plot.setDomainGridlinesVisible(false);
    plot.setRangeGridlinesVisible(false);
    return plot;
  }

  /** An upright axis with round steps. */
  static NumberAxis axis(Scale scale, Font font) {
    NumberAxis axis = new NumberAxis();
    axis.setRange(0, scale.top());
    axis.setTickUnit(
        new NumberTickUnit(scale.step()) {
          private static final long serialVersionUID = 1L;

          @Override
          public String valueToString(double value) {
            return scale.label(value);
          }
        });
    style(axis, font, Palette.BLACK);
    return axis;
  }

  /** Gives an axis its letters and a thin line. */
  static void style(ValueAxis axis, Font font, Color color) {
    axis.setTickLabelFont(font);
    axis.setTickLabelPaint(color);
    axis.setAxisLinePaint(Palette.MIDDLE_GREY);
    axis.setTickMarkPaint(Palette.MIDDLE_GREY);
  }

  /** Daily values as one series. */
  static DefaultXYDataset series(LocalDate start, double[] values) {
    DefaultXYDataset dataset = new DefaultXYDataset();
    add(dataset, "", start, values);
    return dataset;
  }

  /** Adds daily values as a further series. */
  static void add(DefaultXYDataset dataset, String key, LocalDate start, double[] values) {
    double[] days = new double[values.length];
    for (int day = 0; day < days.length; day++) {
      days[day] = (double) start.toEpochDay() + day;
    }
    dataset.addSeries(key, new double[][] {days, values});
  }

  /** Draws a plot so that its data area fills a box of whole points; axes lie outside of it. */
  static void draw(Graphics2D g, XYPlot plot, Rectangle2D box) {
    double room = 200;
    AxisSpace upright = new AxisSpace();
    upright.setLeft(room);
    upright.setRight(room);
    plot.setFixedRangeAxisSpace(upright);
    AxisSpace level = new AxisSpace();
    level.setTop(room);
    level.setBottom(room);
    plot.setFixedDomainAxisSpace(level);
    plot.draw(
        g,
        new Rectangle2D.Double(
            box.getX() - room,
            box.getY() - room,
            box.getWidth() + 2 * room,
            box.getHeight() + 2 * room),
        null,
        null,
        null);
  }
}
