package org.undercap.cli.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Bars from zero to the right, one below the other, each with its interval as a whisker. */
public final class BarsChart implements Chart {
  private static final int MOST_STEPS = 6;
  private static final double HEADROOM = 1.02;
  private static final double ROW = 2.0;
  private static final double GAP = 6;

  private final String axis;
  private final List<Bar> bars;
  private final ChartText text;
  private final ChartStyle style;
  private final Letters letters;
  private final PageFrame frame;
  private final Scale scale;

  /**
   * A bar.
   *
   * @param name its words
   * @param value its length, at least 0
   * @param low lower end of its interval
   * @param high upper end of its interval
   */
  public record Bar(String name, double value, double low, double high) {}

  /**
   * A chart of bars.
   *
   * @param axis words of the axis
   * @param bars the bars from above to below, at least one
   * @param text words
   * @param style sizes
   * @throws IllegalArgumentException if there is no bar
   */
  public BarsChart(String axis, List<Bar> bars, ChartText text, ChartStyle style) {
    if (bars.isEmpty()) {
      throw new IllegalArgumentException("a chart of bars needs at least one bar");
    }
    this.axis = axis;
    this.bars = List.copyOf(bars);
    this.text = text;
    this.style = style;
    letters = Letters.of(style);
    frame = new PageFrame(style, letters, text, "Whisker: interval of 95 %.");
    double most = 0;
    for (Bar bar : bars) {
      most = Math.max(most, Math.max(bar.value(), bar.high()));
    }
    scale = Scale.covering(most * HEADROOM, MOST_STEPS);
  }

  @Override
  public ChartText text() {
    return text;
  }

  private double rowHeight() {
    return ROW * letters.text().lineHeight();
  }

  @Override
  public List<ChartPage> pages() {
    double height =
        Math.ceil(
            frame.bodyTop()
                + bars.size() * rowHeight()
                + Axes.bottomRoom(letters)
                + frame.footerHeight());
    return List.of(new ChartPage(style, text, height, g -> draw(g, height)));
  }

  private void draw(Graphics2D g, double height) {
    frame.draw(g, height);
    double names = letters.text().width(bars.stream().map(Bar::name).toList());
    double left = frame.left() + Math.min(names, style.width() / 2) + GAP;
    double top = frame.bodyTop();
    double edge = letters.text().width(scale.label(scale.top())) / 2;
    Rectangle2D box =
        new Rectangle2D.Double(left, top, frame.right() - edge - left, bars.size() * rowHeight());
    grid(g, box);
    for (int i = 0; i < bars.size(); i++) {
      bar(g, bars.get(i), box, top + i * rowHeight());
    }
    g.setColor(Palette.BLACK);
    g.draw(new Line2D.Double(left, top, left, box.getMaxY()));
  }

  private double x(double value, Rectangle2D box) {
    double inside = Math.max(0, Math.min(scale.top(), value));
    return box.getX() + box.getWidth() * inside / scale.top();
  }

  private void grid(Graphics2D g, Rectangle2D box) {
    g.setFont(letters.text().font());
    g.setStroke(new BasicStroke(0.5f));
    double base = box.getMaxY() + GAP + letters.text().ascent();
    long steps = Math.round(scale.top() / scale.step());
    for (int i = 0; i <= steps; i++) {
      double value = i * scale.step();
      g.setColor(Palette.LIGHT_GREY);
      g.draw(new Line2D.Double(x(value, box), box.getY(), x(value, box), box.getMaxY()));
      g.setColor(Palette.BLACK);
      String label = scale.label(value);
      double width = letters.text().width(label);
      g.drawString(label, (float) (x(value, box) - width / 2), (float) base);
    }
    double width = letters.text().width(axis);
    double from =
        Math.max(frame.left(), Math.min(box.getCenterX() - width / 2, frame.right() - width));
    g.drawString(axis, (float) from, (float) (base + letters.text().lineHeight()));
  }

  private void bar(Graphics2D g, Bar bar, Rectangle2D box, double top) {
    double middle = top + rowHeight() / 2;
    double thick = letters.text().lineHeight();
    Rectangle2D shape =
        new Rectangle2D.Double(
            box.getX(), middle - thick / 2, x(bar.value(), box) - box.getX(), thick);
    g.setColor(Palette.LIGHT_SKY);
    g.fill(shape);
    g.setColor(Palette.BLUE);
    g.setStroke(new BasicStroke(1f));
    g.draw(shape);
    g.setColor(Palette.BLACK);
    g.setStroke(new BasicStroke((float) style.lineWidth() * 0.7f));
    g.draw(new Line2D.Double(x(bar.low(), box), middle, x(bar.high(), box), middle));
    for (double end : new double[] {bar.low(), bar.high()}) {
      g.draw(new Line2D.Double(x(end, box), middle - GAP / 2, x(end, box), middle + GAP / 2));
    }
    g.setFont(letters.text().font());
    String name = letters.text().wrap(bar.name(), box.getX() - frame.left() - GAP, 1).get(0);
    double width = letters.text().width(name);
    g.drawString(
        name,
        (float) (box.getX() - GAP - width),
        (float) (middle + letters.text().ascent() / 2 - 1));
  }
}
