package org.undercap.cli.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Names right of a plot, pushed apart, each led to the end of its line. */
final class EndLabels {
  private static final double GAP = 3;

  /** A name that belongs to the end of a line. */
  record Label(List<String> lines, Look look, Point2D end) {}

  private final ChartStyle style;
  private final Lettering lettering;
  private final List<Label> labels;

  EndLabels(ChartStyle style, Lettering lettering, List<Label> labels) {
    this.style = style;
    this.lettering = lettering;
    List<Label> sorted = new ArrayList<>(labels);
    sorted.sort(Comparator.comparingDouble(label -> label.end().getY()));
    this.labels = List.copyOf(sorted);
  }

  private double height(Label label) {
    return label.lines().size() * lettering.lineHeight();
  }

  /** Height of names below each other (points). */
  static double height(List<List<String>> names, Lettering lettering) {
    return names.stream().mapToDouble(name -> name.size() * lettering.lineHeight() + GAP).sum();
  }

  /** Draws the names from {@code left} on, between two heights. */
  void draw(Graphics2D g, double plotRight, double left, double top, double bottom) {
    double[] tops = tops(top, bottom);
    for (int i = 0; i < tops.length; i++) {
      drawLabel(g, labels.get(i), plotRight, left, tops[i]);
    }
  }

  /** Upper ends: first pushed down by the neighbour above, then up by the lower edge. */
  private double[] tops(double top, double bottom) {
    double[] tops = new double[labels.size()];
    double free = top;
    for (int i = 0; i < tops.length; i++) {
      double wanted = labels.get(i).end().getY() - height(labels.get(i)) / 2;
      tops[i] = Math.max(wanted, free);
      free = tops[i] + height(labels.get(i)) + GAP;
    }
    double limit = bottom;
    for (int i = tops.length - 1; i >= 0; i--) {
      tops[i] = Math.min(tops[i], limit - height(labels.get(i)));
      limit = tops[i] - GAP;
    }
    return tops;
  }

  private void drawLabel(Graphics2D g, Label label, double plotRight, double left, double top) {
    double middle = top + height(label) / 2;
    double sample = 2.4 * style.textSize();
    Color color = label.look().color();
    Path2D leader = new Path2D.Double();
    leader.moveTo(label.end().getX(), label.end().getY());
    leader.lineTo(Math.max(plotRight, label.end().getX()), label.end().getY());
    leader.lineTo(left, middle);
    g.setStroke(new BasicStroke(0.75f));
    g.setColor(Palette.MIDDLE_GREY);
    g.draw(leader);
    g.setColor(color);
    g.setStroke(label.look().dash().stroke(style.lineWidth()));
    Path2D line = new Path2D.Double();
    line.moveTo(left, middle);
    line.lineTo(left + sample, middle);
    g.draw(line);
    AffineTransform place = AffineTransform.getTranslateInstance(left + sample / 2, middle);
    g.fill(place.createTransformedShape(label.look().marker().shape(1.6 * style.lineWidth())));
    g.setFont(lettering.font());
    g.setColor(Palette.BLACK);
    double base = top + lettering.ascent();
    for (String words : label.lines()) {
      g.drawString(words, (float) (left + sample + GAP), (float) base);
      base += lettering.lineHeight();
    }
  }
}
