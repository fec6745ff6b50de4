package org.undercap.cli.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** A map of cells in its place. */
final class MapPlotBox implements PlotBox {
  private static final double GAP = 5;

  /** Most of the width that heads of rows take (fraction). */
  private static final double HEADS = 0.3;

  /** Lowest row that can be read (lines of text). */
  private static final double LEAST_ROW = 1.2;

  /** Legs of the dark corner of a marked cell (part of its height). */
  private static final double CORNER = 0.42;

  private final MapPlot plot;
  private final ChartStyle style;
  private final Letters letters;
  private final PlotHead head;
  private final List<List<String>> rowHeads;
  private final List<List<String>> columnHeads;
  private final double left;
  private final List<String> across;
  private Rectangle2D area = new Rectangle2D.Double();
  private Rectangle2D box = new Rectangle2D.Double();

  MapPlotBox(MapPlot plot, ChartStyle style, Letters letters, double width) {
    this.plot = plot;
    this.style = style;
    this.letters = letters;
    head = new PlotHead(letters, plot, width);
    rowHeads = plot.rows().stream().map(r -> letters.text().wrap(r, width * HEADS)).toList();
    left = rowHeads.stream().mapToDouble(letters.text()::width).max().orElse(0) + GAP;
    double column = (width - left) / plot.columns().size();
    columnHeads = plot.columns().stream().map(c -> letters.text().wrap(c, column - 2)).toList();
    across = letters.text().wrap(plot.across(), width - left);
  }

  private double columnsHeight() {
    int lines = columnHeads.stream().mapToInt(List::size).max().orElse(1);
    return (lines + across.size()) * letters.text().lineHeight() + GAP;
  }

  private double rowHeight() {
    int lines = rowHeads.stream().mapToInt(List::size).max().orElse(1);
    return Math.max(LEAST_ROW, lines + 0.2) * letters.text().lineHeight();
  }

  @Override
  public double leastHeight() {
    return head.height() + columnsHeight() + rowHeight() * plot.rows().size();
  }

  @Override
  public double headRoom() {
    return head.height();
  }

  @Override
  public double sideRoom() {
    return left;
  }

  @Override
  public double endRoom() {
    return 0;
  }

  @Override
  public void align(double headRoom, double sideRoom, double endRoom) {
    // A map stands alone.
  }

  @Override
  public void place(Rectangle2D where) {
    area = where;
    double top = where.getY() + head.height() + columnsHeight();
    box =
        new Rectangle2D.Double(
            where.getX() + left, top, where.getWidth() - left - 1, where.getMaxY() - top - 1);
  }

  @Override
  public Set<String> unlabelled() {
    return Set.of();
  }

  @Override
  public List<SampleRow.Item> key(Set<String> lines) {
    List<SampleRow.Item> items = new ArrayList<>();
    for (MapPlot.Sample sample : plot.key()) {
      items.add(
          new SampleRow.FillItem(sample.words(), sample.fill(), sample.framed(), sample.struck()));
    }
    return items;
  }

  @Override
  public void draw(Graphics2D g) {
    head.draw(g, area.getX(), area.getY());
    double y = area.getY() + head.height();
    y = centred(g, across, Palette.DARK_GREY, box.getCenterX(), y);
    double width = box.getWidth() / plot.columns().size();
    double height = box.getHeight() / plot.rows().size();
    for (int column = 0; column < columnHeads.size(); column++) {
      double middle = box.getX() + (column + 0.5) * width;
      centred(g, columnHeads.get(column), Palette.BLACK, middle, y);
    }
    for (int row = 0; row < rowHeads.size(); row++) {
      double middle = box.getY() + (row + 0.5) * height;
      List<String> words = rowHeads.get(row);
      double top = middle - words.size() * letters.text().lineHeight() / 2;
      PlotBox.write(g, letters.text(), words, Palette.BLACK, area.getX(), top);
    }
    for (MapPlot.Cell cell : plot.cells()) {
      cell(g, cell, width, height);
    }
    borders(g, width, height);
    for (MapPlot.Cell cell : plot.cells()) {
      marks(g, place(cell, width, height), cell.framed(), false, style);
    }
  }

  /** Thick lines where cells of different fillings meet, so that fields show without colour. */
  private void borders(Graphics2D g, double width, double height) {
    g.setColor(Palette.BLACK);
    g.setStroke(new BasicStroke((float) style.lineWidth()));
    for (MapPlot.Cell cell : plot.cells()) {
      Rectangle2D at = place(cell, width, height);
      if (differs(cell, cell.column() + 1, cell.row())) {
        g.draw(new Line2D.Double(at.getMaxX(), at.getY(), at.getMaxX(), at.getMaxY()));
      }
      if (differs(cell, cell.column(), cell.row() + 1)) {
        g.draw(new Line2D.Double(at.getX(), at.getMaxY(), at.getMaxX(), at.getMaxY()));
      }
    }
  }

  private boolean differs(MapPlot.Cell cell, int column, int row) {
    return plot.cells().stream()
        .anyMatch(c -> c.column() == column && c.row() == row && c.fill() != cell.fill());
  }

  private Rectangle2D place(MapPlot.Cell cell, double width, double height) {
    return new Rectangle2D.Double(
        box.getX() + cell.column() * width, box.getY() + cell.row() * height, width, height);
  }

  /** Lines of text around a middle; gives the place below them. */
  private double centred(
      Graphics2D g, List<String> words, Color colour, double middle, double top) {
    double y = top;
    for (String line : words) {
      double start = middle - letters.text().width(line) / 2;
      y = PlotBox.write(g, letters.text(), List.of(line), colour, start, y);
    }
    return y;
  }

  private void cell(Graphics2D g, MapPlot.Cell cell, double width, double height) {
    Rectangle2D place = place(cell, width, height);
    cell.fill().paint(g, place);
    marks(g, place, false, cell.struck(), style);
    double half = letters.text().width(cell.value()) / 2;
    double top = place.getCenterY() - letters.text().lineHeight() / 2;
    PlotBox.write(
        g, letters.text(), List.of(cell.value()), Palette.BLACK, place.getCenterX() - half, top);
  }

  /** A thick frame, and a dark corner. */
  static void marks(
      Graphics2D g, Rectangle2D box, boolean framed, boolean struck, ChartStyle style) {
    g.setColor(Palette.BLACK);
    if (framed) {
      g.setStroke(new BasicStroke((float) (1.4 * style.lineWidth())));
      g.draw(box);
    }
    if (struck) {
      double leg = CORNER * Math.min(box.getHeight(), 1.8 * style.textSize());
      Path2D corner = new Path2D.Double();
      corner.moveTo(box.getMaxX() - leg, box.getY());
      corner.lineTo(box.getMaxX(), box.getY());
      corner.lineTo(box.getMaxX(), box.getY() + leg);
      corner.closePath();
      g.fill(corner);
    }
  }
}
