package org.undercap.cli.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Draws one moment of a film: a box of mites on the bees above a strip of cells. */
record StillDrawing(
    ChartStyle style,
    Letters letters,
    FilmFrame.Captions captions,
    double width,
    double boxHeight,
    double dot) {
  /** Space between the parts (points). */
  static final double GAP = 5;

  /** Size of a dot (letters), and how far dots stand apart (dots). */
  private static final double DOT = 0.62;

  private static final double DOT_STEP = 1.45;

  /** Size of dots at which the fullest boxes hold all of theirs; at most the usual one (points). */
  static double dot(List<FilmFrame.Still> stills, ChartStyle style, double width, double height) {
    double size = style.textSize() * DOT;
    for (FilmFrame.Still still : stills) {
      int cells = still.dotsInCells().size();
      size = fitting(new Rectangle2D.Double(0, 0, width, height), still.dotsOnBees(), size);
      for (int dots : still.dotsInCells()) {
        size = fitting(new Rectangle2D.Double(0, 0, width / cells, height), dots, size);
      }
    }
    return size;
  }

  private static double fitting(Rectangle2D box, int dots, double most) {
    double size = most;
    while (!fit(box, dots, size * DOT_STEP)) {
      size *= 0.9;
    }
    return size;
  }

  void draw(Graphics2D g, FilmFrame.Still still, double left, double top) {
    double y = PlotBox.write(g, letters.bold(), List.of(still.moment()), Palette.BLACK, left, top);
    y = PlotBox.write(g, letters.text(), List.of(still.onBees()), Palette.BLACK, left, y) + GAP / 2;
    Rectangle2D bees = new Rectangle2D.Double(left, y, width, boxHeight);
    edge(g, bees);
    dots(g, bees, still.dotsOnBees(), Meaning.MITES_ON_BEES.look(), false);
    y = bees.getMaxY() + GAP / 2;
    y =
        PlotBox.write(g, letters.text(), List.of(still.inCells()), Palette.BLACK, left, y)
            + GAP / 2;
    int cells = still.dotsInCells().size();
    for (int age = 0; age < cells; age++) {
      double across = left + age * width / cells;
      cell(g, new Rectangle2D.Double(across, y, width / cells, boxHeight), still, age);
    }
    double below = y + boxHeight + letters.text().lineHeight();
    PlotBox.write(g, letters.text(), List.of(captions.cells()), Palette.DARK_GREY, left, below);
  }

  private void cell(Graphics2D g, Rectangle2D cell, FilmFrame.Still still, int age) {
    g.setColor(Palette.LIGHT_YELLOW);
    g.fill(cell);
    edge(g, cell);
    g.setStroke(new BasicStroke((float) style.lineWidth()));
    g.draw(new Line2D.Double(cell.getX(), cell.getY(), cell.getMaxX(), cell.getY()));
    dots(g, cell, still.dotsInCells().get(age), Meaning.MITES_IN_CELLS.look(), true);
    if (age % numbered(cell.getWidth(), still.dotsInCells().size()) > 0) {
      return;
    }
    String number = Integer.toString(age + 1);
    double middle = cell.getCenterX() - letters.text().width(number) / 2;
    PlotBox.write(g, letters.text(), List.of(number), Palette.BLACK, middle, cell.getMaxY());
  }

  /** Every how many cells carry their number, so that numbers stay apart. */
  private int numbered(double cell, int cells) {
    double widest = letters.text().width(Integer.toString(cells)) + 2 * GAP;
    return (int) Math.ceil(widest / cell);
  }

  private void edge(Graphics2D g, Rectangle2D box) {
    g.setColor(Palette.DARK_GREY);
    g.setStroke(new BasicStroke((float) style.lineWidth() / 3));
    g.draw(box);
  }

  /** Dots in rows from the bottom up; squares for mites in cells, so that they differ in grey. */
  private void dots(Graphics2D g, Rectangle2D box, int number, Look look, boolean square) {
    g.setColor(look.color());
    for (Rectangle2D place : places(box, number, dot)) {
      if (square) {
        g.fill(place);
      } else {
        g.fill(
            new Ellipse2D.Double(place.getX(), place.getY(), place.getWidth(), place.getHeight()));
      }
    }
  }

  private static int across(Rectangle2D box, double step) {
    return Math.max(1, (int) ((box.getWidth() - step / 2) / step));
  }

  private static boolean fit(Rectangle2D box, int number, double step) {
    int rows = (number + across(box, step) - 1) / across(box, step);
    return rows * step < box.getHeight();
  }

  private static List<Rectangle2D> places(Rectangle2D box, int number, double size) {
    double step = size * DOT_STEP;
    int across = across(box, step);
    List<Rectangle2D> places = new ArrayList<>();
    for (int i = 0; i < number; i++) {
      double x = box.getX() + step / 2 + (i % across) * step;
      double y = box.getMaxY() - step * (1 + i / across);
      places.add(new Rectangle2D.Double(x, y, size, size));
    }
    return places;
  }
}
