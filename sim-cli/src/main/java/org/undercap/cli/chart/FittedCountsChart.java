package org.undercap.cli.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.DefaultXYDataset;
import org.undercap.climate.Hemisphere;

/** Counts of several colonies over time, each in a panel of its own, with the fitted band. */
public final class FittedCountsChart implements Chart {
  private static final String NOTE =
      "Dots: found. Area: 95 of 100 counts foretold; line: their mean.";
  private static final String LONGEST_DATE = "30 Aug";
  private static final int COLUMNS = 3;
  private static final int MOST_ROWS = 4;
  private static final double ROW_HEIGHT = 130;
  private static final double HEADROOM = 1.03;
  private static final int MOST_STEPS = 4;

  private final String axis;
  private final List<FittedPanel> panels;
  private final ChartText text;
  private final Hemisphere hemisphere;
  private final ChartStyle style;
  private final Letters letters;
  private final PageFrame frame;
  private final Scale scale;

  /**
   * A chart of counts.
   *
   * @param axis words of the axis of counts
   * @param panels one a colony, at least one
   * @param text words
   * @param hemisphere half of the earth, named below the dates
   * @param style sizes
   * @throws IllegalArgumentException if there is no panel
   */
  public FittedCountsChart(
      String axis,
      List<FittedPanel> panels,
      ChartText text,
      Hemisphere hemisphere,
      ChartStyle style) {
    if (panels.isEmpty()) {
      throw new IllegalArgumentException("a chart of counts needs at least one colony");
    }
    this.axis = axis;
    this.panels = List.copyOf(panels);
    this.text = text;
    this.hemisphere = hemisphere;
    this.style = style;
    letters = Letters.of(style);
    frame = new PageFrame(style, letters, text, NOTE);
    double most = 0;
    for (FittedPanel panel : panels) {
      for (FittedPanel.Point point : panel.points()) {
        most = Math.max(most, Math.max(point.found(), point.high()));
      }
    }
    scale = Scale.covering(most * HEADROOM, MOST_STEPS);
  }

  @Override
  public ChartText text() {
    return text;
  }

  @Override
  public List<ChartPage> pages() {
    List<ChartPage> pages = new ArrayList<>();
    int most = COLUMNS * MOST_ROWS;
    for (int from = 0; from < panels.size(); from += most) {
      List<FittedPanel> mine = panels.subList(from, Math.min(panels.size(), from + most));
      int rows = (mine.size() + COLUMNS - 1) / COLUMNS;
      double height =
          Math.ceil(
              frame.bodyTop()
                  + rows * ROW_HEIGHT
                  + Axes.bottomRoom(letters)
                  + frame.footerHeight());
      pages.add(new ChartPage(style, text, height, g -> draw(g, mine, rows, height)));
    }
    return pages;
  }

  private void draw(Graphics2D g, List<FittedPanel> mine, int rows, double height) {
    frame.draw(g, height);
    double side = Axes.sideRoom(letters, scale);
    double left = frame.left() + side;
    double gap = style.textSize() * 1.6;
    double right = frame.right() - letters.text().width(LONGEST_DATE) / 2;
    double width = (right - left - (COLUMNS - 1) * gap) / COLUMNS;
    double top = frame.bodyTop();
    for (int i = 0; i < mine.size(); i++) {
      int column = i % COLUMNS;
      int row = i / COLUMNS;
      double boxTop = Math.rint(top + row * ROW_HEIGHT + 1.6 * letters.text().lineHeight());
      double boxBottom = Math.rint(top + (row + 1) * ROW_HEIGHT);
      Rectangle2D box =
          new Rectangle2D.Double(
              Math.rint(left + column * (width + gap)),
              boxTop,
              Math.rint(width),
              boxBottom - boxTop);
      boolean last = row == rows - 1 || i + COLUMNS >= mine.size();
      drawPanel(g, mine.get(i), box, column == 0, last);
    }
    double bottom = top + rows * ROW_HEIGHT;
    Rectangle2D whole = new Rectangle2D.Double(left, top, frame.right() - left, rows * ROW_HEIGHT);
    Axes.leftTitle(g, letters, axis, frame.left(), whole);
    Axes.dateTitle(g, letters, span(left, frame.right() - left), hemisphere, frame.right(), bottom);
  }

  private DaySpan span(double left, double width) {
    LocalDate first = LocalDate.MAX;
    LocalDate last = LocalDate.MIN;
    for (FittedPanel panel : panels) {
      for (FittedPanel.Point point : panel.points()) {
        first = point.date().isBefore(first) ? point.date() : first;
        last = point.date().isAfter(last) ? point.date() : last;
      }
    }
    return new DaySpan(first, last, left, width);
  }

  private void drawPanel(
      Graphics2D g, FittedPanel panel, Rectangle2D box, boolean values, boolean dates) {
    DaySpan span = span(box.getX(), box.getWidth());
    g.setColor(Palette.LIGHT_SKY);
    Path2D band = line(panel, box, span, FittedPanel.Point::high);
    List<FittedPanel.Point> points = panel.points();
    for (int i = points.size() - 1; i >= 0; i--) {
      band.lineTo(x(points.get(i), span), y(points.get(i).low(), box));
    }
    band.closePath();
    g.fill(band);
    g.setColor(Palette.MIDDLE_GREY);
    g.setStroke(new BasicStroke(0.5f));
    g.draw(band);
    DayAxis days = DayAxis.over(span, letters.text());
    PlotParts.style(days, letters.text().font(), Palette.BLACK);
    days.setTickLabelsVisible(dates);
    NumberAxis upright = PlotParts.axis(scale, letters.text().font());
    upright.setTickLabelsVisible(values);
    XYPlot plot = PlotParts.plot(days, upright);
    plot.setDataset(new DefaultXYDataset());
    plot.setRenderer(new XYLineAndShapeRenderer());
    PlotParts.draw(g, plot, box);
    g.setColor(Palette.BLUE);
    g.setStroke(new BasicStroke((float) style.lineWidth() * 0.7f));
    g.draw(line(panel, box, span, FittedPanel.Point::mean));
    g.setColor(Palette.BLACK);
    for (FittedPanel.Point point : points) {
      AffineTransform place =
          AffineTransform.getTranslateInstance(x(point, span), y(point.found(), box));
      g.fill(place.createTransformedShape(Marker.CIRCLE.shape(1.1 * style.lineWidth())));
    }
    g.setFont(letters.text().font());
    String name = letters.text().wrap(panel.name(), box.getWidth(), 1).get(0);
    g.drawString(name, (float) box.getX(), (float) (box.getY() - 4));
  }

  private Path2D line(
      FittedPanel panel, Rectangle2D box, DaySpan span, ToDoubleFunction<FittedPanel.Point> value) {
    Path2D path = new Path2D.Double();
    for (FittedPanel.Point point : panel.points()) {
      double y = y(value.applyAsDouble(point), box);
      if (path.getCurrentPoint() == null) {
        path.moveTo(x(point, span), y);
      } else {
        path.lineTo(x(point, span), y);
      }
    }
    return path;
  }

  private static double x(FittedPanel.Point point, DaySpan span) {
    return span.x((double) point.date().toEpochDay());
  }

  private double y(double value, Rectangle2D box) {
    return box.getMaxY() - box.getHeight() * value / scale.top();
  }
}
