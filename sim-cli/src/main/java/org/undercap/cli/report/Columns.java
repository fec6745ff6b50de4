package org.undercap.cli.report;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.undercap.internal.CsvResource;
import org.undercap.internal.CsvRow;

/** The dictionary of the columns of all tables that the program writes or reads. */
public final class Columns {
  private static final String ANY = "any";
  private static final Pattern STATISTIC = Pattern.compile("(.+)(_p\\d\\d|_mean)");

  private Columns() {}

  /**
   * A column.
   *
   * @param name its name; one that begins with an underscore is the ending of names
   * @param unit its unit, {@code -} for names, dates and the like
   * @param tables the tables that have it, as in {@code batch daily}
   * @param meaning what it holds
   */
  public record Column(String name, String unit, List<String> tables, String meaning) {
    /**
     * Copies the list.
     *
     * @param name its name
     * @param unit its unit
     * @param tables the tables that have it
     * @param meaning what it holds
     */
    public Column {
      tables = List.copyOf(tables);
    }
  }

  /**
   * All columns.
   *
   * @return the dictionary in its order
   */
  public static List<Column> all() {
    return Holder.ALL;
  }

  /**
   * All tables.
   *
   * @return their names, sorted
   */
  public static List<String> tables() {
    return all().stream()
        .flatMap(column -> column.tables().stream())
        .filter(table -> !table.equals(ANY))
        .distinct()
        .sorted()
        .toList();
  }

  /**
   * The entry that explains a column of a table. One that holds a quantile or a mean is explained
   * by that of its name without the ending.
   *
   * @param table name of the table
   * @param column name of the column
   * @return the entry, if there is one
   */
  public static Optional<Column> find(String table, String column) {
    Optional<Column> found = exactly(table, column);
    Matcher statistic = STATISTIC.matcher(column);
    if (found.isPresent() || !statistic.matches()) {
      return found;
    }
    return exactly(ANY, statistic.group(2)).isPresent()
        ? exactly(table, statistic.group(1))
        : Optional.empty();
  }

  private static Optional<Column> exactly(String table, String column) {
    return all().stream()
        .filter(c -> c.name().equals(column) && c.tables().contains(table))
        .findFirst();
  }

  private static Column column(CsvRow row) {
    return new Column(
        row.required("column"), row.required("unit"), row.parts("tables"), row.required("meaning"));
  }

  private static final class Holder {
    static final List<Column> ALL =
        CsvResource.read(Columns.class, "columns.csv").stream().map(Columns::column).toList();
  }
}
