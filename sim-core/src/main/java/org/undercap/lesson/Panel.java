package org.undercap.lesson;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * One plot of a lesson: lines over dates or numbers, bars in rows, or a map.
 *
 * @param key name of the panel, a key of the texts; empty if it needs no title
 * @param axis what runs across
 * @param across words of the axis across, a key of the texts; empty for dates
 * @param unit what the values are, a key of the texts and the unit in tables
 * @param columns heads of the columns of a map: keys, numbers or dates (YYYY-MM-DD)
 * @param rows heads of the rows of bars or of a map: keys, numbers or dates
 * @param areas lines whose ground is filled
 * @param lines lines
 * @param bars bars
 * @param spans what is marked across
 * @param levels what is marked up
 * @param cells cells of a map
 */
public record Panel(
    String key,
    Axis axis,
    String across,
    String unit,
    List<String> columns,
    List<String> rows,
    List<Series> areas,
    List<Series> lines,
    List<Bar> bars,
    List<Span> spans,
    List<Level> levels,
    List<Cell> cells) {
  /** What runs across where each point is a colony of its own, by the start of its treatment. */
  public static final String STARTS = "colony-of-each-start";

  /**
   * Copies the lists.
   *
   * @param key name of the panel
   * @param axis what runs across
   * @param across words of the axis across
   * @param unit what the values are
   * @param columns heads of the columns
   * @param rows heads of the rows
   * @param areas lines whose ground is filled
   * @param lines lines
   * @param bars bars
   * @param spans what is marked across
   * @param levels what is marked up
   * @param cells cells of a map
   */
  public Panel {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
    areas = List.copyOf(areas);
    lines = List.copyOf(lines);
    bars = List.copyOf(bars);
    spans = List.copyOf(spans);
    levels = List.copyOf(levels);
    cells = List.copyOf(cells);
  }

  static Builder dates(String unit) {
    return new Builder(Axis.DATES, "", unit);
  }

  /** Dates on which a treatment begins. */
  static Builder starts(String unit) {
    return new Builder(Axis.DATES, STARTS, unit);
  }

  static Builder numbers(String across, String unit) {
    return new Builder(Axis.NUMBERS, across, unit);
  }

  static Builder bars(String unit, List<String> rows) {
    Builder builder = new Builder(Axis.BARS, "", unit);
    builder.rows = rows;
    return builder;
  }

  static Builder map(String across, String unit, List<String> columns, List<String> rows) {
    Builder builder = new Builder(Axis.COLUMNS, across, unit);
    builder.rows = rows;
    builder.columns = columns;
    return builder;
  }

  /** Puts a panel together. */
  static final class Builder {
    private final Axis axis;
    private final String across;
    private final String unit;
    private String key = "";
    private List<String> columns = List.of();
    private List<String> rows = List.of();
    private final List<Series> areas = new ArrayList<>();
    private final List<Series> lines = new ArrayList<>();
    private final List<Bar> bars = new ArrayList<>();
    private final List<Span> spans = new ArrayList<>();
    private final List<Level> levels = new ArrayList<>();
    private final List<Cell> cells = new ArrayList<>();

    private Builder(Axis axis, String across, String unit) {
      this.axis = axis;
      this.across = across;
      this.unit = unit;
    }

    Builder named(String name) {
      key = name;
      return this;
    }

    Builder area(Series series) {
      areas.add(series);
      return this;
    }

    Builder line(Series series) {
      lines.add(series);
      return this;
    }

    Builder bar(Bar bar) {
      bars.add(bar);
      return this;
    }

    Builder span(String name, LocalDate from, LocalDate to) {
      return span(name, (double) from.toEpochDay(), (double) to.toEpochDay());
    }

    Builder span(String name, double from, double to) {
      spans.add(new Span(name, from, to));
      return this;
    }

    Builder level(String name, double value) {
      levels.add(new Level(name, value));
      return this;
    }

    Builder cell(Cell cell) {
      cells.add(cell);
      return this;
    }

    Panel build() {
      return new Panel(
          key, axis, across, unit, columns, rows, areas, lines, bars, spans, levels, cells);
    }
  }
}
