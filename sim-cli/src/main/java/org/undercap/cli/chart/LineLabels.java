package org.undercap.cli.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Words written on the curves of one plot. */
final class LineLabels {
  private static final double PAD = 2;

  private record Placed(String words, Lettering lettering, Color color, LabelPlacer.Spot spot) {}

  private final LabelPlacer placer;
  private final List<Placed> placed = new ArrayList<>();

  LineLabels(LabelPlacer placer) {
    this.placer = placer;
  }

  /** Finds room beside a curve; returns whether there was any. */
  boolean addToCurve(Trace trace, String words, Lettering lettering, Color color) {
    return add(
        placer.place(trace, width(words, lettering), lettering.lineHeight(), false),
        words,
        lettering,
        color);
  }

  /** Finds room in an area or, if need be, beside its edge; returns whether there was any. */
  boolean addToArea(Trace edge, List<Trace> covering, String words, Lettering lettering) {
    double width = width(words, lettering);
    double height = lettering.lineHeight();
    Optional<LabelPlacer.Spot> spot =
        placer
            .placeInside(edge, covering, width, height)
            .or(() -> placer.place(edge, width, height, true));
    return add(spot, words, lettering, Palette.DARK_GREY);
  }

  private static double width(String words, Lettering lettering) {
    return lettering.width(words) + 2 * PAD;
  }

  private boolean add(
      Optional<LabelPlacer.Spot> spot, String words, Lettering lettering, Color color) {
    spot.ifPresent(found -> placed.add(new Placed(words, lettering, color, found)));
    return spot.isPresent();
  }

  void draw(Graphics2D g) {
    for (Placed label : placed) {
      Rectangle2D box = label.spot().box();
      label.spot().leader().ifPresent(leader -> drawLeader(g, leader));
      g.setFont(label.lettering().font());
      g.setColor(label.color());
      double base = box.getY() + label.lettering().ascent();
      g.drawString(label.words(), (float) (box.getX() + PAD), (float) base);
    }
  }

  private static void drawLeader(Graphics2D g, Line2D leader) {
    g.setColor(Palette.MIDDLE_GREY);
    g.setStroke(new BasicStroke(0.75f));
    g.draw(leader);
  }
}
