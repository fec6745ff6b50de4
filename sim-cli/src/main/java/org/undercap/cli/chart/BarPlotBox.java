package org.undercap.cli.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** A plot of bars in its place. */
final class BarPlotBox implements PlotBox {
  private static final double GAP = 5;
  private static final double TICK = 4;

  /** Part of a row that a bar fills. */
  private static final double FULL = 0.7;

  /** Lowest row that can be read (lines of text). */
  private static final double LEAST_ROW = 1.2;

  /** Most of the width that heads of rows take (fraction). */
  private static final double HEADS = 0.4;

  /** Most of the width that values take (fraction). */
  private static final double VALUES = 0.35;

  private final BarPlot plot;
  private final ChartStyle style;
  private final Letters letters;
  private final Scale scale;
  private final PlotHead head;
  private final boolean withHeads;
  private final List<List<String>> heads;
  private final int lines;
  private final List<List<String>> values;
  private Rectangle2D area = new Rectangle2D.Double();
  private Rectangle2D box = new Rectangle2D.Double();
  private double leastHead;
  private double leastValues;

  BarPlotBox(
      BarPlot plot,
      ChartStyle style,
      Letters letters,
      Scale scale,
      double width,
      boolean withHeads,
      int lines) {
    this.plot = plot;
    this.style = style;
    this.letters = letters;
    this.scale = scale;
    this.withHeads = withHeads;
    this.lines = lines;
    head = new PlotHead(letters, plot, width - (withHeads ? headRoom(plot, letters, width) : 0));
    heads =
        plot.rows().stream().map(row -> letters.text().wrap(row.head(), width * HEADS)).toList();
    values =
        plot.rows().stream().map(row -> letters.text().wrap(row.value(), width * VALUES)).toList();
  }

  /** Room that the heads of the rows take beside a plot of this width (points). */
  static double headRoom(BarPlot plot, Letters letters, double width) {
    double widest = 0;
    for (BarPlot.Row row : plot.rows()) {
      List<String> lines = letters.text().wrap(row.head(), width * HEADS);
      widest = Math.max(widest, letters.text().width(lines));
    }
    return widest + GAP;
  }

  /** How many lines of text the rows need, by their heads and values; all rows are alike. */
  static int lines(BarPlot plot, Letters letters, double width) {
    int most = 1;
    for (BarPlot.Row row : plot.rows()) {
      most = Math.max(most, letters.text().wrap(row.head(), width * HEADS).size());
      most = Math.max(most, letters.text().wrap(row.value(), width * VALUES).size());
    }
    return most;
  }

  @Override
  public double headRoom() {
    return Math.max(leastHead, head.height());
  }

  @Override
  public double sideRoom() {
    return 0;
  }

  @Override
  public double endRoom() {
    return valueRoom();
  }

  @Override
  public void align(double headRoom, double sideRoom, double endRoom) {
    leastHead = headRoom;
    leastValues = endRoom;
  }

  private double valueRoom() {
    double widest = values.stream().mapToDouble(letters.text()::width).max().orElse(0);
    return Math.max(leastValues, widest + GAP);
  }

  private double rowHeight() {
    return Math.max(LEAST_ROW, lines + 0.15) * letters.text().lineHeight();
  }

  private double rowsHeight() {
    return plot.rows().size() * rowHeight();
  }

  private double bottomRoom() {
    return plot.isAccount() ? TICK : TICK + letters.text().lineHeight();
  }

  @Override
  public double leastHeight() {
    return headRoom() + rowsHeight() + bottomRoom();
  }

  @Override
  public void place(Rectangle2D where) {
    area = where;
    double left =
        where.getX()
            + (withHeads
                ? heads.stream().mapToDouble(letters.text()::width).max().orElse(0) + GAP
                : 0);
    double right = where.getMaxX() - valueRoom();
    double top = where.getY() + headRoom();
    double height = where.getMaxY() - bottomRoom() - top;
    box = new Rectangle2D.Double(left, top, right - left, height);
  }

  @Override
  public Set<String> unlabelled() {
    return Set.of();
  }

