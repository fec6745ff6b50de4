package org.undercap.scenario.io;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.undercap.batch.BatchRow;
import org.undercap.parameter.ParameterChanges;
import org.undercap.parameter.ParameterId;
import org.undercap.scenario.Lookup;
import org.undercap.scenario.Place;
import org.undercap.scenario.Problems;
import org.undercap.scenario.Quantities;
import org.undercap.scenario.Reading;

/**
 * Reads a design: a table separated by commas, one row a run, columns in any order. A whole
 * example:
 *
 * <pre>
 * label,climate,start,mites,plan,shift_days,invasion.worker
 * early,cool-oceanic,2026-08-01,500,Gel twice,-10,
 * strong,cool-oceanic,2026-08-01,500,Gel twice,,0.62
 * </pre>
 *
 * <p>An empty field is as in the scenario; without a plan nothing is done. The file may have any
 * number of rows: it is read row by row, and no more of it is kept than the scenarios and plans
 * that it names. One object serves one thread.
 */
public final class DesignReader {
  static final String LABEL = "label";
  static final String SCENARIO = "scenario";
  static final String PLAN = "plan";
  static final String CLIMATE = "climate";
  static final String START = "start";
  static final String END = "end";
  static final String BEES = "bees";
  static final String BROOD = "brood_cells";
  static final String MITES = "mites";
  static final String QUEEN = "queen_quality";
  static final String ARRIVALS = "arrivals";
  static final String WARMER = "warmer_c";
  static final String SHIFT = "shift_days";

  /** The columns that a design may have beside those named as parameters. */
  public static final List<String> COLUMNS =
      List.of(
          LABEL, SCENARIO, PLAN, SHIFT, CLIMATE, START, END, BEES, BROOD, MITES, QUEEN, ARRIVALS,
          WARMER);

  /** Problems after which the rest of a file is not looked at. */
  private static final int MOST_PROBLEMS = 50;

  private static final char BYTE_ORDER_MARK = 0xFEFF;

  private final Path file;
  private final DesignScenarios scenarios;
  private List<String> header = List.of();
  private long count;

  private DesignReader(Path file, Optional<Path> scenario, ParameterChanges changes) {
    this.file = file;
    scenarios = new DesignScenarios(file, scenario, changes);
  }

  /**
   * Reads the first line of a design and checks every row.
   *
   * @param file the design
   * @param scenario the scenario of the rows that name none
   * @param changes values of the user's own, which stand above those of the scenarios and below
   *     those of a row
   * @return the design, or its problems; after fifty rows with problems the rest is not looked at
   */
  public static Reading<DesignReader> check(
      Path file, Optional<Path> scenario, ParameterChanges changes) {
    DesignReader reader = new DesignReader(file, scenario, changes);
    Problems problems = new Problems();
    long[] rows = {0};
    try {
      if (!DesignBytes.areText(file, problems)) {
        return Reading.failed(problems);
      }
      reader.rows(
          problems,
          row -> {
            rows[0]++;
            return problems.all().size() < MOST_PROBLEMS;
          });
    } catch (UncheckedIOException e) {
      problems.add(Place.of(file.toString()), "", cause(e.getCause()), "");
    } catch (IOException e) {
      problems.add(Place.of(file.toString()), "", cause(e), "");
    }
    if (rows[0] == 0 && problems.isEmpty()) {
      problems.add(
          new Place(file.toString(), 1, 1),
          "",
          "there is no run in the file",
          "write one line a run below the first");
    }
    if (problems.all().size() >= MOST_PROBLEMS) {
      problems.add(
          Place.of(file.toString()), "", "has many problems; its rest was not looked at", "");
    }
    reader.count = rows[0];
    return problems.isEmpty() ? Reading.of(reader) : Reading.failed(problems);
  }

  /**
   * Reads the first line of a design that was checked, for {@link #row}.
   *
   * @param file the design
   * @param scenario the scenario of the rows that name none
   * @param changes values of the user's own, which stand above those of the scenarios and below
   *     those of a row
   * @return the design; its number of runs is not known
   * @throws IllegalArgumentException if the first line has problems
   * @throws UncheckedIOException if the file cannot be read
   */
  public static DesignReader open(Path file, Optional<Path> scenario, ParameterChanges changes) {
    DesignReader reader = new DesignReader(file, scenario, changes);
    Problems problems = new Problems();
    reader.lines(problems, (number, at, line) -> false);
    if (!problems.isEmpty()) {
      Reading.failed(problems).orThrow();
    }
    return reader;
  }

  /**
   * Number of runs.
   *
   * @return rows of the design, at least 1
   */
  public long runs() {
    return count;
  }

  /**
   * The scenario files that the rows name.
   *
   * @return the files, each once, in the order in which they are named
   */
  public List<Path> scenarioFiles() {
    return scenarios.files();
  }

