package org.undercap.cli.chart;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.image.BufferedImage;

/** Turns pages into the bytes of files; the same page gives the same bytes. */
public final class ChartWriter {
  private static final double POINTS_PER_INCH = 72;

  private ChartWriter() {}

  /**
   * Loads Java's drawing library and the letters while a command still reads or computes, so that
   * its charts need not wait for them. Says nothing if that fails: the first chart will.
   */
  public static void loadAhead() {
    Thread loading = new Thread(ChartWriter::drawLetters, "charts");
    loading.setDaemon(true);
    loading.start();
  }

  private static void drawLetters() {
    Font font;
    try {
      font = ChartFonts.shipped().regular(8);
    } catch (ChartsUnavailableException e) {
      return; // The first chart tells it to the user.
    }
    Graphics2D g = new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB).createGraphics();
    g.addRenderingHints(ChartPage.SMOOTH);
    g.setFont(font);
    g.drawString("1", 0, 8);
    g.fill(new Ellipse2D.Double(0, 0, 8, 8));
    g.dispose();
  }

  /**
   * A bitmap in the resolution of the chart's style.
   *
   * @param page what to draw
   * @return a PNG file, which also tells its size on paper
   */
  public static byte[] png(ChartPage page) {
    return PngEncoder.encode(bitmap(page), page.dotsPerInch());
  }

  /**
   * A vector picture with real text, without XML prologue, so that it can stand in a file of its
   * own or inside a web page.
   *
   * @param page what to draw
   * @param idPrefix letters before each identifier, different for each picture of a web page; a
   *     letter, then letters, digits, hyphens or low lines
   * @return an SVG file in UTF-8
   * @throws IllegalArgumentException if the prefix holds other signs
   */
  public static byte[] svg(ChartPage page, String idPrefix) {
    return SvgWriter.write(page, idPrefix);
  }

  /** The page as a picture. */
  static BufferedImage bitmap(ChartPage page) {
    double scale = page.dotsPerInch() / POINTS_PER_INCH;
    BufferedImage image =
        new BufferedImage(
            (int) Math.round(page.width() * scale),
            (int) Math.round(page.height() * scale),
            BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    try {
      // A page may end within a row of dots.
      g.setColor(Palette.WHITE);
      g.fillRect(0, 0, image.getWidth(), image.getHeight());
      g.scale(scale, scale);
      page.draw(g);
    } finally {
      g.dispose();
    }
    return image;
  }
}
