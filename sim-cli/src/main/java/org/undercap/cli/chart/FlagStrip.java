package org.undercap.cli.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Flags above a plot, on as many rows as it takes that no pole crosses a label. */
final class FlagStrip {
  private static final double PAD = 3;
  private static final double GAP = 5;
  private static final double NUMBER_GAP = 2;
  private static final int NUMBER_ROWS = 4;

  /**
   * A flag in its place.
   *
   * @param flag the flag
   * @param left left end of the words (points)
   * @param right right end of the words (points)
   * @param row row, 0 is next to the plot
   */
  private record Placed(Flag flag, double left, double right, int row) {
    boolean isHitBy(Flag other) {
      return other.poles().stream().anyMatch(pole -> pole > left - PAD && pole < right + PAD);
    }

    boolean clashesWith(Placed other, double gap) {
      boolean sameRow = row == other.row && left < other.right + gap && other.left < right + gap;
      return sameRow
          || (row <= other.row && isHitBy(other.flag))
          || (row >= other.row && other.isHitBy(flag));
    }
  }

  private final Letters letters;
  private final double left;
  private final double right;
  private final List<Placed> placed = new ArrayList<>();
  private boolean crowded;

  /** An empty strip between two ends of the page. */
  FlagStrip(Letters letters, double left, double right) {
    this.letters = letters;
    this.left = left;
    this.right = right;
  }

  /** Room between the lowest words and the plot, which the topmost number of its axis touches. */
  private double base() {
    return 0.45 * letters.text().ascent();
  }

  /** Whether a pole crosses words because there was no better place. */
  boolean crowded() {
    return crowded;
  }

  int rows() {
    return placed.stream().mapToInt(flag -> flag.row + 1).max().orElse(0);
  }

  /** Height above the plot (points), 0 without flags. */
  double height() {
    double height = 0;
    for (int row = 0; row < rows(); row++) {
      height += rowHeight(row);
    }
    return placed.isEmpty() ? 0 : height + base();
  }

  /**
   * Puts a flag on the lowest row where it has room; flags must come from the right to the left.
   */
  void place(Flag flag) {
    double width = lettering(flag).width(flag.lines());
    double toRight = flag.firstPole() + PAD;
    double toLeft = flag.firstPole() - PAD - width;
    for (int row = 0; row <= placed.size(); row++) {
      for (double start : new double[] {toRight, toLeft}) {
        Placed candidate = new Placed(flag, start, start + width, row);
        boolean onPage = start >= left && start + width <= right;
        if (onPage && isFree(candidate, GAP)) {
          placed.add(candidate);
          return;
        }
      }
    }
    double start = Math.max(left, Math.min(toRight, right - width));
    placed.add(new Placed(flag, start, start + width, rows()));
    crowded = true;
  }

  /** Puts a flag without pole centred above the plot, or leaves it out if it has no room. */
  void placeIfFree(Flag flag) {
    double half = lettering(flag).width(flag.lines()) / 2;
    double middle = Math.max(left + half, Math.min(flag.firstPole(), right - half));
    Flag poleless = new Flag(flag.lines(), List.of(), flag.bold());
    for (int row = 0; row < NUMBER_ROWS; row++) {
      Placed candidate = new Placed(poleless, middle - half, middle + half, row);
      if (isFree(candidate, NUMBER_GAP)) {
        placed.add(candidate);
        return;
      }
    }
  }

  private boolean isFree(Placed candidate, double gap) {
    return placed.stream().noneMatch(other -> candidate.clashesWith(other, gap));
  }

  private Lettering lettering(Flag flag) {
    return flag.bold() ? letters.bold() : letters.text();
  }

  private double rowHeight(int row) {
    double tallest = 0;
    for (Placed flag : placed) {
      if (flag.row == row) {
        tallest =
            Math.max(tallest, flag.flag.lines().size() * lettering(flag.flag).lineHeight() + PAD);
      }
    }
    return tallest;
  }

  /** Draws poles and words above the upper edge of a plot. */
  void draw(Graphics2D g, double plotTop) {
    g.setStroke(new BasicStroke(0.75f));
    g.setColor(Palette.DARK_GREY);
    for (Placed flag : placed) {
      drawPoles(g, flag, plotTop);
    }
    for (Placed flag : placed) {
      drawWords(g, flag, plotTop);
    }
  }

  private double bottomOf(int row, double plotTop) {
    double bottom = plotTop - base();
    for (int lower = 0; lower < row; lower++) {
      bottom -= rowHeight(lower);
    }
    return bottom;
  }

  private void drawPoles(Graphics2D g, Placed flag, double plotTop) {
    double bottom = bottomOf(flag.row, plotTop);
    double height = flag.flag.lines().size() * lettering(flag.flag).lineHeight();
    double top = flag.flag.poles().size() == 1 ? bottom - height : bottom;
    for (double pole : flag.flag.poles()) {
      g.draw(new Line2D.Double(pole, plotTop, pole, top));
    }
    if (flag.flag.poles().size() > 1) {
      g.draw(new Line2D.Double(flag.flag.firstPole(), top, flag.flag.lastPole(), top));
    }
  }

  private void drawWords(Graphics2D g, Placed flag, double plotTop) {
    Lettering lettering = lettering(flag.flag);
    List<String> lines = flag.flag.lines();
    double base =
        bottomOf(flag.row, plotTop)
            - (lines.size() - 1) * lettering.lineHeight()
            - (lettering.lineHeight() - lettering.ascent())
            - 1;
    g.setColor(Palette.WHITE);
    double height = lines.size() * lettering.lineHeight();
    double top = bottomOf(flag.row, plotTop) - height;
    g.fill(new Rectangle2D.Double(flag.left, top, flag.right - flag.left, height));
    g.setFont(lettering.font());
    g.setColor(Palette.BLACK);
    for (String line : lines) {
      g.drawString(line, (float) flag.left, (float) base);
      base += lettering.lineHeight();
    }
  }
}
