package org.undercap.cli.chart;

import java.util.List;
import java.util.Optional;
import org.undercap.climate.Hemisphere;

/**
 * Mites on bees per 100 adult bees of several plans in one plot, with the names of the plans at the
 * ends of their lines and, if wanted, a limit at which to act.
 */
public final class InfestationChart implements Chart {
  private final List<Course> courses;
  private final Optional<PlanCourse> treated;
  private final Optional<ThresholdLine> threshold;
  private final ChartText text;
  private final Hemisphere hemisphere;
  private final ChartStyle style;

  private InfestationChart(
      List<Course> courses,
      Optional<PlanCourse> treated,
      Optional<ThresholdLine> threshold,
      ChartText text,
      Hemisphere hemisphere,
      ChartStyle style) {
    this.courses = courses;
    this.treated = treated;
    this.threshold = threshold;
    this.text = text;
    this.hemisphere = hemisphere;
    this.style = style;
  }

  /**
   * A chart whose axes fit all plans.
   *
   * @param courses at least one course; their order decides their looks, see {@link Look#ofPlan}
   * @param treated the plan whose treatments are shown as bands; empty for none
   * @param threshold limit at which to act, with its source
   * @param text words
   * @param hemisphere half of the earth, named below the dates
   * @param style sizes
   * @return the chart
   * @throws IllegalArgumentException if there is no course
   */
  public static InfestationChart of(
      List<Course> courses,
      Optional<PlanCourse> treated,
      Optional<ThresholdLine> threshold,
      ChartText text,
      Hemisphere hemisphere,
      ChartStyle style) {
    if (courses.isEmpty()) {
      throw new IllegalArgumentException("a comparison needs at least one course");
    }
    return new InfestationChart(List.copyOf(courses), treated, threshold, text, hemisphere, style);
  }

  @Override
  public ChartText text() {
    return text;
  }

  @Override
  public List<ChartPage> pages() {
    InfestationLayout layout =
        new InfestationLayout(courses, treated, threshold, text, hemisphere, style);
    return List.of(layout.page());
  }
}
