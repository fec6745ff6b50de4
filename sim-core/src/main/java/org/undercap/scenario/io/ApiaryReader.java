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
import org.undercap.monitoring.Board;
import org.undercap.monitoring.Count;
import org.undercap.monitoring.Wash;
import org.undercap.monitoring.WashMethod;
import org.undercap.scenario.Amount;
import org.undercap.scenario.ApiaryColony;
import org.undercap.scenario.ApiaryResolver;
import org.undercap.scenario.ApiaryRow;
import org.undercap.scenario.BadValueException;
import org.undercap.scenario.BeeUnit;
import org.undercap.scenario.BroodUnit;
import org.undercap.scenario.InputLimits;
import org.undercap.scenario.Lookup;
import org.undercap.scenario.Place;
import org.undercap.scenario.Problem;
import org.undercap.scenario.Problems;
import org.undercap.scenario.Quantities;
import org.undercap.scenario.Reading;
import org.undercap.scenario.Scenario;
import org.undercap.scenario.Written;

/**
 * Reads an apiary: a table separated by commas, one row a colony, columns in any order. A whole
 * example:
 *
 * <pre>
 * colony,bees,brood,wash_bees,wash_mites,board_days,board_mites,method,note
 * A1,9 frames,4 frames,300,9,,,alcohol,
 * A2,18000,12 hands,,,3,24,,"young queen, calm"
 * A3,11 seams,none seen,310,2,,,soap,
 * </pre>
 *
 * <p>Bees and brood are written as in scenario files; where they are empty, those of the scenario
 * are taken. {@code wash_bees} and {@code wash_mites} go together, as do {@code board_days} and
 * {@code board_mites}; {@code method} says how the bees were washed. All counts are of the day on
 * which the scenario begins. Only {@code colony} must be there.
 */
public final class ApiaryReader {
  private static final String COLONY = "colony";
  private static final String BEES = "bees";
  private static final String BROOD = "brood";
  private static final String WASH_BEES = "wash_bees";
  private static final String WASH_MITES = "wash_mites";
  private static final String BOARD_DAYS = "board_days";
  private static final String BOARD_MITES = "board_mites";
  private static final String METHOD = "method";
  private static final String NOTE = "note";

  /** The columns that a table may have. */
  public static final List<String> COLUMNS =
      List.of(COLONY, BEES, BROOD, WASH_BEES, WASH_MITES, BOARD_DAYS, BOARD_MITES, METHOD, NOTE);

  private static final int LARGEST = 1_000_000;
  private static final int MOST_COLONIES = 2_000;
  private static final int LONGEST_NAME = 40;
  private static final int LONGEST_NOTE = 200;
  private static final int FEW_BEES = 100;

  private final String name;
  private final Scenario site;
  private final Problems problems = new Problems();
  private final Set<String> names = new HashSet<>();

  private ApiaryReader(String name, Scenario site) {
    this.name = name;
    this.site = site;
  }

  /**
   * Reads the table of an apiary.
   *
   * @param file the table
   * @param site place, day, hive and plans
   * @return the colonies in the order of the table, or all problems
   */
  public static Reading<List<ApiaryColony>> read(Path file, Scenario site) {
    ApiaryReader reader = new ApiaryReader(file.toString(), site);
    Optional<String> text = new FileText(reader.name, LARGEST, reader.problems).read(file);
    List<ApiaryRow> rows = text.map(found -> reader.rows(found.lines().toList())).orElse(List.of());
    return new ApiaryResolver(site, reader.problems).resolve(rows);
  }

  private List<ApiaryRow> rows(List<String> lines) {
    List<ApiaryRow> rows = new ArrayList<>();
    Optional<List<String>> header = header(lines.isEmpty() ? "" : lines.get(0));
    if (header.isEmpty()) {
      return rows;
    }
    for (int i = 1; i < lines.size(); i++) {
      if (!lines.get(i).isBlank()) {
        row(header.get(), i + 1, lines.get(i)).ifPresent(rows::add);
      }
    }
    if (rows.isEmpty() && problems.isEmpty()) {
      fail(1, 1, "", "there is no colony in the file", "write one line a colony below the first");
    }
    if (rows.size() > MOST_COLONIES) {
      fail(1, 1, "", "there are more than " + MOST_COLONIES + " colonies", "split the file");
    }
    return rows;
  }

  private Optional<List<String>> header(String line) {
    List<CsvField> fields = CsvField.of(line).orElse(List.of());
    List<String> columns =
        fields.stream().map(field -> field.text().toLowerCase(Locale.ROOT)).toList();
    if (!columns.contains(COLONY)) {
      String separators = line.contains(";") ? "columns are separated by commas; " : "";
      fail(
          1,
          1,
          "",
          "the first line does not name the column colony",
          separators + "write: " + String.join(",", COLUMNS));
      return Optional.empty();
    }
    Set<String> seen = new HashSet<>();
    for (CsvField field : fields) {
      String column = field.text().toLowerCase(Locale.ROOT);
      if (!COLUMNS.contains(column)) {
        String near = Lookup.suggestion(column, COLUMNS);
        fail(
            1,
            field.column(),
            "",
            "unknown column " + Quantities.quote(field.text()) + near,
            "accepted: " + String.join(", ", COLUMNS));
      } else if (!seen.add(column)) {
        fail(1, field.column(), column, "this column is there twice", "keep one of them");
      }
    }
    return Optional.of(columns);
  }

