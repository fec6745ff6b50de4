package org.undercap.cli.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.undercap.climate.Hemisphere;

/** Spreads the panels of a comparison over columns, rows and pages of one scale. */
final class PlansLayout {
  private static final List<Meaning> KEY =
      List.of(Meaning.MITES_ON_BEES, Meaning.MITES_IN_CELLS, Meaning.ALL_MITES);
  private static final String LEFT_TITLE = "number of mites";
  private static final int MOST_STEPS = 3;
  private static final double HEADROOM = 1.1;

  /** Lowest and highest plot of a panel (letters). */
  private static final double LOWEST_PLOT = 4.5;

  private static final double HIGHEST_PLOT = 14;

  private final ChartText text;
  private final Hemisphere hemisphere;
  private final ChartStyle style;
  private final Letters letters;
  private final Scale mites;
  private final int columns;
  private final double columnWidth;
  private final DaySpan span;
  private final String flagKey;
  private final KeyRow key;
  private final List<List<List<Panel>>> pages;
  private final double plotHeight;

  PlansLayout(List<PlanCourse> plans, ChartText text, Hemisphere hemisphere, ChartStyle style) {
    this.text = text;
    this.hemisphere = hemisphere;
    this.style = style;
    this.letters = Letters.of(style);
    this.mites = Scale.covering(largest(plans) * HEADROOM, MOST_STEPS);
    this.columns = Math.min(style.columns(), plans.size());
    PageFrame bare = new PageFrame(style, letters, text, "");
    double titleRoom = letters.text().lineHeight();
    double panelsLeft = bare.left() + titleRoom;
    this.columnWidth = Math.floor((bare.right() - panelsLeft) / columns);
    double left = Math.rint(bare.left() + Axes.sideRoom(letters, mites));
    double right = Math.rint(panelsLeft + columnWidth - 2 * style.textSize());
    List<Course> courses = plans.stream().map(PlanCourse::course).toList();
    this.span = DaySpan.of(courses, left, right - left);
    double flagsRight = panelsLeft + columnWidth - (columns > 1 ? style.textSize() : 0);
    FlagTexts words = FlagTexts.of(plans, span, letters, panelsLeft, flagsRight);
    this.flagKey = words.key();
    this.key = new KeyRow(style, letters, KEY, bare.right() - bare.left());
    List<Panel> panels = new ArrayList<>();
    for (PlanCourse plan : plans) {
      panels.add(new Panel(style, letters, plan, words.strip(plan, span), flagsRight - left));
    }
    double room = style.pageHeight() - above(frame(99, 99)) - below(bare);
    this.pages = split(panels, room);
    this.plotHeight = plotHeight(room);
  }

  private static double largest(List<PlanCourse> plans) {
    double largest = 0;
    for (PlanCourse plan : plans) {
      Course course = plan.course();
      largest = Math.max(largest, Curves.largest(course.shown(course.allMites())));
    }
    return largest;
  }

  private PageFrame frame(int number, int count) {
    String note = count == 1 ? "" : "Page " + number + " of " + count + ".";
    String words = flagKey + " " + note;
    return new PageFrame(style, letters, text, words.strip());
  }

  private double above(PageFrame frame) {
    return frame.bodyTop() + key.height();
  }

  private double below(PageFrame frame) {
    return Axes.bottomRoom(letters) + frame.footerHeight();
  }

  private double gap() {
    return 0.6 * style.textSize();
  }

  private static double headHeight(List<Panel> row) {
    return row.stream().mapToDouble(Panel::headHeight).max().orElse(0);
  }

  private double headHeights(List<List<Panel>> rows) {
    return rows.stream().mapToDouble(row -> headHeight(row) + gap()).sum();
  }

  /** As few pages as hold all panels, equally full, in rows. */
  private List<List<List<Panel>>> split(List<Panel> panels, double room) {
    List<List<Panel>> rows = chunks(panels, columns);
    int count = 1;
    while (count < rows.size() && !fit(rows, count, room)) {
      count++;
    }
    return chunks(rows, ceilDiv(rows.size(), count));
  }

  private boolean fit(List<List<Panel>> rows, int count, double room) {
    return chunks(rows, ceilDiv(rows.size(), count)).stream()
        .allMatch(page -> plotHeight(page, room) >= LOWEST_PLOT * style.textSize());
  }

  private double plotHeight(List<List<Panel>> page, double room) {
    return (room - headHeights(page)) / page.size() - 1;
  }

  private static int ceilDiv(int value, int by) {
    return (value + by - 1) / by;
  }

  private static <T> List<List<T>> chunks(List<T> all, int size) {
    List<List<T>> chunks = new ArrayList<>();
    for (int from = 0; from < all.size(); from += size) {
      chunks.add(List.copyOf(all.subList(from, Math.min(from + size, all.size()))));
    }
    return chunks;
  }

  /** The height that fits on the fullest page. */
  private double plotHeight(double room) {
    double height = HIGHEST_PLOT * style.textSize();
    for (List<List<Panel>> page : pages) {
      height = Math.min(height, plotHeight(page, room));
    }
    return Math.floor(Math.max(height, LOWEST_PLOT * style.textSize()));
  }

  List<ChartPage> pages() {
    List<ChartPage> result = new ArrayList<>();
    for (int number = 1; number <= pages.size(); number++) {
      PageFrame frame = frame(number, pages.size());
      List<List<Panel>> rows = pages.get(number - 1);
      double height =
          Math.ceil(
              above(frame) + headHeights(rows) + rows.size() * (plotHeight + 1) + below(frame));
      result.add(new ChartPage(style, text, height, g -> draw(g, frame, rows, height)));
    }
    return result;
  }

  private void draw(Graphics2D g, PageFrame frame, List<List<Panel>> rows, double height) {
    frame.draw(g, height);
    key.draw(g, frame.left(), frame.bodyTop());
    double top = above(frame);
    double bottom = top;
    for (int row = 0; row < rows.size(); row++) {
      double rowTop = bottom + gap();
      double plotTop = Math.rint(rowTop + headHeight(rows.get(row)));
      bottom = plotTop + plotHeight;
      for (int column = 0; column < rows.get(row).size(); column++) {
        double move = column * columnWidth;
        Rectangle2D box =
            new Rectangle2D.Double(span.left() + move, plotTop, span.width(), plotHeight);
        boolean lowest = row == rows.size() - 1 || column >= rows.get(row + 1).size();
        DaySpan days = span.movedTo(span.left() + move);
        rows.get(row).get(column).draw(g, rowTop, box, days, move, mites, lowest);
        if (lowest) {
          Axes.dateTitle(g, letters, days, hemisphere, frame.right(), box.getMaxY());
        }
      }
    }
    Rectangle2D all = new Rectangle2D.Double(0, top, style.width(), bottom - top);
    Axes.leftTitle(g, letters, LEFT_TITLE, frame.left(), all);
  }
}
