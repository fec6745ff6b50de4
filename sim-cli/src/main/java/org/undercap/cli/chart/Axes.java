package org.undercap.cli.chart;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import org.undercap.climate.Hemisphere;

/** Room around a plot for the numbers and words of its axes, and the words themselves. */
final class Axes {
  /** Tick, and space on both sides of the numbers (points). */
  private static final double TICKS = 10;

  private static final double GAP = 3;

  private Axes() {}

  /** Room on the side of an upright axis with numbers and upright words (points). */
  static double sideRoom(Letters letters, Scale scale) {
    return letters.text().lineHeight()
        + GAP
        + letters.text().width(scale.label(scale.top()))
        + TICKS;
  }

  /** Room below a plot for dates and words (points). */
  static double bottomRoom(Letters letters) {
    return TICKS + GAP + 2 * letters.text().lineHeight();
  }

  /** Words of the left axis, at the edge of the page. */
  static void leftTitle(
      Graphics2D g, Letters letters, String words, double edge, Rectangle2D plot) {
    upright(g, letters.text(), words, edge + letters.text().ascent(), plot.getCenterY());
  }

  /** Words of the right axis, at the edge of the page. */
  static void rightTitle(
      Graphics2D g, Letters letters, String words, double edge, Rectangle2D plot) {
    double descent = letters.text().lineHeight() - letters.text().ascent();
    upright(g, letters.text(), words, edge - descent, plot.getCenterY());
  }

  private static void upright(
      Graphics2D g, Lettering letters, String words, double base, double middle) {
    AffineTransform before = g.getTransform();
    g.translate(base, middle + letters.width(words) / 2);
    g.rotate(-Math.PI / 2);
    g.setFont(letters.font());
    g.setColor(Palette.BLACK);
    g.drawString(words, 0f, 0f);
    g.setTransform(before);
  }

  /** Words of the date axis, below the dates, as far in the middle as the page allows. */
  static void dateTitle(
      Graphics2D g,
      Letters letters,
      DaySpan span,
      Hemisphere hemisphere,
      double pageRight,
      double plotBottom) {
    String words = dates(span, hemisphere);
    double width = letters.text().width(words);
    double left = Math.min(span.left() + span.width() / 2 - width / 2, pageRight - width);
    double base = plotBottom + TICKS + letters.text().lineHeight() + letters.text().ascent();
    g.setFont(letters.text().font());
    g.setColor(Palette.BLACK);
    g.drawString(words, (float) left, (float) base);
  }

  /** Words of an axis of start dates, below its plot, as far in the middle as the page allows. */
  static void startTitle(
      Graphics2D g,
      Letters letters,
      DaySpan span,
      Hemisphere hemisphere,
      double pageRight,
      double plotBottom) {
    String words = "start of treatment, " + half(hemisphere);
    double width = letters.text().width(words);
    double left = Math.min(span.left() + (span.width() - width) / 2, pageRight - width);
    double base = plotBottom + TICKS + letters.text().lineHeight() + letters.text().ascent();
    g.setFont(letters.text().font());
    g.setColor(Palette.BLACK);
    g.drawString(words, (float) left, (float) base);
  }

  private static String half(Hemisphere hemisphere) {
    return switch (hemisphere) {
      case NORTH -> "northern hemisphere";
      case SOUTH -> "southern hemisphere";
    };
  }

  /** Names years only where the dates below the plot do not. */
  private static String dates(DaySpan span, Hemisphere hemisphere) {
    String years = DayAxis.showsYears(span) ? "" : ", " + Dates.years(span.first(), span.last());
    return "date" + years + " (" + half(hemisphere) + ")";
  }
}
