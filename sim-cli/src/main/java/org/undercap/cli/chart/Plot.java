package org.undercap.cli.chart;

/** One plot of a {@link TeachingChart}, with all its words. */
public sealed interface Plot permits LinePlot, BarPlot, MapPlot {
  /**
   * What the plot shows.
   *
   * @return words above it; empty if the title of the chart says enough
   */
  String title();

  /**
   * What the values are; plots with the same words share their axis.
   *
   * @return words with the unit
   */
  String unit();
}
