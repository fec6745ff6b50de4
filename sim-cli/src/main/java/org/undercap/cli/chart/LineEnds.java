package org.undercap.cli.chart;

import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Names behind the ends of lines: of many lines, where words beside a line would touch the next
 * one, and of lines beside which there is no room.
 */
final class LineEnds {
  /** From this number of lines on, names stand behind the ends. */
  private static final int MANY = 4;

  /** Most of the width that names take (fraction). */
  private static final double NAMES = 0.25;

  /** Room for leader and sample of a line (letters). */
  private static final double SAMPLE = 3.8;

  private final LinePlot plot;
  private final ChartStyle style;
  private final Lettering lettering;
  private final List<List<String>> names;
  private final boolean roomless;

  LineEnds(LinePlot plot, ChartStyle style, Lettering lettering, double width, boolean roomless) {
    this.roomless = roomless;
    this.plot = plot;
    this.style = style;
    this.lettering = lettering;
    names = plot.lines().stream().map(line -> lettering.wrap(line.words(), width * NAMES)).toList();
  }

  boolean wanted() {
    return roomless || plot.lines().size() >= MANY;
  }

  /** Room right of the plot; none if names stand on the lines (points). */
  double width() {
    double widest = names.stream().mapToDouble(lettering::width).max().orElse(0);
    return wanted() ? widest + SAMPLE * style.textSize() : 0;
  }

  /** Least height of the plot (points). */
  double leastHeight() {
    return wanted() ? EndLabels.height(names, lettering) : 0;
  }

  /** Draws the names beside a plot whose lines end at these points. */
  void draw(Graphics2D g, Rectangle2D box, List<Point2D> ends) {
    if (wanted()) {
      List<EndLabels.Label> labels = new ArrayList<>();
      for (int i = 0; i < names.size(); i++) {
        labels.add(new EndLabels.Label(names.get(i), plot.lines().get(i).look(), ends.get(i)));
      }
      double right = box.getMaxX();
      new EndLabels(style, lettering, labels)
          .draw(g, right, right + style.textSize(), box.getY(), box.getMaxY());
    }
  }
}
