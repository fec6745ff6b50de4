package org.undercap.cli.chart;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A chart of one idea: one plot, or several on the same axes. All its words are given, so that it
 * can speak any language.
 */
public final class TeachingChart implements Chart {
  private final List<Plot> plots;
  private final ChartText text;
  private final ChartStyle style;

  /**
   * A chart.
   *
   * @param plots at least one
   * @param text words around the plots
   * @param style sizes
   * @throws IllegalArgumentException if there is no plot
   */
  public TeachingChart(List<Plot> plots, ChartText text, ChartStyle style) {
    if (plots.isEmpty()) {
      throw new IllegalArgumentException("a chart needs at least one plot");
    }
    this.plots = List.copyOf(plots);
    this.text = text;
    this.style = style;
  }

  @Override
  public ChartText text() {
    return text;
  }

  /**
   * The plots.
   *
   * @return as given
   */
  public List<Plot> plots() {
    return plots;
  }

  @Override
  public List<ChartPage> pages() {
    Set<String> keyed = new HashSet<>();
    TeachingLayout layout = new TeachingLayout(plots, text, style, keyed);
    // A key or names behind the ends take room, so that more lines may need them then.
    while (keyed.addAll(layout.unlabelled())) {
      layout = new TeachingLayout(plots, text, style, Set.copyOf(keyed));
    }
    return List.of(new ChartPage(style, text, layout.height(), layout::draw));
  }
}
