package org.undercap.cli.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.undercap.climate.Hemisphere;

/**
 * One plan: mites on bees and mites in sealed brood as lines on the left axis, bees and brood as
 * light areas behind them on the right axis, treatments as bands.
 */
public final class MiteCurveChart implements Chart {
  private static final String LEFT_TITLE = "number of mites";
  private static final String RIGHT_TITLE = "bees and brood cells";
  private static final List<Meaning> KEY =
      List.of(Meaning.MITES_ON_BEES, Meaning.MITES_IN_CELLS, Meaning.BEES, Meaning.BROOD);

  /** Lowest plot that holds the words of its axes (letters). */
  private static final double LOWEST_PLOT = 13;

  private static final int MOST_STEPS = 6;
  private static final double HEADROOM = 1.06;

  private final PlanCourse plan;
  private final ChartText text;
  private final Hemisphere hemisphere;
  private final ChartStyle style;
  private final AxisTops tops;

  private MiteCurveChart(
      PlanCourse plan, ChartText text, Hemisphere hemisphere, ChartStyle style, AxisTops tops) {
    this.plan = plan;
    this.text = text;
    this.hemisphere = hemisphere;
    this.style = style;
    this.tops = tops;
  }

  /**
   * A chart whose axes fit the course.
   *
   * @param plan course and marks
   * @param text words
   * @param hemisphere half of the earth, named below the dates
   * @param style sizes
   * @return the chart
   */
  public static MiteCurveChart of(
      PlanCourse plan, ChartText text, Hemisphere hemisphere, ChartStyle style) {
    AxisTops tops = AxisTops.covering(List.of(plan.course()));
    return new MiteCurveChart(plan, text, hemisphere, style, tops);
  }

  /**
   * The same chart on other axes, to be compared with its neighbours.
   *
   * @param shared tops that cover all the charts to be compared
   * @return a new chart
   */
  public MiteCurveChart withAxes(AxisTops shared) {
    return new MiteCurveChart(plan, text, hemisphere, style, shared);
  }

  @Override
  public ChartText text() {
    return text;
  }

  @Override
  public List<ChartPage> pages() {
    Layout layout = new Layout(List.of());
    if (!layout.plot.allLabelled()) {
      layout = new Layout(KEY);
    }
    return List.of(new ChartPage(style, text, layout.height, layout::draw));
  }

  private ColonyPlot.Content content() {
    Course course = plan.course();
    Map<Meaning, double[]> lines = new EnumMap<>(Meaning.class);
    lines.put(Meaning.MITES_ON_BEES, course.shown(course.mitesOnBees()));
    lines.put(Meaning.MITES_IN_CELLS, course.shown(course.mitesInCells()));
    Map<Meaning, double[]> areas = new EnumMap<>(Meaning.class);
    areas.put(Meaning.BEES, course.shown(course.adults()));
    areas.put(Meaning.BROOD, course.shown(course.brood()));
    Scale mites = Scale.covering(tops.mites() * HEADROOM, MOST_STEPS);
    Scale bees = Scale.covering(tops.bees() * HEADROOM, MOST_STEPS);
    return new ColonyPlot.Content(plan, lines, areas, mites, Optional.of(bees), false);
  }

  /** Everything in its place. */
  private final class Layout {
    private final Letters letters = Letters.of(style);
    private final PageFrame frame;
    private final KeyRow key;
    private final FlagStrip flags;
    private final DaySpan span;
    private final Rectangle2D box;
    private final ColonyPlot plot;
    private final double height;

    Layout(List<Meaning> keyed) {
      ColonyPlot.Content content = content();
      PageFrame bare = new PageFrame(style, letters, text, "");
      double left = Math.rint(bare.left() + Axes.sideRoom(letters, content.mites()));
      double right = Math.rint(bare.right() - Axes.sideRoom(letters, content.bees().orElseThrow()));
      span = DaySpan.of(List.of(plan.course()), left, right - left);
      FlagTexts words = FlagTexts.of(List.of(plan), span, letters, bare.left(), bare.right());
      flags = words.strip(plan, span);
      frame = new PageFrame(style, letters, text, words.key());
      key = new KeyRow(style, letters, keyed, frame.right() - frame.left());
      double top = Math.rint(frame.bodyTop() + key.height() + flags.height());
      double below = Axes.bottomRoom(letters) + frame.footerHeight();
      height = Math.max(style.chartHeight(), top + LOWEST_PLOT * style.textSize() + below);
      box = new Rectangle2D.Double(left, top, right - left, Math.rint(height - below - top));
      plot = new ColonyPlot(style, letters, box, span, content);
    }

    void draw(Graphics2D g) {
      frame.draw(g, Math.ceil(height));
      key.draw(g, frame.left(), frame.bodyTop());
      flags.draw(g, box.getY());
      plot.draw(g, true);
      Axes.leftTitle(g, letters, LEFT_TITLE, frame.left(), box);
      Axes.rightTitle(g, letters, RIGHT_TITLE, frame.right(), box);
      Axes.dateTitle(g, letters, span, hemisphere, frame.right(), box.getMaxY());
    }
  }
}
