package org.undercap.cli.output;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A form of table that is written row by row and whose parts may be joined end to end. Columns have
 * the same names in both.
 */
public enum RowFormat {
  /** Comma-separated values as {@link CsvOutput} writes them. */
  CSV {
    @Override
    public String header(List<String> names) {
      return String.join(",", names) + "\n";
    }

    @Override
    public void row(StringBuilder to, List<String> names, Object... cells) {
      CsvOutput.append(to, cells);
    }
  },
  /** JSON Lines: one object a row, without header; what is not known is left out. */
  JSONL {
    @Override
    public String header(List<String> names) {
      return "";
    }

    @Override
    public void row(StringBuilder to, List<String> names, Object... cells) {
      String before = "{\"";
      for (int i = 0; i < cells.length; i++) {
        Object cell = present(cells[i]);
        if (cell != null) {
          to.append(before).append(names.get(i)).append("\":");
          value(to, cell);
          before = ",\"";
        }
      }
      to.append("}\n");
    }
  };

  /**
   * What stands before the first row.
   *
   * @param names names of the columns
   * @return a line with its end, or empty text
   */
  public abstract String header(List<String> names);

  /**
   * Adds a row.
   *
   * @param to takes the row with its line end
   * @param names names of the columns
   * @param cells one for each column: a text, a finite number, a date, true or false, or an
   *     optional of these
   * @throws IllegalArgumentException if a cell is something else
   */
  public abstract void row(StringBuilder to, List<String> names, Object... cells);

  /**
   * The word on the command line, which is the ending of the files too.
   *
   * @return the name in lower case
   */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * All words.
   *
   * @return the words on the command line
   */
  public static List<String> words() {
    return Arrays.stream(values()).map(RowFormat::word).toList();
  }

  /**
   * The form that a word means.
   *
   * @param word a word as given by {@link #word()}
   * @return the form
   * @throws IllegalArgumentException if the word is unknown
   */
  public static RowFormat of(String word) {
    return Arrays.stream(values())
        .filter(format -> format.word().equals(word))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "'" + word + "' is not one of " + String.join(", ", words())));
  }

  /** The value of a cell, or null if it is not known. */
  private static Object present(Object cell) {
    if (cell instanceof OptionalDouble number) {
      return number.isPresent() ? (Object) number.getAsDouble() : null;
    }
    Object value = cell instanceof Optional<?> optional ? optional.orElse(null) : cell;
    return value instanceof String text && text.isEmpty() ? null : value;
  }

  private static void value(StringBuilder to, Object value) {
    if (value instanceof Double number && !Double.isFinite(number)) {
      throw new IllegalArgumentException("value " + number + " must be a finite number");
    }
    if (value instanceof Number || value instanceof Boolean) {
      to.append(value);
    } else if (value instanceof String || value instanceof LocalDate) {
      to.append('"');
      JsonStringEncoder.getInstance().quoteAsString(value.toString(), to);
      to.append('"');
    } else {
      throw new IllegalArgumentException("a cell cannot hold " + value);
    }
  }
}
