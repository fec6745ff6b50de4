package org.undercap.cli.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Set;

/** One plot of a teaching chart in its place on the page. */
interface PlotBox {
  /** Smallest height that can be read, with heads and axes (points). */
  double leastHeight();

  /** Room above the plot for title, unit and marks (points). */
  double headRoom();

  /** Room left of the plot for numbers (points). */
  double sideRoom();

  /** Room right of the plot for what is written there (points). */
  double endRoom();

  /** Gives more room on three sides, so that it stands in line with its neighbours. */
  void align(double headRoom, double sideRoom, double endRoom);

  /** Takes its place on the page. */
  void place(Rectangle2D area);

  /** Words of lines that found no room beside them; only after it was placed. */
  Set<String> unlabelled();

  /** What a key has to explain: what never carries its words, and the lines of these words. */
  List<SampleRow.Item> key(Set<String> lines);

  /** Draws it; lines carry their words unless a key explains them. */
  void draw(Graphics2D g);

  /** Draws lines of text below each other; returns where they end. */
  static double write(
      Graphics2D g, Lettering letters, List<String> lines, Color color, double left, double top) {
    g.setFont(letters.font());
    g.setColor(color);
    double y = top;
    for (String line : lines) {
      g.drawString(line, (float) left, (float) (y + letters.ascent()));
      y += letters.lineHeight();
    }
    return y;
  }
}
