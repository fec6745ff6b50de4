package org.undercap.cli.chart;

import java.awt.Graphics2D;
import java.util.List;

/** Title and unit above a plot. */
final class PlotHead {
  private static final double GAP = 4;

  private final Letters letters;
  private final List<String> title;
  private final List<String> unit;

  PlotHead(Letters letters, Plot plot, double width) {
    this.letters = letters;
    title = plot.title().isEmpty() ? List.of() : letters.bold().wrap(plot.title(), width);
    unit = letters.text().wrap(plot.unit(), width);
  }

  double height() {
    return title.size() * letters.bold().lineHeight()
        + unit.size() * letters.text().lineHeight()
        + GAP;
  }

  void draw(Graphics2D g, double left, double top) {
    double y = PlotBox.write(g, letters.bold(), title, Palette.BLACK, left, top);
    PlotBox.write(g, letters.text(), unit, Palette.DARK_GREY, left, y);
  }
}