  /** Takes rows one by one. */
  @FunctionalInterface
  public interface RowTaker {
    /**
     * Takes a row.
     *
     * @param row the run; empty if it has problems
     * @return false to stop
     */
    boolean take(Optional<BatchRow> row);
  }

  /**
   * Reads the rows of a design that was checked.
   *
   * @param taker takes the rows in the order of the file
   * @throws UncheckedIOException if the file cannot be read
   * @throws IllegalArgumentException if the file has changed and has problems now
   */
  public void rows(RowTaker taker) {
    Problems problems = new Problems();
    rows(problems, row -> taker.take(row) && problems.isEmpty());
    if (!problems.isEmpty()) {
      Reading.failed(problems).orThrow();
    }
  }

  /**
   * Reads a row of a design that was checked from its line, as where rows are handed out to other
   * machines.
   *
   * @param number number of the run, from 1
   * @param line its line
   * @return the run
   * @throws IllegalArgumentException if the line has problems
   */
  public BatchRow row(long number, String line) {
    Problems problems = new Problems();
    Optional<BatchRow> row = row(number, (int) number + 1, line, problems);
    return row.orElseThrow(() -> new IllegalArgumentException(problems.all().get(0).text()));
  }

  /** Takes the lines of rows one by one. */
  @FunctionalInterface
  public interface LineTaker {
    /**
     * Takes a line.
     *
     * @param number number of the run, from 1
     * @param line its line
     */
    void take(long number, String line);
  }

  /**
   * The lines of a design that was checked, for {@link #row}.
   *
   * @param taker takes the lines of the rows in the order of the file
   * @throws UncheckedIOException if the file cannot be read
   */
  public void lines(LineTaker taker) {
    lines(
        new Problems(),
        (number, at, line) -> {
          taker.take(number, line);
          return true;
        });
  }

  private void rows(Problems problems, RowTaker taker) {
    lines(problems, (number, at, line) -> taker.take(row(number, at, line, problems)));
  }

  @FunctionalInterface
  private interface PlacedLine {
    boolean take(long number, int at, String line);
  }

  private void lines(Problems problems, PlacedLine taker) {
    try (BufferedReader lines = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
      String first = lines.readLine();
      header = header(first == null ? "" : withoutMark(first), problems);
      if (header.isEmpty()) {
        return;
      }
      int at = 1;
      long number = 0;
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        at++;
        if (!line.isBlank()) {
          number++;
          if (!taker.take(number, at, line)) {
            return;
          }
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String withoutMark(String line) {
    return !line.isEmpty() && line.charAt(0) == BYTE_ORDER_MARK ? line.substring(1) : line;
  }

  private static String cause(IOException e) {
    if (e instanceof NoSuchFileException) {
      return "there is no such file";
    }
    return e instanceof CharacterCodingException ? "the file is not in UTF-8" : "cannot be read";
  }

  private List<String> header(String line, Problems problems) {
    List<CsvField> fields = CsvField.of(line).orElse(List.of());
    List<String> accepted = accepted();
    List<String> columns = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (CsvField field : fields) {
      String column = column(field.text(), accepted);
      Place place = new Place(file.toString(), 1, field.column());
      if (!accepted.contains(column)) {
        problems.add(
            place,
            "",
            "unknown column "
                + Quantities.quote(field.text())
                + Lookup.suggestion(column, accepted),
            (line.contains(";") ? "columns are separated by commas; " : "")
                + "accepted: "
                + String.join(", ", COLUMNS)
                + " and the ids of parameters, as in "
                + ParameterId.INVASION_WORKER.id());
      } else if (!seen.add(column)) {
        problems.add(place, column, "this column is there twice", "keep one of them");
      }
      columns.add(column);
    }
    return problems.isEmpty() ? columns : List.of();
  }

  /** A name as it is accepted; only ids of parameters have upper case. */
  private static String column(String text, List<String> accepted) {
    return accepted.contains(text) ? text : text.toLowerCase(Locale.ROOT);
  }

  private static List<String> accepted() {
    List<String> accepted = new ArrayList<>(COLUMNS);
    for (ParameterId id : ParameterId.values()) {
      accepted.add(id.id());
    }
    return accepted;
  }

  private Optional<BatchRow> row(long number, int line, String text, Problems problems) {
    Place place = new Place(file.toString(), line, 1);
    Optional<List<CsvField>> fields = CsvField.of(text);
    if (fields.isEmpty()) {
      problems.add(place, "", "a quoted field is not closed", "write \" at both ends of the text");
      return Optional.empty();
    }
    if (fields.get().size() != header.size()) {
      problems.add(
          place,
          "",
          "has " + fields.get().size() + " fields, the first line has " + header.size(),
          "put \" around texts that hold a comma; write 2.5, not 2,5");
      return Optional.empty();
    }
    return new DesignRow(place, header, fields.get(), scenarios, problems).read(number);
  }
}