  private Optional<ApiaryRow> row(List<String> header, int line, String text) {
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
          "put \" around texts that hold a comma");
      return Optional.empty();
    }
    Map<String, CsvField> byColumn = new TreeMap<>();
    for (int i = 0; i < header.size(); i++) {
      byColumn.put(header.get(i), fields.get().get(i));
    }
    return new Row(line, byColumn).read();
  }

  private void fail(int line, int column, String field, String message, String hint) {
    problems.add(new Place(name, line, column), field, message, hint);
  }

  /** One row while it is read. */
  private final class Row {
    private final int line;
    private final Map<String, CsvField> fields;
    private final List<Problem> doubts = new ArrayList<>();

    Row(int line, Map<String, CsvField> fields) {
      this.line = line;
      this.fields = fields;
    }

    Optional<ApiaryRow> read() {
      Optional<Written<String>> colony = value(COLONY, text -> Texts.text(text, LONGEST_NAME));
      if (colony.isEmpty() && text(COLONY).isEmpty()) {
        fail(line, column(COLONY), COLONY, "the colony has no name", "give each colony a name");
      }
      if (colony.isPresent() && !names.add(colony.get().value())) {
        fail(line, column(COLONY), COLONY, text(COLONY) + " is there twice", "rename one of them");
      }
      Optional<Written<Amount<BeeUnit>>> bees = value(BEES, BeeUnit::parse);
      Optional<Written<Amount<BroodUnit>>> brood = value(BROOD, BroodUnit::parse);
      doubtIfMissing(BEES);
      doubtIfMissing(BROOD);
      List<Count> counts = new ArrayList<>();
      wash().ifPresent(counts::add);
      board().ifPresent(counts::add);
      if (counts.isEmpty() && text(WASH_MITES).isEmpty() && text(BOARD_MITES).isEmpty()) {
        doubt(COLONY, "nothing was counted: this colony cannot be judged");
      }
      Optional<Written<String>> note = value(NOTE, text -> Texts.text(text, LONGEST_NOTE));
      return colony.map(
          named ->
              new ApiaryRow(
                  named, bees, brood, counts, note.map(Written::value).orElse(""), doubts));
    }

    private void doubtIfMissing(String column) {
      if (text(column).isEmpty()) {
        doubt(column, "not given: taken as in the scenario file");
      }
    }

    private Optional<Count> wash() {
      Optional<Written<Double>> bees = limited(WASH_BEES, "mites.counts.wash.bees");
      Optional<Written<Double>> mites = limited(WASH_MITES, "mites.counts.wash.mites");
      Optional<Written<WashMethod>> method = value(METHOD, MitesReader::method);
      if (!together(WASH_BEES, WASH_MITES) || bees.isEmpty() || mites.isEmpty()) {
        return Optional.empty();
      }
      double most = InputLimits.shipped().get("mites.counts.wash.mites-per-bee").high();
      if (mites.get().value() > most * bees.get().value()) {
        fail(
            line,
            column(WASH_MITES),
            WASH_MITES,
            text(WASH_MITES) + " mites on " + text(WASH_BEES) + " bees is not possible",
            "are bees and mites swapped?");
        return Optional.empty();
      }
      if (bees.get().value() < FEW_BEES) {
        doubt(WASH_BEES, "a sample of " + text(WASH_BEES) + " bees says little");
      }
      if (mites.get().value() > bees.get().value()) {
        doubt(WASH_MITES, "more mites than bees: are the two swapped?");
      }
      if (text(METHOD).isEmpty()) {
        doubt(METHOD, "not given: taken as alcohol");
      }
      return Optional.of(
          new Wash(
              site.start(),
              bees.get().value().intValue(),
              mites.get().value().intValue(),
              method.map(Written::value).orElse(WashMethod.ALCOHOL)));
    }

    private Optional<Count> board() {
      Optional<Written<Double>> days = limited(BOARD_DAYS, "mites.counts.board.days");
      Optional<Written<Double>> mites = limited(BOARD_MITES, "mites.counts.board.mites");
      if (!together(BOARD_DAYS, BOARD_MITES) || days.isEmpty() || mites.isEmpty()) {
        return Optional.empty();
      }
      return Optional.of(
          new Board(site.start(), days.get().value().intValue(), mites.get().value()));
    }

    /** Whether both are given; a problem if only one is. */
    private boolean together(String one, String other) {
      if (text(one).isEmpty() != text(other).isEmpty()) {
        String missing = text(one).isEmpty() ? one : other;
        String given = text(one).isEmpty() ? other : one;
        fail(line, column(given), given, "needs " + missing + " beside it", "");
      }
      return !text(one).isEmpty() && !text(other).isEmpty();
    }

    private Optional<Written<Double>> limited(String column, String limit) {
      return value(column, text -> InputLimits.shipped().get(limit).check(Quantities.number(text)));
    }

    private <T> Optional<Written<T>> value(String column, ValueParser<T> parser) {
      String text = text(column);
      if (text.isEmpty()) {
        return Optional.empty();
      }
      Place place = new Place(name, line, column(column));
      try {
        return Optional.of(new Written<>(parser.parse(text), text, place));
      } catch (BadValueException e) {
        problems.add(place, column, e);
        return Optional.empty();
      }
    }

    private String text(String column) {
      return fields.containsKey(column) ? fields.get(column).text() : "";
    }

    private int column(String column) {
      return fields.containsKey(column) ? fields.get(column).column() : 1;
    }

    private void doubt(String column, String message) {
      doubts.add(new Problem(name, line, column(column), column, message, ""));
    }
  }
}
