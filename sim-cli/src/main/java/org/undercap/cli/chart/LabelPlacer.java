package org.undercap.cli.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds room for the label of a curve: close to it, far from others, touching nothing. */
final class LabelPlacer {
  /** Distance of the places that are tried (points). */
  private static final double STRIDE = 4;

  /** Gaps between label and curve that are tried, nearest first (points). */
  private static final double[] GAPS = {1.5, 5, 10, 16, 24, 34, 50, 70, 95};

  /** From this gap on a thin line leads from the label to the curve (points). */
  private static final double NEEDS_LEADER = 12;

  /** Distances between a label in an area and all lines, widest first (points). */
  private static final double[] MARGINS = {12, 6, 2};

  /** Distance of the places that are tried inside an area (points). */
  private static final double INSIDE_STRIDE = 6;

  /**
   * Curves closer than this run together: a label there does not say which one it means (points).
   */
  private static final double TOGETHER = 8;

  /** What a label costs at each place where its curve runs together with another (points). */
  private static final double DOUBTFUL = 90;

  /** A curve at this distance no longer makes a label doubtful (points). */
  private static final double CLEAR = 60;

  private final Rectangle2D plot;
  private final List<Trace> traces;
  private final Ground ground;
  private final boolean leaders;
  private final List<Spot> taken = new ArrayList<>();

  /**
   * A plot with its curves.
   *
   * @param plot where labels may stand
   * @param traces all curves
   * @param margin width to keep free on both sides of a curve (points)
   * @param leaders whether a thin line may lead from a label to a curve further away
   */
  LabelPlacer(Rectangle2D plot, List<Trace> traces, double margin, boolean leaders) {
    this.plot = plot;
    this.leaders = leaders;
    this.traces = List.copyOf(traces);
    this.ground = new Ground(plot);
    this.traces.forEach(trace -> ground.cover(trace, margin));
  }

  /**
   * A label in its place.
   *
   * @param box where the words stand
   * @param leaderTo point on the curve to which a thin line must lead, if the gap is wide
   */
  record Spot(Rectangle2D box, Optional<Point2D> leaderTo) {
    /** The thin line, upright from the middle of the box. */
    Optional<Line2D> leader() {
      return leaderTo.map(
          to -> {
            double near = to.getY() < box.getCenterY() ? box.getMinY() : box.getMaxY();
            return new Line2D.Double(box.getCenterX(), near, to.getX(), to.getY());
          });
    }
  }

  /** Keeps labels away from something else than a curve. */
  void avoid(Rectangle2D box) {
    ground.cover(box);
  }

  /**
   * Takes a place for a label of this size below the upper edge of an area and above the areas that
   * cover it, as far from lines as possible.
   */
  Optional<Spot> placeInside(Trace upper, List<Trace> covering, double width, double height) {
    for (double margin : MARGINS) {
      Rectangle2D best = null;
      double bestDepth = Double.POSITIVE_INFINITY;
      for (double left = plot.getX(); left <= plot.getMaxX() - width; left += INSIDE_STRIDE) {
        double top = lowest(upper, left, width) + margin;
        double bottom = highest(covering, left, width) - margin - height;
        for (double y = top; y <= bottom; y += INSIDE_STRIDE) {
          Rectangle2D box = new Rectangle2D.Double(left, y, width, height);
          if (y - top < bestDepth && ground.isFree(grown(box, margin))) {
            best = box;
            bestDepth = y - top;
          }
        }
      }
      if (best != null) {
        Spot spot = new Spot(best, Optional.empty());
        take(spot);
        return Optional.of(spot);
      }
    }
    return Optional.empty();
  }

  private static Rectangle2D grown(Rectangle2D box, double margin) {
    return new Rectangle2D.Double(
        box.getX() - margin,
        box.getY() - margin,
        box.getWidth() + 2 * margin,
        box.getHeight() + 2 * margin);
  }

  /** Lowest point of a curve above a label; far below the plot where the curve has no days. */
  private static double lowest(Trace trace, double left, double width) {
    double lowest = Double.NEGATIVE_INFINITY;
    for (double x = left; x <= left + width; x += STRIDE) {
      double y = onCurve(trace, x);
      lowest = Math.max(lowest, Double.isNaN(y) ? Double.POSITIVE_INFINITY : y);
    }
    return lowest;
  }

