package org.undercap.cli.output;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * A table in CSV for programs to read: RFC 4180 with line feeds, a header whose names end with the
 * unit where there is one, as in {@code bees_per_side}, numbers with all their figures, dates as
 * YYYY-MM-DD, nothing in the cell of what is not known.
 *
 * <p>A text that a spreadsheet would take for a formula (one that begins with {@code = + - @}, a
 * tab or a carriage return) gets an apostrophe before it.
 */
public final class CsvOutput {
  private static final String NAME = "[a-z][a-z0-9]*(_[a-z0-9]+)*";
  private static final String QUOTED = ",\"\n\r";
  private static final String FORMULA_STARTS = "=+-@\t\r";

  private final Writer writer;
  private final int columns;

  private CsvOutput(Writer writer, int columns) {
    this.writer = writer;
    this.columns = columns;
  }

  /**
   * Writes the header.
   *
   * @param writer takes the table; it is neither flushed nor closed
   * @param names names of the columns: lower case, words joined by underscores, with the unit
   * @return the table, ready for its rows
   * @throws IllegalArgumentException if there is no name, or one is malformed or repeated
   * @throws UncheckedIOException if writing fails
   */
  public static CsvOutput withHeader(Writer writer, List<String> names) {
    for (String name : names) {
      if (!name.matches(NAME)) {
        throw new IllegalArgumentException("column name '" + name + "' must match " + NAME);
      }
    }
    if (names.isEmpty() || names.stream().distinct().count() < names.size()) {
      throw new IllegalArgumentException("column names " + names + " must differ");
    }
    CsvOutput csv = new CsvOutput(writer, names.size());
    csv.line(names);
    return csv;
  }

  /**
   * Writes a row.
   *
   * @param cells one per column: a text, a finite number, a date, true or false, or an optional of
   *     these
   * @throws IllegalArgumentException if there are not as many cells as columns, or a cell is
   *     something else
   * @throws UncheckedIOException if writing fails
   */
  public void row(Object... cells) {
    if (cells.length != columns) {
      throw new IllegalArgumentException(cells.length + " cells for " + columns + " columns");
    }
    line(Arrays.stream(cells).map(CsvOutput::cell).toList());
  }

  /** Adds one line to a text. */
  static void append(StringBuilder to, Object... cells) {
    for (int i = 0; i < cells.length; i++) {
      to.append(i == 0 ? "" : ",").append(quoted(cell(cells[i])));
    }
    to.append('\n');
  }

  private void line(List<String> fields) {
    try {
      writer.write(
          fields.stream().map(CsvOutput::quoted).collect(Collectors.joining(",", "", "\n")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String cell(Object cell) {
    if (cell instanceof Double number) {
      if (!Double.isFinite(number)) {
        throw new IllegalArgumentException("value " + number + " must be a finite number");
      }
      return number.toString();
    }
    if (cell instanceof OptionalDouble number) {
      return number.isPresent() ? cell(number.getAsDouble()) : "";
    }
    if (cell instanceof Optional<?> optional) {
      return optional.map(CsvOutput::cell).orElse("");
    }
    if (cell instanceof String text) {
      return disarmed(text);
    }
    if (cell instanceof Integer
        || cell instanceof Long
        || cell instanceof Boolean
        || cell instanceof LocalDate) {
      return cell.toString();
    }
    throw new IllegalArgumentException("a cell cannot hold " + cell);
  }

  private static String disarmed(String text) {
    return !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }

  private static String quoted(String field) {
    for (int i = 0; i < field.length(); i++) {
      if (QUOTED.indexOf(field.charAt(i)) >= 0) {
        return '"' + field.replace("\"", "\"\"") + '"';
      }
    }
    return field;
  }
}
