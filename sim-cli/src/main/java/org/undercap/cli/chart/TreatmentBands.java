package org.undercap.cli.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Treatments and measures as upright bands behind the curves of a plot. */
record TreatmentBands(List<Mark> marks, DaySpan span, Rectangle2D box) {
  /** Narrowest band that a photocopy keeps (points). */
  private static final double THINNEST = 1.5;

  TreatmentBands {
    marks = List.copyOf(marks);
  }

  double left(Mark mark) {
    return span.xInside(mark.from());
  }

  double right(Mark mark) {
    double right = span.xInside(mark.until().plusDays(1));
    return Math.min(Math.max(right, left(mark) + THINNEST), box.getMaxX());
  }

  void draw(Graphics2D g) {
    g.setStroke(new BasicStroke(0.75f));
    for (Mark mark : marks) {
      if (!span.shows(mark)) {
        continue;
      }
      double left = left(mark);
      double right = right(mark);
      g.setColor(Meaning.TREATMENT.look().color());
      g.fill(new Rectangle2D.Double(left, box.getY(), right - left, box.getHeight()));
      g.setColor(Palette.DARK_GREY);
      g.draw(new Line2D.Double(left, box.getY(), left, box.getMaxY()));
      g.draw(new Line2D.Double(right, box.getY(), right, box.getMaxY()));
    }
  }
}
