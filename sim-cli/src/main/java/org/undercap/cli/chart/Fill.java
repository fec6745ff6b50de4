package org.undercap.cli.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;

/**
 * How a bar or a cell is filled: colour and pattern together, so that it is known without colour.
 */
@SuppressWarnings("ImmutableEnumChecker") // colours never change
public enum Fill {
  /** Mites on bees, or what was killed of them. */
  ON_BEES(Palette.VERMILION, Palette.WHITE, Pattern.BARRED),
  /** Mites under the cappings. */
  IN_CELLS(Palette.LIGHT_SKY, Palette.BLUE, Pattern.HATCHED),
  /** All mites. */
  ALL_MITES(Palette.LIGHT_GREY, Palette.DARK_GREY, Pattern.PLAIN),
  /** What became fewer by a treatment. */
  KILLED(Palette.DARK_GREY, Palette.DARK_GREY, Pattern.PLAIN),
  /** What became fewer by itself. */
  FEWER(Palette.WHITE, Palette.DARK_GREY, Pattern.PLAIN),
  /** What became more. */
  MORE(Palette.LIGHT_YELLOW, Palette.DARK_GREY, Pattern.DOTTED),
  /** Least of a scale. */
  LOW(Palette.WHITE, Palette.DARK_GREY, Pattern.PLAIN),
  /** Little of a scale. */
  SOME(Palette.LIGHT_ORANGE, Palette.DARK_GREY, Pattern.PLAIN),
  /** Much of a scale. */
  MUCH(Palette.ORANGE, Palette.DARK_GREY, Pattern.PLAIN),
  /** First of two methods. */
  FIRST(Palette.SKY, Palette.DARK_GREY, Pattern.PLAIN),
  /** Second of two methods. */
  SECOND(Palette.ORANGE, Palette.DARK_GREY, Pattern.PLAIN);

  private static final double STEP = 7;

  private enum Pattern {
    PLAIN,
    HATCHED,
    BARRED,
    DOTTED
  }

  private final Color ground;
  private final Color ink;
  private final Pattern pattern;

  Fill(Color ground, Color ink, Pattern pattern) {
    this.ground = ground;
    this.ink = ink;
    this.pattern = pattern;
  }

  /** The colour of the ground. */
  Color ground() {
    return ground;
  }

  /** Fills a box and draws its dark edge. */
  void paint(Graphics2D g, Rectangle2D box) {
    g.setColor(ground);
    g.fill(box);
    g.setColor(ink);
    g.setStroke(new BasicStroke(0.7f));
    switch (pattern) {
      case PLAIN -> {}
      case HATCHED -> hatch(g, box);
      case BARRED -> bars(g, box);
      case DOTTED -> dots(g, box);
    }
    g.setColor(Palette.DARK_GREY);
    g.draw(box);
  }

  /** Slanting lines, each cut off at the edge of the box. */
  private static void hatch(Graphics2D g, Rectangle2D box) {
    double reach = box.getWidth() + box.getHeight();
    for (double at = STEP; at < reach; at += STEP) {
      double leftX = Math.max(0, at - box.getHeight());
      double rightX = Math.min(at, box.getWidth());
      Shape line =
          new Line2D.Double(
              box.getX() + leftX,
              box.getY() + at - leftX,
              box.getX() + rightX,
              box.getY() + at - rightX);
      g.draw(line);
    }
  }

  /** Level lines. */
  private static void bars(Graphics2D g, Rectangle2D box) {
    for (double y = box.getY() + STEP / 2; y < box.getMaxY(); y += STEP) {
      g.draw(new Line2D.Double(box.getX(), y, box.getMaxX(), y));
    }
  }

  private static void dots(Graphics2D g, Rectangle2D box) {
    for (double x = box.getX() + STEP / 2; x < box.getMaxX() - 1; x += STEP) {
      for (double y = box.getY() + STEP / 2; y < box.getMaxY() - 1; y += STEP) {
        g.fill(new Ellipse2D.Double(x - 0.7, y - 0.7, 1.4, 1.4));
      }
    }
  }
}
