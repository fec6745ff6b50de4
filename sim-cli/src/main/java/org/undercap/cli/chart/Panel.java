package org.undercap.cli.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One plan of a comparison: its name, its flags, and below them its plot. */
final class Panel {
  private static final int MOST_NAME_LINES = 2;

  private final ChartStyle style;
  private final Letters letters;
  private final PlanCourse plan;
  private final List<String> name;
  private final FlagStrip flags;

  Panel(ChartStyle style, Letters letters, PlanCourse plan, FlagStrip flags, double nameWidth) {
    this.style = style;
    this.letters = letters;
    this.plan = plan;
    this.name = letters.bold().wrap(plan.course().plan(), nameWidth, MOST_NAME_LINES);
    this.flags = flags;
  }

  /** Height of name and flags above the plot (points). */
  double headHeight() {
    return name.size() * letters.bold().lineHeight() + flags.height() + 3;
  }

  /** Draws the panel around the box of its plot; {@code move} shifts flags to its column. */
  void draw(
      Graphics2D g,
      double top,
      Rectangle2D box,
      DaySpan span,
      double move,
      Scale mites,
      boolean withDates) {
    g.translate(move, 0);
    flags.draw(g, box.getY());
    g.translate(-move, 0);
    drawName(g, box.getX(), top);
    ColonyPlot.Content content =
        new ColonyPlot.Content(plan, lines(plan.course()), Map.of(), mites, Optional.empty(), true);
    new ColonyPlot(style, letters, box, span, content).draw(g, withDates);
  }

  private void drawName(Graphics2D g, double left, double top) {
    g.setFont(letters.bold().font());
    g.setColor(Palette.BLACK);
    double base = top + letters.bold().ascent();
    for (String line : name) {
      g.drawString(line, (float) left, (float) base);
      base += letters.bold().lineHeight();
    }
  }

  private static Map<Meaning, double[]> lines(Course course) {
    Map<Meaning, double[]> lines = new EnumMap<>(Meaning.class);
    lines.put(Meaning.MITES_ON_BEES, course.shown(course.mitesOnBees()));
    lines.put(Meaning.MITES_IN_CELLS, course.shown(course.mitesInCells()));
    lines.put(Meaning.ALL_MITES, course.shown(course.allMites()));
    return lines;
  }
}
