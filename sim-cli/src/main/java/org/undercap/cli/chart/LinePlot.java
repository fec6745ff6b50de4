package org.undercap.cli.chart;

import java.util.List;

/**
 * Lines, areas, ranges and bands over numbers or dates.
 *
 * @param title words above the plot, may be empty
 * @param unit what the values are, with the unit
 * @param across words below the axis across
 * @param ticks what is written below the axis across, at least two, ascending
 * @param from left end of the axis
 * @param to right end of the axis
 * @param bands ranges of daily values, drawn first
 * @param areas lines whose ground is filled, the larger ones first
 * @param lines lines
 * @param ranges single values with their range
 * @param spans what is marked across, with its words above the plot
 * @param levels what is marked up, with its words on the line
 */
public record LinePlot(
    String title,
    String unit,
    String across,
    List<Tick> ticks,
    double from,
    double to,
    List<Band> bands,
    List<Line> areas,
    List<Line> lines,
    List<Range> ranges,
    List<SpanMark> spans,
    List<LevelMark> levels)
    implements Plot {
  /**
   * Copies the lists.
   *
   * @param title words above the plot
   * @param unit what the values are
   * @param across words below the axis across
   * @param ticks what is written below the axis
   * @param from left end of the axis
   * @param to right end of the axis, above {@code from}
   * @param bands ranges of daily values
   * @param areas filled lines
   * @param lines lines
   * @param ranges single values
   * @param spans marks across
   * @param levels marks up
   * @throws IllegalArgumentException if the ends are reversed
   */
  public LinePlot {
    ticks = List.copyOf(ticks);
    bands = List.copyOf(bands);
    areas = List.copyOf(areas);
    lines = List.copyOf(lines);
    ranges = List.copyOf(ranges);
    spans = List.copyOf(spans);
    levels = List.copyOf(levels);
    if (!(from < to)) {
      throw new IllegalArgumentException("axis from " + from + " to " + to + " has no length");
    }
  }

  /**
   * Something written below the axis.
   *
   * @param at where
   * @param words what
   */
  public record Tick(double at, String words) {}

  /**
   * A line or the edge of an area.
   *
   * @param words what it shows
   * @param look colour, dash and marker; of an area the filling and the dash of its edge
   * @param x across, ascending
   * @param y up, as many values
   */
  public record Line(String words, Look look, List<Double> x, List<Double> y) {
    /**
     * Copies the lists.
     *
     * @param words what it shows
     * @param look how it is drawn
     * @param x across
     * @param y up
     * @throws IllegalArgumentException if the lengths differ or there is no point
     */
    public Line {
      x = List.copyOf(x);
      y = List.copyOf(y);
      if (x.isEmpty() || x.size() != y.size()) {
        throw new IllegalArgumentException("line '" + words + "' needs as many x as y");
      }
    }
  }

  /**
   * A range that changes along the axis.
   *
   * @param words what it shows
   * @param x across, ascending
   * @param low lower ends
   * @param high upper ends
   */
  public record Band(String words, List<Double> x, List<Double> low, List<Double> high) {
    /**
     * Copies the lists.
     *
     * @param words what it shows
     * @param x across
     * @param low lower ends
     * @param high upper ends
     */
    public Band {
      x = List.copyOf(x);
      low = List.copyOf(low);
      high = List.copyOf(high);
    }
  }

  /**
   * A value with its range, drawn as an upright line with a dot, or a cross if it stands out.
   *
   * @param x where
   * @param low lower end
   * @param middle value
   * @param high upper end
   * @param standsOut whether it is marked by a cross
   */
  public record Range(double x, double low, double middle, double high, boolean standsOut) {}

  /**
   * A marked part of the axis across.
   *
   * @param words what it is
   * @param from where it begins
   * @param to where it ends
   */
  public record SpanMark(String words, double from, double to) {}

  /**
   * A marked level.
   *
   * @param words what it is
   * @param value where it lies
   */
  public record LevelMark(String words, double value) {}
}
