package org.undercap.cli.batch;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import org.undercap.batch.BatchResult;
import org.undercap.batch.BatchRow;
import org.undercap.batch.DailyChoice;
import org.undercap.cli.output.RowFormat;
import org.undercap.ensemble.Outcome;
import org.undercap.simulation.DailyColumn;

/**
 * The tables of a batch: one row a run, and one row a run and day. A piece of a table can be joined
 * to the next end to end, compressed or not.
 *
 * @param format form of the rows
 * @param choice columns and days of the daily table
 * @param compressed whether each piece is compressed (gzip)
 */
public record BatchTables(RowFormat format, DailyChoice choice, boolean compressed) {
  /** Columns of the table of runs that stand before the outcomes. */
  static final List<String> RUN_COLUMNS =
      List.of("run", "label", "plan", "climate", "first_day", "last_day", "lost_on", "problem");

  /** Columns of the daily table that stand before those that were asked for. */
  static final List<String> DAY_COLUMNS = List.of("run", "date");

  /**
   * Columns of the table of runs.
   *
   * @return their names
   */
  public static List<String> runColumns() {
    return Stream.concat(RUN_COLUMNS.stream(), Arrays.stream(Outcome.values()).map(Outcome::header))
        .toList();
  }

  private List<String> dayColumns() {
    return Stream.concat(DAY_COLUMNS.stream(), choice.columns().stream().map(DailyColumn::header))
        .toList();
  }

  /**
   * Whether there is a daily table.
   *
   * @return false if only the table of runs is wanted
   */
  public boolean hasDays() {
    return choice.every() > 0;
  }

  /**
   * What stands before the first row of each table.
   *
   * @return a piece of the table of runs, and one of the daily table if there is one
   */
  public List<byte[]> headers() {
    List<byte[]> headers = new ArrayList<>(List.of(bytes(format.header(runColumns()))));
    if (hasDays()) {
      headers.add(bytes(format.header(dayColumns())));
    }
    return headers;
  }

  /**
   * The rows of some runs.
   *
   * @param results what came of the runs
   * @return a piece of the table of runs, and one of the daily table if there is one
   */
  public List<byte[]> rows(List<BatchResult> results) {
    StringBuilder runs = new StringBuilder();
    StringBuilder days = new StringBuilder();
    List<String> runColumns = runColumns();
    List<String> dayColumns = dayColumns();
    for (BatchResult result : results) {
      format.row(runs, runColumns, run(result));
      Object[] cells = new Object[dayColumns.size()];
      cells[0] = result.row().number();
      for (BatchResult.BatchDay day : result.days()) {
        cells[1] = day.date();
        for (int i = 0; i < day.values().length; i++) {
          cells[DAY_COLUMNS.size() + i] = cell(choice.columns().get(i), day.values()[i]);
        }
        format.row(days, dayColumns, cells);
      }
    }
    return hasDays() ? List.of(bytes(runs), bytes(days)) : List.of(bytes(runs));
  }

  private static Object cell(DailyColumn column, double value) {
    return column == DailyColumn.DAY || column == DailyColumn.DOY
        ? (Object) (int) value
        : (Object) value;
  }

  private static Object[] run(BatchResult result) {
    BatchRow row = result.row();
    List<Object> cells = new ArrayList<>();
    cells.add(row.number());
    cells.add(row.label());
    cells.add(row.plan().name());
    cells.add(row.climate().id());
    cells.add(row.start());
    cells.add(row.end());
    cells.add(result.lostOn());
    cells.add(result.problem());
    for (Outcome outcome : Outcome.values()) {
      cells.add(result.outcome(outcome));
    }
    return cells.toArray();
  }

  private byte[] bytes(CharSequence text) {
    byte[] plain = text.toString().getBytes(StandardCharsets.UTF_8);
    if (!compressed || plain.length == 0) {
      return plain;
    }
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (OutputStream gzip = new GZIPOutputStream(packed)) {
      gzip.write(plain);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return packed.toByteArray();
  }
}
