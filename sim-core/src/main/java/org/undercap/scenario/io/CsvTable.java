package org.undercap.scenario.io;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.undercap.scenario.BadValueException;
import org.undercap.scenario.InputLimits;
import org.undercap.scenario.Lookup;
import org.undercap.scenario.Place;
import org.undercap.scenario.Problems;
import org.undercap.scenario.Quantities;
import org.undercap.scenario.Written;

/**
 * Reads a table separated by commas whose first line names its columns, in any order. A value that
 * cannot be used becomes a problem and counts as not given, so that all problems are found.
 */
final class CsvTable {
  private static final int LARGEST = 1_000_000;

  private final String name;
  private final List<String> columns;
  private final List<String> needed;
  private final Problems problems;

  /**
   * Prepares to read.
   *
   * @param name name of the file for messages
   * @param columns columns that the table may have
   * @param needed columns that must be there
   * @param problems takes what is wrong
   */
  CsvTable(String name, List<String> columns, List<String> needed, Problems problems) {
    this.name = name;
    this.columns = columns;
    this.needed = needed;
    this.problems = problems;
  }

  /** The rows as far as they could be read; at most so many. */
  List<Row> read(Path file, int most, String what) {
    Optional<String> text = new FileText(name, LARGEST, problems).read(file);
    return text.map(found -> rows(found.lines().toList(), most, what)).orElse(List.of());
  }

  private List<Row> rows(List<String> lines, int most, String what) {
    List<Row> rows = new ArrayList<>();
    Optional<List<String>> header = header(lines.isEmpty() ? "" : lines.get(0));
    if (header.isEmpty()) {
      return rows;
    }
    for (int i = 1; i < lines.size() && !problems.isFull(); i++) {
      if (!lines.get(i).isBlank()) {
        row(header.get(), i + 1, lines.get(i)).ifPresent(rows::add);
      }
    }
    if (rows.isEmpty() && problems.isEmpty()) {
      String hint = "write one line a " + what + " below the first";
      fail(1, 1, "", "there is no " + what + " in the file", hint);
    }
    if (rows.size() > most) {
      String many = what.equals("colony") ? "colonies" : what + "s";
      fail(1, 1, "", "there are more than " + most + " " + many, "split the file");
    }
    return rows;
  }

  private Optional<List<String>> header(String line) {
    List<CsvField> fields = CsvField.of(line).orElse(List.of());
    List<String> found =
        fields.stream().map(field -> field.text().toLowerCase(Locale.ROOT)).toList();
    for (String column : needed) {
      if (!found.contains(column)) {
        String separators = line.matches(".*[;\t].*") ? "columns are separated by commas; " : "";
        fail(
            1,
            1,
            "",
            "the first line does not name the column " + column,
            separators + "write: " + String.join(",", columns));
        return Optional.empty();
      }
    }
    Set<String> seen = new HashSet<>();
    for (CsvField field : fields) {
      String column = field.text().toLowerCase(Locale.ROOT);
      if (!columns.contains(column)) {
        String near = Lookup.suggestion(column, columns);
        fail(
            1,
            field.column(),
            "",
            "unknown column " + Quantities.quote(field.text()) + near,
            "accepted: " + String.join(", ", columns));
      } else if (!seen.add(column)) {
        fail(1, field.column(), column, "this column is there twice", "keep one of them");
      }
    }
    return Optional.of(found);
  }

  private Optional<Row> row(List<String> header, int line, String text) {
    Optional<List<CsvField>> fields = CsvField.of(text);
    if (fields.isEmpty()) {
      fail(line, 1, "", "a quoted field is not closed", "write \" at both ends of the text");
      return Optional.empty();
    }
    if (fields.get().size() != header.size()) {
      fail(
          line,
          1,
          "",
          "has " + fields.get().size() + " fields, the first line has " + header.size(),
          "put \" around texts that hold a comma; write 2.5, not 2,5");
      return Optional.empty();
    }
    Map<String, CsvField> byColumn = new TreeMap<>();
    for (int i = 0; i < header.size(); i++) {
      byColumn.put(header.get(i), fields.get().get(i));
    }
    return Optional.of(new Row(line, byColumn));
  }

  private void fail(int line, int column, String field, String message, String hint) {
    problems.add(new Place(name, line, column), field, message, hint);
  }

  /** One row. */
  final class Row {
    private final int line;
    private final Map<String, CsvField> fields;

    private Row(int line, Map<String, CsvField> fields) {
      this.line = line;
      this.fields = fields;
    }

    /** The text of a column, empty if it is not given. */
    String text(String column) {
      return fields.containsKey(column) ? fields.get(column).text() : "";
    }

    boolean has(String column) {
      return !text(column).isEmpty();
    }

    Place place(String column) {
      int at = fields.containsKey(column) ? fields.get(column).column() : 1;
      return new Place(name, line, at);
    }

    void fail(String column, String message, String hint) {
      problems.add(place(column), column, message, hint);
    }

    <T> Optional<Written<T>> value(String column, ValueParser<T> parser) {
      if (!has(column)) {
        return Optional.empty();
      }
      try {
        return Optional.of(new Written<>(parser.parse(text(column)), text(column), place(column)));
      } catch (BadValueException e) {
        problems.add(place(column), column, e);
        return Optional.empty();
      }
    }

    /** A number within the limits of a field of scenario files. */
    Optional<Written<Double>> limited(String column, String limit) {
      return value(column, text -> InputLimits.shipped().get(limit).check(Quantities.number(text)));
    }

    /** Whether both are given; a problem if only one is. */
    boolean together(String one, String other) {
      if (has(one) != has(other)) {
        String missing = has(one) ? other : one;
        String given = has(one) ? one : other;
        fail(given, "needs " + missing + " beside it", "");
      }
      return has(one) && has(other);
    }
  }
}
