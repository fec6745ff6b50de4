package org.undercap.scenario.io;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.undercap.monitoring.Board;
import org.undercap.monitoring.Count;
import org.undercap.monitoring.Wash;
import org.undercap.monitoring.WashMethod;
import org.undercap.scenario.Amount;
import org.undercap.scenario.ApiaryColony;
import org.undercap.scenario.ApiaryResolver;
import org.undercap.scenario.ApiaryRow;
import org.undercap.scenario.BeeUnit;
import org.undercap.scenario.BroodUnit;
import org.undercap.scenario.CountDoubts;
import org.undercap.scenario.InputLimits;
import org.undercap.scenario.Place;
import org.undercap.scenario.Problem;
import org.undercap.scenario.Problems;
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

  private static final int MOST_COLONIES = 2_000;
  private static final int LONGEST_NAME = 40;
  private static final int LONGEST_NOTE = 200;
  private static final int FEW_BEES = 100;

  private final Scenario site;
  private final Problems problems = new Problems();
  private final Set<String> names = new HashSet<>();

  private ApiaryReader(Scenario site) {
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
    ApiaryReader reader = new ApiaryReader(site);
    List<ApiaryRow> rows = new ArrayList<>();
    CsvTable table = new CsvTable(file.toString(), COLUMNS, List.of(COLONY), reader.problems);
    for (CsvTable.Row row : table.read(file, MOST_COLONIES, "colony")) {
      reader.new Row(row).read().ifPresent(rows::add);
    }
    return new ApiaryResolver(site, reader.problems).resolve(rows);
  }

  /** One row while it is read. */
  private final class Row {
    private final CsvTable.Row fields;
    private final List<Problem> doubts = new ArrayList<>();

    Row(CsvTable.Row fields) {
      this.fields = fields;
    }

    Optional<ApiaryRow> read() {
      Optional<Written<String>> colony =
          fields.value(COLONY, text -> Texts.text(text, LONGEST_NAME));
      if (colony.isEmpty() && fields.text(COLONY).isEmpty()) {
        fields.fail(COLONY, "the colony has no name", "give each colony a name");
      }
      if (colony.isPresent() && !names.add(colony.get().value())) {
        fields.fail(COLONY, fields.text(COLONY) + " is there twice", "rename one of them");
      }
      Optional<Written<Amount<BeeUnit>>> bees = fields.value(BEES, BeeUnit::parse);
      Optional<Written<Amount<BroodUnit>>> brood = fields.value(BROOD, BroodUnit::parse);
      doubtIfMissing(BEES);
      doubtIfMissing(BROOD);
      List<Count> counts = new ArrayList<>();
      wash().ifPresent(counts::add);
      board().ifPresent(counts::add);
      if (counts.isEmpty()
          && fields.text(WASH_MITES).isEmpty()
          && fields.text(BOARD_MITES).isEmpty()) {
        doubt(COLONY, "nothing was counted: this colony cannot be judged");
      }
      Optional<Written<String>> note = fields.value(NOTE, text -> Texts.text(text, LONGEST_NOTE));
      return colony.map(
          named ->
              new ApiaryRow(
                  named, bees, brood, counts, note.map(Written::value).orElse(""), doubts));
    }

    private void doubtIfMissing(String column) {
      if (fields.text(column).isEmpty()) {
        doubt(column, "not given: taken as in the scenario file");
      }
    }

    private Optional<Count> wash() {
      Optional<Written<Double>> bees = fields.limited(WASH_BEES, "mites.counts.wash.bees");
      Optional<Written<Double>> mites = fields.limited(WASH_MITES, "mites.counts.wash.mites");
      Optional<Written<WashMethod>> method = fields.value(METHOD, MitesReader::method);
      if (!fields.together(WASH_BEES, WASH_MITES) || bees.isEmpty() || mites.isEmpty()) {
        return Optional.empty();
      }
      double most = InputLimits.shipped().get("mites.counts.wash.mites-per-bee").high();
      if (mites.get().value() > most * bees.get().value()) {
        fields.fail(
            WASH_MITES,
            fields.text(WASH_MITES)
                + " mites on "
                + fields.text(WASH_BEES)
                + " bees is not possible",
            "are bees and mites swapped?");
        return Optional.empty();
      }
      if (bees.get().value() < FEW_BEES) {
        doubt(WASH_BEES, "a sample of " + fields.text(WASH_BEES) + " bees says little");
      }
      if (fields.text(METHOD).isEmpty()) {
        doubt(METHOD, "not given: taken as alcohol");
      }
      Wash wash =
          new Wash(
              site.start(),
              bees.get().value().intValue(),
              mites.get().value().intValue(),
              method.map(Written::value).orElse(WashMethod.ALCOHOL));
      CountDoubts.of(wash).ifPresent(words -> doubt(WASH_MITES, words));
      return Optional.of(wash);
    }

    private Optional<Count> board() {
      Optional<Written<Double>> days = fields.limited(BOARD_DAYS, "mites.counts.board.days");
      Optional<Written<Double>> mites = fields.limited(BOARD_MITES, "mites.counts.board.mites");
      if (!fields.together(BOARD_DAYS, BOARD_MITES) || days.isEmpty() || mites.isEmpty()) {
        return Optional.empty();
      }
      return Optional.of(
          new Board(site.start(), days.get().value().intValue(), mites.get().value()));
    }

    private void doubt(String column, String message) {
      Place at = fields.place(column);
      doubts.add(new Problem(at.file(), at.line(), at.column(), column, message, ""));
    }
  }
}
