package org.undercap.cli.option;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.undercap.cli.output.InvalidFileException;
import org.undercap.monitoring.Tally;
import org.undercap.scenario.Place;
import org.undercap.scenario.Problems;
import org.undercap.scenario.Quantities;
import org.undercap.scenario.io.FileText;

/**
 * Reads counts before and after a treatment from a table:
 *
 * <pre>
 * colony,group,before_mites,before_bees,after_mites,after_bees
 * B1,treated,13,300,6,305
 * B2,untreated,9,300,11,300
 * </pre>
 *
 * <p>Bees are left empty for boards, and both columns of {@code before} if colonies were counted
 * afterwards only; so in all rows or in none. Names hold no comma.
 */
final class CountsFile {
  private static final int LARGEST_FILE = 1_000_000;
  private static final int MOST_ROWS = 1_000;
  private static final List<String> COLUMNS =
      List.of("colony", "group", "before_mites", "before_bees", "after_mites", "after_bees");
  private static final String HEADER = String.join(",", COLUMNS);
  private static final int BEFORE = 2;
  private static final int AFTER = 4;

  private final String name;
  private final Problems problems = new Problems();
  private final List<Row> rows = new ArrayList<>();

  private CountsFile(String name) {
    this.name = name;
  }

  private record Row(boolean treated, Optional<Tally> before, Tally after, boolean board) {}

  static CountGroups read(Path path) {
    CountsFile file = new CountsFile(path.toString());
    new FileText(file.name, LARGEST_FILE, file.problems)
        .read(path)
        .ifPresent(text -> file.readLines(text.lines().toList()));
    if (!file.problems.isEmpty()) {
      throw new InvalidFileException(InvalidFileException.text(file.problems.all()));
    }
    return file.groups();
  }

  private void readLines(List<String> lines) {
    String first = lines.isEmpty() ? "" : String.join(",", fields(lines.get(0)));
    if (!first.toLowerCase(Locale.ROOT).equals(HEADER)) {
      add(1, 1, "the first line does not name the columns", "write: " + HEADER);
      return;
    }
    for (int i = 1; i < lines.size() && !problems.isFull(); i++) {
      if (!lines.get(i).replace(",", "").isBlank()) {
        readLine(i + 1, lines.get(i));
      }
    }
    if (problems.isEmpty()) {
      checkGroups();
    }
  }

  private void readLine(int line, String text) {
    List<String> fields = fields(text);
    if (fields.size() != COLUMNS.size()) {
      String message = "has " + fields.size() + " fields, must have " + COLUMNS.size();
      add(line, 1, message, "separate the fields by commas; leave a field empty between two");
      return;
    }
    boolean treated = fields.get(1).equalsIgnoreCase("treated");
    if (!treated && !fields.get(1).equalsIgnoreCase("untreated")) {
      String message = "group " + Quantities.quote(fields.get(1)) + " must be treated or untreated";
      add(line, column(text, 1), message, "");
    }
    boolean counted = !fields.get(BEFORE).isEmpty() || !fields.get(BEFORE + 1).isEmpty();
    Optional<Tally> before = counted ? tally(line, text, fields, BEFORE) : Optional.empty();
    Optional<Tally> after = tally(line, text, fields, AFTER);
    boolean board = fields.get(AFTER + 1).isEmpty();
    if (counted && board != fields.get(BEFORE + 1).isEmpty()) {
      String message = "has bees for one of the counts only";
      add(line, 1, message, "give the bees of both washes, or leave both empty for boards");
    }
    boolean complete = after.isPresent() && counted == before.isPresent();
    if (complete) {
      rows.add(new Row(treated, before, after.get(), board));
    }
  }

  private Optional<Tally> tally(int line, String text, List<String> fields, int at) {
    Optional<Integer> mites = whole(line, text, fields, at, 0);
    boolean board = fields.get(at + 1).isEmpty();
    Optional<Integer> bees = board ? Optional.of(1) : whole(line, text, fields, at + 1, 1);
    return mites.isPresent() && bees.isPresent()
        ? Optional.of(new Tally(mites.get(), bees.get()))
        : Optional.empty();
  }

  private Optional<Integer> whole(int line, String text, List<String> fields, int at, int least) {
    String field = fields.get(at);
    String what = COLUMNS.get(at);
    if (!field.matches("\\d{1,9}")) {
      String message = what + " " + Quantities.quote(field) + " must be a whole number";
      add(line, column(text, at), message, "");
      return Optional.empty();
    }
    try {
      return Optional.of(CountText.within(field, least, what));
    } catch (IllegalArgumentException e) {
      add(line, column(text, at), e.getMessage(), "");
      return Optional.empty();
    }
  }

  private void checkGroups() {
    String whole = "";
    if (rows.stream().noneMatch(Row::treated)) {
      whole = "there is no treated colony in the table";
    } else if (rows.size() > MOST_ROWS) {
      whole = "has " + rows.size() + " colonies, at most " + MOST_ROWS + " are accepted";
    } else if (rows.stream().map(Row::board).distinct().count() > 1) {
      whole = "washes and boards are mixed; give bees in all rows or in none";
    } else if (rows.stream().map(row -> row.before().isPresent()).distinct().count() > 1) {
      whole = "some colonies have counts before and some have none; fill in all or none";
    } else if (rows.get(0).before().isEmpty() && rows.stream().allMatch(Row::treated)) {
      whole = "without counts before, untreated colonies are needed";
    }
    if (!whole.isEmpty()) {
      problems.add(Place.of(name), "", whole, "");
    }
  }

  private CountGroups groups() {
    return new CountGroups(
        before(true), after(true), before(false), after(false), List.of(), rows.get(0).board());
  }

  private List<Tally> before(boolean treated) {
    return rows.stream()
        .filter(row -> row.treated() == treated)
        .flatMap(row -> row.before().stream())
        .toList();
  }

  private List<Tally> after(boolean treated) {
    return rows.stream().filter(row -> row.treated() == treated).map(Row::after).toList();
  }

  private static List<String> fields(String line) {
    return List.of(line.split(",", -1)).stream().map(String::strip).toList();
  }

  /** Column in which a field begins (characters, from 1). */
  private static int column(String line, int field) {
    int at = 0;
    for (int i = 0; i < field; i++) {
      at = line.indexOf(',', at) + 1;
    }
    while (at < line.length() && line.charAt(at) == ' ') {
      at++;
    }
    return at + 1;
  }

  private void add(int line, int column, String message, String hint) {
    problems.add(new Place(name, line, column), "", message, hint);
  }
}
