package org.undercap.scenario.io;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.undercap.scenario.BadValueException;
import org.undercap.scenario.InputLimits;
import org.undercap.scenario.Place;
import org.undercap.scenario.Problems;
import org.undercap.scenario.Quantities;

/**
 * Reads daily temperatures: a table with the columns {@code date} and {@code temperature_c} or
 * {@code temperature_f}, separated by a comma.
 *
 * <pre>
 * date,temperature_c
 * 2026-09-24,13.5
 * 2026-09-25,12
 * </pre>
 */
final class TemperatureFile {

  private static final int LARGEST = 1_000_000;
  private static final int MOST_PROBLEMS = 20;
  private static final List<String> CELSIUS = List.of("date", "temperature_c");
  private static final List<String> FAHRENHEIT = List.of("date", "temperature_f");

  private final String name;
  private final Problems problems;
  private final SortedMap<LocalDate, Double> temperatures = new TreeMap<>();
  private int mistakes;

  private TemperatureFile(String name, Problems problems) {
    this.name = name;
    this.problems = problems;
  }

  /** The daily means by date (C), unless the file has mistakes. */
  static Optional<SortedMap<LocalDate, Double>> read(Path path, Problems problems) {
    TemperatureFile file = new TemperatureFile(path.toString(), problems);
    Optional<String> text = new FileText(file.name, LARGEST, problems).read(path);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    file.readLines(text.get().lines().toList());
    return file.mistakes == 0 ? Optional.of(file.temperatures) : Optional.empty();
  }

  private void readLines(List<String> lines) {
    List<String> header = lines.isEmpty() ? List.of() : fields(lines.get(0));
    boolean fahrenheit = header.equals(FAHRENHEIT);
    if (!fahrenheit && !header.equals(CELSIUS)) {
      add(1, 1, "the first line does not name the columns", "write: date,temperature_c");
      return;
    }
    for (int i = 1; i < lines.size() && mistakes < MOST_PROBLEMS; i++) {
      if (!lines.get(i).isBlank()) {
        readLine(i + 1, lines.get(i), fahrenheit);
      }
    }
    if (temperatures.isEmpty() && mistakes == 0) {
      add(1, 1, "there are no temperatures in the file", "write one line a day below the first");
    }
    if (mistakes == MOST_PROBLEMS) {
      problems.add(
          Place.of(name), "", "too many mistakes, the rest of the file was not looked at", "");
    }
  }

  private void readLine(int line, String text, boolean fahrenheit) {
    List<String> fields = fields(text);
    if (fields.size() != 2) {
      add(
          line,
          1,
          "has " + fields.size() + " fields, must have 2",
          "write a date, a comma and a temperature with a decimal point");
      return;
    }
    try {
      LocalDate date = Quantities.date(fields.get(0));
      int second = text.indexOf(',') + 2;
      double value = temperature(fields.get(1), fahrenheit, line, second);
      if (temperatures.putIfAbsent(date, value) != null) {
        add(line, 1, date + " is there twice", "keep one of the lines");
      }
    } catch (BadValueException e) {
      add(line, 1, e.getMessage(), e.hint());
    }
  }

  private double temperature(String text, boolean fahrenheit, int line, int column) {
    try {
      double number = Quantities.number(text);
      double celsius = fahrenheit ? Quantities.fahrenheitToCelsius(number) : number;
      return InputLimits.shipped().get("site.daily-temperatures").check(celsius);
    } catch (BadValueException e) {
      add(line, column, e.getMessage(), e.hint());
      return 0;
    }
  }

  private static List<String> fields(String line) {
    return List.of(line.split(",", -1)).stream().map(String::strip).toList();
  }

  private void add(int line, int column, String message, String hint) {
    mistakes++;
    problems.add(new Place(name, line, column), "", message, hint);
  }
}
