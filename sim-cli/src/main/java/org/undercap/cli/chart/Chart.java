package org.undercap.cli.chart;

import java.util.List;

/** A chart, which may run over several pages. */
public interface Chart {

  /**
   * Its words.
   *
   * @return title, finding, limit and text alternative
   */
  ChartText text();

  /**
   * Lays the chart out.
   *
   * @return its pages, at least one
   * @throws ChartsUnavailableException if Java cannot draw on this machine
   */
  List<ChartPage> pages();
}
