package org.undercap.cli.chart;

import java.util.List;
import org.undercap.climate.Hemisphere;

/**
 * The cost of waiting: start date across, parasitised winter brood in the left panel and mites left
 * in the right one. Late starts may leave few mites and yet ruined bees.
 */
public final class WaitingChart implements Chart {
  private final List<WaitingLine> lines;
  private final WaitingLine.Spread harmUntreated;
  private final WaitingLine.Spread mitesUntreated;
  private final String mitesTitle;
  private final ChartText text;
  private final Hemisphere hemisphere;
  private final ChartStyle style;

  /**
   * A chart of start dates.
   *
   * @param lines treatments, at least one; their order decides their looks, see {@link Look#ofPlan}
   * @param harmUntreated parasitised winter brood without treatment (percent)
   * @param mitesUntreated mites left without treatment (mites)
   * @param mitesTitle words of the axis of mites left
   * @param text words
   * @param hemisphere half of the earth, named below the dates
   * @param style sizes
   * @throws IllegalArgumentException if there is no line
   */
  public WaitingChart(
      List<WaitingLine> lines,
      WaitingLine.Spread harmUntreated,
      WaitingLine.Spread mitesUntreated,
      String mitesTitle,
      ChartText text,
      Hemisphere hemisphere,
      ChartStyle style) {
    if (lines.isEmpty()) {
      throw new IllegalArgumentException("a chart of start dates needs at least one treatment");
    }
    this.lines = List.copyOf(lines);
    this.harmUntreated = harmUntreated;
    this.mitesUntreated = mitesUntreated;
    this.mitesTitle = mitesTitle;
    this.text = text;
    this.hemisphere = hemisphere;
    this.style = style;
  }

  @Override
  public ChartText text() {
    return text;
  }

  @Override
  public List<ChartPage> pages() {
    return List.of(
        new WaitingLayout(lines, harmUntreated, mitesUntreated, mitesTitle, text, hemisphere, style)
            .page());
  }
}
