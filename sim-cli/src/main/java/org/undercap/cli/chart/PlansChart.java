package org.undercap.cli.chart;

import java.util.List;
import org.undercap.climate.Hemisphere;

/**
 * Plans below each other, one panel a plan, all on the same axes: mites on bees, in sealed brood
 * and all of them. Plans that do not fit on one page go to further pages of the same scale.
 */
public final class PlansChart implements Chart {
  private final List<PlanCourse> plans;
  private final ChartText text;
  private final Hemisphere hemisphere;
  private final ChartStyle style;

  private PlansChart(
      List<PlanCourse> plans, ChartText text, Hemisphere hemisphere, ChartStyle style) {
    this.plans = plans;
    this.text = text;
    this.hemisphere = hemisphere;
    this.style = style;
  }

  /**
   * A chart whose axes fit all plans.
   *
   * @param plans at least one plan, in the order of the panels
   * @param text words
   * @param hemisphere half of the earth, named below the dates
   * @param style sizes
   * @return the chart
   * @throws IllegalArgumentException if there is no plan
   */
  public static PlansChart of(
      List<PlanCourse> plans, ChartText text, Hemisphere hemisphere, ChartStyle style) {
    if (plans.isEmpty()) {
      throw new IllegalArgumentException("a comparison needs at least one plan");
    }
    return new PlansChart(List.copyOf(plans), text, hemisphere, style);
  }

  @Override
  public ChartText text() {
    return text;
  }

  @Override
  public List<ChartPage> pages() {
    return new PlansLayout(plans, text, hemisphere, style).pages();
  }
}
