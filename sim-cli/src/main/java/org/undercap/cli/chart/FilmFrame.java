package org.undercap.cli.chart;

import java.util.List;

/**
 * Still pictures of a treatment: mites on the bees as dots above, mites in each age of the sealed
 * brood as dots in a strip of cells below. One picture is a frame of a film; several below each
 * other make a print, beside each other a slide.
 */
public final class FilmFrame implements Chart {
  private static final double GAP = StillDrawing.GAP;

  /** Usual and lowest height of the boxes of mites (letters). */
  private static final double USUAL_BOX = 5;

  private static final double LEAST_BOX = 1.4;

  /** So many moments stand beside each other on a slide. */
  private static final int BESIDE = 3;

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
    int columns = style.columns() > 1 ? Math.min(BESIDE, stills.size()) : 1;
    int rows = (stills.size() + columns - 1) / columns;
    double boxHeight = boxHeight(letters, frame, rows);
    double each = stillHeight(letters, boxHeight);
    double least = frame.bodyTop() + rows * each + frame.footerHeight();
    double height = Math.max(rows == 1 || columns > 1 ? style.chartHeight() : 0, least);
    double width = (frame.right() - frame.left() - (columns - 1) * 3 * GAP) / columns;
    double dot = StillDrawing.dot(stills, style, width, boxHeight);
    return List.of(
        new ChartPage(
            style,
            text,
            height,
            g -> {
              frame.draw(g, Math.ceil(height));
              for (int i = 0; i < stills.size(); i++) {
                double left = frame.left() + (i % columns) * (width + 3 * GAP);
                int row = i / columns;
                double top = frame.bodyTop() + row * each;
                new StillDrawing(style, letters, captions, width, boxHeight, dot)
                    .draw(g, stills.get(i), left, top);
              }
            }));
  }

  /** Five letters high on paper; on a slide as high as all moments have room. */
  private double boxHeight(Letters letters, PageFrame frame, int rows) {
    double usual = USUAL_BOX * style.textSize();
    if (style.columns() == 1) {
      return usual;
    }
    double room = style.pageHeight() - frame.bodyTop() - frame.footerHeight();
    double words = stillHeight(letters, 0);
    return Math.min(usual, Math.max(LEAST_BOX * style.textSize(), (room / rows - words) / 2));
  }

  private static double stillHeight(Letters letters, double boxHeight) {
    return 5 * letters.text().lineHeight() + 2 * boxHeight + 4 * GAP;
  }
}