  @Override
  public List<SampleRow.Item> key(Set<String> lines) {
    List<SampleRow.Item> items = new ArrayList<>();
    for (BarPlot.Bar bar : plot.bars()) {
      SampleRow.Item item = new SampleRow.FillItem(bar.words(), bar.fill(), false, false);
      if (!bar.words().isEmpty() && !items.contains(item)) {
        items.add(item);
      }
    }
    return items;
  }

  private double x(double value) {
    return box.getX() + box.getWidth() * value / scale.top();
  }

  private double rowTop(int row) {
    return box.getY() + row * drawnRow();
  }

  /** Height of a row in its place, which may be higher than it must be. */
  private double drawnRow() {
    return box.getHeight() / plot.rows().size();
  }

  @Override
  public void draw(Graphics2D g) {
    head.draw(g, box.getX(), area.getY());
    if (plot.isAccount()) {
      steps(g);
    } else {
      axis(g);
    }
    for (BarPlot.Bar bar : plot.bars()) {
      double height = drawnRow();
      double thick = Math.min(height * FULL, 2.6 * style.textSize());
      double top = rowTop(bar.row()) + (height - thick) / 2;
      double left = x(bar.from());
      double width = x(bar.to()) - left;
      if (width > 0) {
        bar.fill().paint(g, new Rectangle2D.Double(left, top, width, thick));
      }
    }
    g.setColor(Palette.BLACK);
    g.setStroke(new BasicStroke(0.75f));
    g.draw(new Line2D.Double(box.getX(), box.getY(), box.getX(), box.getMaxY()));
    for (int row = 0; row < plot.rows().size(); row++) {
      double middle = rowTop(row) + drawnRow() / 2;
      if (withHeads) {
        centred(g, heads.get(row), area.getX(), middle);
      }
      value(g, values.get(row), x(plot.end(row)) + GAP, middle);
    }
  }

  /**
   * Upright lines that lead from the end of each bar of an account to the next one, and a broken
   * one from the first bar to the last row, by which they are compared.
   */
  private void steps(Graphics2D g) {
    g.setColor(Palette.MIDDLE_GREY);
    g.setStroke(Dash.DASHED.stroke(style.lineWidth() / 3));
    double begin = x(plot.end(0));
    g.draw(new Line2D.Double(begin, rowTop(0) + drawnRow() / 2, begin, box.getMaxY()));
    g.setStroke(new BasicStroke(0.75f));
    for (int row = 0; row + 1 < plot.rows().size(); row++) {
      double at = x(plot.level(row));
      double top = rowTop(row) + drawnRow() / 2;
      double bottom = rowTop(row + 1) + drawnRow() / 2;
      g.draw(new Line2D.Double(at, top, at, bottom));
    }
  }

  /** A value behind its bar; on the line that marks the begin of an account it stays readable. */
  private void value(Graphics2D g, List<String> lines, double left, double middle) {
    if (plot.isAccount()) {
      double high = lines.size() * letters.text().lineHeight();
      g.setColor(Palette.WHITE);
      g.fill(new Rectangle2D.Double(left, middle - high / 2, letters.text().width(lines), high));
    }
    centred(g, lines, left, middle);
  }

  private void centred(Graphics2D g, List<String> lines, double left, double middle) {
    double top = middle - lines.size() * letters.text().lineHeight() / 2;
    PlotBox.write(g, letters.text(), lines, Palette.BLACK, left, top);
  }

  private void axis(Graphics2D g) {
    g.setFont(letters.text().font());
    g.setStroke(new BasicStroke(0.5f));
    double base = box.getMaxY() + TICK + letters.text().ascent();
    double free = Double.NEGATIVE_INFINITY;
    for (int i = 0; i * scale.step() <= scale.top() * (1 + 1e-9); i++) {
      double value = i * scale.step();
      g.setColor(Palette.LIGHT_GREY);
      g.draw(new Line2D.Double(x(value), box.getY(), x(value), box.getMaxY()));
      String words = scale.label(value);
      double half = letters.text().width(words) / 2;
      double left = Math.max(area.getX() - GAP, x(value) - half);
      left = Math.min(left, area.getMaxX() - 2 * half);
      if (left > free) {
        g.setColor(Palette.BLACK);
        g.drawString(words, (float) left, (float) base);
        free = left + 2 * half + GAP;
      }
    }
  }
}
