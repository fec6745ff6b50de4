package org.undercap.cli.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.function.Function;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.DefaultXYDataset;

/** One panel of a chart of start dates: ranges as areas, middle values as lines. */
final class WaitingPanel {
  /** Ranges of more lines than this would hide each other. */
  static final int MOST_RANGES = 2;

  /** How much of what lies behind it a range lets through (0 to 255). */
  private static final int VEIL = 45;

  private static final double HEADROOM = 1.05;
  private static final int MOST_STEPS = 5;

  private final List<WaitingLine> lines;
  private final Function<WaitingLine.Point, WaitingLine.Spread> values;
  private final double untreated;
  private final ChartStyle style;
  private final Letters letters;
  private final Scale scale;

  WaitingPanel(
      List<WaitingLine> lines,
      Function<WaitingLine.Point, WaitingLine.Spread> values,
      double untreated,
      ChartStyle style,
      Letters letters) {
    this.lines = lines;
    this.values = values;
    this.untreated = untreated;
    this.style = style;
    this.letters = letters;
    scale = Scale.covering(largest() * HEADROOM, MOST_STEPS);
  }

  private double largest() {
    double most = untreated;
    for (WaitingLine line : lines) {
      for (WaitingLine.Point point : line.points()) {
        WaitingLine.Spread value = values.apply(point);
        most = Math.max(most, ranges() ? value.high() : value.middle());
      }
    }
    return most;
  }

  private boolean ranges() {
    return lines.size() <= MOST_RANGES;
  }

  Scale scale() {
    return scale;
  }

  void draw(Graphics2D g, Rectangle2D box, DaySpan span) {
    if (ranges()) {
      for (int i = 0; i < lines.size(); i++) {
        drawRange(g, lines.get(i), Look.ofPlan(i).color(), box, span);
      }
    }
    DayAxis days = DayAxis.over(span, letters.text());
    PlotParts.style(days, letters.text().font(), Palette.BLACK);
    XYPlot plot = PlotParts.plot(days, PlotParts.axis(scale, letters.text().font()));
    plot.setDataset(new DefaultXYDataset());
    plot.setRenderer(new XYLineAndShapeRenderer());
    PlotParts.draw(g, plot, box);
    drawUntreated(g, box);
    for (int i = 0; i < lines.size(); i++) {
      drawLine(g, lines.get(i), Look.ofPlan(i), box, span);
    }
  }

  private double y(double value, Rectangle2D box) {
    return box.getMaxY() - box.getHeight() * value / scale.top();
  }

  private static double x(WaitingLine.Point point, DaySpan span) {
    return span.x((double) point.date().toEpochDay());
  }

  private void drawRange(
      Graphics2D g, WaitingLine line, Color color, Rectangle2D box, DaySpan span) {
    Path2D area = new Path2D.Double();
    List<WaitingLine.Point> points = line.points();
    area.moveTo(x(points.get(0), span), y(values.apply(points.get(0)).high(), box));
    for (WaitingLine.Point point : points) {
      area.lineTo(x(point, span), y(values.apply(point).high(), box));
    }
    for (int i = points.size() - 1; i >= 0; i--) {
      area.lineTo(x(points.get(i), span), y(values.apply(points.get(i)).low(), box));
    }
    area.closePath();
    g.setColor(new Color(color.getRed(), color.getGreen(), color.getBlue(), VEIL));
    g.fill(area);
  }

  private void drawUntreated(Graphics2D g, Rectangle2D box) {
    Look look = Meaning.THRESHOLD.look();
    double y = y(untreated, box);
    g.setColor(look.color());
    g.setStroke(look.dash().stroke(style.lineWidth() / 2));
    g.draw(new Line2D.Double(box.getX(), y, box.getMaxX(), y));
  }

  private void drawLine(Graphics2D g, WaitingLine line, Look look, Rectangle2D box, DaySpan span) {
    Path2D path = new Path2D.Double();
    g.setColor(look.color());
    for (WaitingLine.Point point : line.points()) {
      double x = x(point, span);
      double y = y(values.apply(point).middle(), box);
      if (path.getCurrentPoint() == null) {
        path.moveTo(x, y);
      } else {
        path.lineTo(x, y);
      }
      drawMark(g, point.ruledOut() ? Marker.CROSS : look.marker(), x, y);
    }
    g.setStroke(look.dash().stroke(style.lineWidth()));
    g.draw(path);
  }

  private void drawMark(Graphics2D g, Marker marker, double x, double y) {
    AffineTransform place = AffineTransform.getTranslateInstance(x, y);
    g.setStroke(new BasicStroke((float) style.lineWidth() / 2));
    if (marker == Marker.CROSS) {
      g.draw(place.createTransformedShape(marker.shape(2 * style.lineWidth())));
    } else {
      g.fill(place.createTransformedShape(marker.shape(1.6 * style.lineWidth())));
    }
  }
}
