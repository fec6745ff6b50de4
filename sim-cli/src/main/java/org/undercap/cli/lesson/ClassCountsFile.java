package org.undercap.cli.lesson;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.undercap.cli.output.InvalidFileException;
import org.undercap.scenario.BadValueException;
import org.undercap.scenario.Place;
import org.undercap.scenario.Problems;
import org.undercap.scenario.Quantities;
import org.undercap.scenario.io.FileText;

/**
 * Reads the washes of a class:
 *
 * <pre>
 * date,bees,mites
 * 2026-07-05,300,4
 * 2026-08-09,310,9
 * </pre>
 */
public final class ClassCountsFile {
  private static final int LARGEST_FILE = 1_000_000;
  private static final int COLUMNS = 3;
  private static final int LEAST_ROWS = 2;
  private static final String HEADER = "date,bees,mites";

  private final String name;
  private final Problems problems = new Problems();
  private final List<Row> rows = new ArrayList<>();

  private ClassCountsFile(String name) {
    this.name = name;
  }

  /**
   * A wash.
   *
   * @param date its day
   * @param bees bees in the jar (bees)
   * @param mites mites found (mites)
   */
  public record Row(LocalDate date, int bees, int mites) {}

  /**
   * Reads a table.
   *
   * @param file the table
   * @return washes by date
   * @throws InvalidFileException if the table is not valid; the message holds all problems
   */
  public static List<Row> read(Path file) {
    ClassCountsFile table = new ClassCountsFile(file.toString());
    new FileText(table.name, LARGEST_FILE, table.problems)
        .read(file)
        .ifPresent(text -> table.lines(text.lines().toList()));
    if (!table.problems.isEmpty()) {
      throw new InvalidFileException(InvalidFileException.text(table.problems.all()));
    }
    return List.copyOf(table.rows);
  }

  private void lines(List<String> lines) {
    String first = lines.isEmpty() ? "" : lines.get(0).replace(" ", "").toLowerCase(Locale.ROOT);
    if (!first.equals(HEADER)) {
      add(1, "the first line does not name the columns", "write: " + HEADER);
      return;
    }
    for (int i = 1; i < lines.size() && !problems.isFull(); i++) {
      if (!lines.get(i).replace(",", "").isBlank()) {
        line(i + 1, List.of(lines.get(i).split(",", -1)).stream().map(String::strip).toList());
      }
    }
    if (problems.isEmpty() && rows.size() < LEAST_ROWS) {
      add(1, "holds " + rows.size() + " counts, needs at least " + LEAST_ROWS, "");
    }
  }

  private void line(int line, List<String> fields) {
    if (fields.size() != COLUMNS) {
      add(line, "has " + fields.size() + " fields, must have " + COLUMNS, "");
      return;
    }
    int before = problems.all().size();
    LocalDate date = date(line, fields.get(0));
    int bees = whole(line, "bees", fields.get(1), 1);
    int mites = whole(line, "mites", fields.get(2), 0);
    if (mites > bees) {
      add(line, "mites " + mites + " are more than bees " + bees, "the columns may be swapped");
    }
    if (!rows.isEmpty() && !date.isAfter(rows.get(rows.size() - 1).date())) {
      add(line, "date " + date + " does not lie after the one before", "sort the table by date");
    }
    if (problems.all().size() == before) {
      rows.add(new Row(date, bees, mites));
    }
  }

  private LocalDate date(int line, String field) {
    try {
      return Quantities.date(field);
    } catch (BadValueException e) {
      add(line, "date " + e.getMessage(), e.hint());
      return LocalDate.MAX;
    }
  }

  private int whole(int line, String what, String field, int least) {
    if (field.matches("\\d{1,6}") && Integer.parseInt(field) >= least) {
      return Integer.parseInt(field);
    }
    String message = what + " " + Quantities.quote(field) + " must be a whole number of at least ";
    add(line, message + least, "");
    return least;
  }

  private void add(int line, String message, String hint) {
    problems.add(new Place(name, line, 1), "", message, hint);
  }
}