  /** Highest point of curves below a label, at most the lower edge of the plot. */
  private double highest(List<Trace> others, double left, double width) {
    double highest = plot.getMaxY();
    for (Trace trace : others) {
      for (double x = left; x <= left + width; x += STRIDE) {
        double y = onCurve(trace, x);
        highest = Double.isNaN(y) ? highest : Math.min(highest, y);
      }
    }
    return highest;
  }

  /** Takes the best place for a label of this size, above the curve or below it. */
  Optional<Spot> place(Trace trace, double width, double height, boolean preferBelow) {
    Spot best = null;
    double bestCost = Double.POSITIVE_INFINITY;
    double end = plot.getMaxX() - width;
    for (double left = plot.getX() + STRIDE; left <= end; left += STRIDE) {
      for (boolean below : new boolean[] {preferBelow, !preferBelow}) {
        Optional<Spot> spot = nearest(trace, left, width, height, below);
        double cost =
            spot.map(found -> cost(trace, found)).orElse(Double.POSITIVE_INFINITY)
                + (below == preferBelow ? 0 : STRIDE);
        if (cost < bestCost) {
          bestCost = cost;
          best = spot.orElseThrow();
        }
      }
    }
    if (best != null) {
      take(best);
    }
    return Optional.ofNullable(best);
  }

  private void take(Spot spot) {
    taken.add(spot);
    ground.cover(spot.box());
    spot.leader().ifPresent(leader -> ground.cover(leader.getBounds2D()));
  }

  private Optional<Spot> nearest(
      Trace trace, double left, double width, double height, boolean below) {
    double edge = below ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
    for (double x = left; x <= left + width; x += STRIDE / 2) {
      double y = onCurve(trace, x);
      if (!Double.isNaN(y)) {
        edge = below ? Math.max(edge, y) : Math.min(edge, y);
      }
    }
    if (Double.isInfinite(edge)) {
      return Optional.empty();
    }
    for (double gap : GAPS) {
      if (gap >= NEEDS_LEADER && !leaders) {
        break;
      }
      double top = below ? edge + gap : edge - gap - height;
      Rectangle2D box = new Rectangle2D.Double(left, top, width, height);
      if (ground.isFree(box)) {
        double middle = left + width / 2;
        Point2D target = new Point2D.Double(middle, trace.yNear(middle));
        Spot spot = new Spot(box, gap >= NEEDS_LEADER ? Optional.of(target) : Optional.empty());
        return crossesWords(spot) ? Optional.empty() : Optional.of(spot);
      }
    }
    return Optional.empty();
  }

  private boolean crossesWords(Spot spot) {
    return spot.leader()
        .filter(line -> taken.stream().anyMatch(other -> line.intersects(other.box())))
        .isPresent();
  }

  /** The curve at a place, not a number before its begin and after its end. */
  private static double onCurve(Trace trace, double x) {
    boolean outside = x < trace.x()[0] - 1 || x > trace.x()[trace.length() - 1] + 1;
    return outside ? Double.NaN : trace.yNear(x);
  }

  /** Grows with the distance to the own curve and with the nearness of others. */
  private double cost(Trace own, Spot spot) {
    Rectangle2D box = spot.box();
    if (isCutOff(own, box)) {
      return Double.POSITIVE_INFINITY;
    }
    double cost = 0;
    for (double part : new double[] {0, 0.5, 1}) {
      double x = box.getX() + part * box.getWidth();
      double toOwn = distance(box, own.yNear(x));
      cost += toOwn;
      for (Trace other : traces) {
        double y = onCurve(other, x);
        if (!other.equals(own) && !Double.isNaN(y)) {
          double toOther = distance(box, y);
          cost += Math.max(0, CLEAR - toOther) / 4 + Math.max(0, toOwn - toOther) * 3;
          cost += Math.abs(own.yNear(x) - y) < TOGETHER ? DOUBTFUL : 0;
        }
      }
    }
    return cost;
  }

  /** Whether another curve runs between a label and its own curve. */
  private boolean isCutOff(Trace own, Rectangle2D box) {
    double x = box.getCenterX();
    double y = own.yNear(x);
    for (Trace other : traces) {
      double between = onCurve(other, x);
      if ((between - box.getCenterY()) * (y - between) > 0) {
        return true;
      }
    }
    return false;
  }

  private static double distance(Rectangle2D box, double y) {
    return Math.max(0, Math.max(box.getMinY() - y, y - box.getMaxY()));
  }
}
