package org.undercap.cli.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Still pictures of a treatment: mites on the bees as dots above, mites in each age of the sealed
 * brood as dots in a strip of cells below. One picture is a frame of a film; several below each
 * other make a print.
 */
public final class FilmFrame implements Chart {
  private static final double GAP = 6;

  private final List<Still> stills;
  private final Captions captions;
  private final ChartText text;
  private final ChartStyle style;

  /**
   * One moment.
   *
   * @param moment when it is
   * @param onBees words of the upper box
   * @param dotsOnBees number of dots in it
   * @param inCells words of the strip
   * @param dotsInCells number of dots in each cell, youngest first
   */
  public record Still(
      String moment, String onBees, int dotsOnBees, String inCells, List<Integer> dotsInCells) {
    /**
     * Copies the list.
     *
     * @param moment when it is
     * @param onBees words of the upper box
     * @param dotsOnBees number of dots in it
     * @param inCells words of the strip
     * @param dotsInCells number of dots in each cell
     */
    public Still {
      dotsInCells = List.copyOf(dotsInCells);
    }
  }

  /**
   * Words that all stills share.
   *
   * @param cells below the strip of cells
   * @param dot what a dot is
   */
  public record Captions(String cells, String dot) {}

  /**
   * A picture.
   *
   * @param stills moments, from top to bottom
   * @param captions words that they share
   * @param text words around them
   * @param style sizes
   */
  public FilmFrame(List<Still> stills, Captions captions, ChartText text, ChartStyle style) {
    this.stills = List.copyOf(stills);
    this.captions = captions;
    this.text = text;
    this.style = style;
  }

  @Override
  public ChartText text() {
    return text;
  }

  @Override
  public List<ChartPage> pages() {
    Letters letters = Letters.of(style);
    PageFrame frame = new PageFrame(style, letters, text, captions.dot());
    double each = stillHeight(letters);
    double least = frame.bodyTop() + stills.size() * each + frame.footerHeight();
    double height = Math.max(stills.size() == 1 ? style.chartHeight() : 0, least);
    return List.of(
        new ChartPage(
            style,
            text,
            height,
            g -> {
              frame.draw(g, Math.ceil(height));
              for (int i = 0; i < stills.size(); i++) {
                draw(g, letters, frame, stills.get(i), frame.bodyTop() + i * each);
              }
            }));
  }

  private double boxHeight() {
    return 5 * style.textSize();
  }

  private double stillHeight(Letters letters) {
    return 5 * letters.text().lineHeight() + 2 * boxHeight() + 5 * GAP;
  }

  private void draw(Graphics2D g, Letters letters, PageFrame frame, Still still, double top) {
    double left = frame.left();
    double width = frame.right() - left;
    double y = PlotBox.write(g, letters.bold(), List.of(still.moment()), Palette.BLACK, left, top);
    y = PlotBox.write(g, letters.text(), List.of(still.onBees()), Palette.BLACK, left, y) + GAP / 2;
    Rectangle2D bees = new Rectangle2D.Double(left, y, width, boxHeight());
    edge(g, bees);
    dots(g, bees, still.dotsOnBees(), Meaning.MITES_ON_BEES.look(), false);
    y = bees.getMaxY() + GAP;
    y =
        PlotBox.write(g, letters.text(), List.of(still.inCells()), Palette.BLACK, left, y)
            + GAP / 2;
    int cells = still.dotsInCells().size();
    for (int age = 0; age < cells; age++) {
      Rectangle2D cell =
          new Rectangle2D.Double(left + age * width / cells, y, width / cells, boxHeight());
      g.setColor(Palette.LIGHT_YELLOW);
      g.fill(cell);
      edge(g, cell);
      g.setStroke(new BasicStroke((float) style.lineWidth()));
      g.draw(new Line2D.Double(cell.getX(), cell.getY(), cell.getMaxX(), cell.getY()));
      dots(g, cell, still.dotsInCells().get(age), Meaning.MITES_IN_CELLS.look(), true);
      String number = Integer.toString(age + 1);
      double middle = cell.getCenterX() - letters.text().width(number) / 2;
      PlotBox.write(g, letters.text(), List.of(number), Palette.BLACK, middle, cell.getMaxY());
    }
    double below = y + boxHeight() + letters.text().lineHeight();
    PlotBox.write(g, letters.text(), List.of(captions.cells()), Palette.DARK_GREY, left, below);
  }

  private void edge(Graphics2D g, Rectangle2D box) {
    g.setColor(Palette.DARK_GREY);
    g.setStroke(new BasicStroke((float) style.lineWidth() / 3));
    g.draw(box);
  }

  /** Dots in rows from the bottom up; squares for mites in cells, so that they differ in grey. */
  private void dots(Graphics2D g, Rectangle2D box, int number, Look look, boolean square) {
    double size = style.textSize() * 0.42;
    double step = size * 1.45;
    int across = Math.max(1, (int) ((box.getWidth() - step / 2) / step));
    g.setColor(look.color());
    for (Rectangle2D place : places(box, number, across, step, size)) {
      if (square) {
        g.fill(place);
      } else {
        g.fill(
            new Ellipse2D.Double(place.getX(), place.getY(), place.getWidth(), place.getHeight()));
      }
    }
  }

  private static List<Rectangle2D> places(
      Rectangle2D box, int number, int across, double step, double size) {
    List<Rectangle2D> places = new ArrayList<>();
    for (int i = 0; i < number; i++) {
      double x = box.getX() + step / 2 + (i % across) * step;
      double y = box.getMaxY() - step * (1 + i / across);
      if (y > box.getY()) {
        places.add(new Rectangle2D.Double(x, y, size, size));
      }
    }
    return places;
  }
}
