package org.undercap.scenario.io;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.undercap.calibration.ObservedColony;
import org.undercap.calibration.TotalMites;
import org.undercap.monitoring.Board;
import org.undercap.monitoring.Count;
import org.undercap.monitoring.DroneCells;
import org.undercap.monitoring.Wash;
import org.undercap.monitoring.WashMethod;
import org.undercap.scenario.ApiaryResolver;
import org.undercap.scenario.ApiaryRow;
import org.undercap.scenario.BadValueException;
import org.undercap.scenario.BeeUnit;
import org.undercap.scenario.BroodUnit;
import org.undercap.scenario.HiveFacts;
import org.undercap.scenario.InputLimits;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Problems;
import org.undercap.scenario.Quantities;
import org.undercap.scenario.Reading;
import org.undercap.scenario.Scenario;
import org.undercap.scenario.Written;
import org.undercap.treatment.Interventions;

/**
 * Reads counts of mites over time in one or many colonies of a place: a table separated by commas,
 * one row a visit, columns in any order. A whole example:
 *
 * <pre>
 * colony,date,bees,brood,plan,wash_bees,wash_mites,method,board_days,board_mites
 * P1,2026-05-01,9 frames,6 frames,Do nothing,300,1,alcohol,,
 * P1,2026-05-15,,,,300,2,alcohol,7,12
 * P2,2026-05-15,8 frames,5 frames,Strips,,,,7,20
 * </pre>
 *
 * <p>Bees and brood are those of the first day of the scenario, as a run begins there, and stand in
 * the first row of a colony, as does the plan that was followed; where they are empty, those of the
 * scenario are taken, and nothing was done. {@code drone_cells} and {@code infested_cells} are
 * opened drone cells and those of them with a mite; {@code all_mites} are all mites of a colony, as
 * a study finds them that takes it apart. Only {@code colony} and {@code date} must be there.
 */
public final class ObservationReader {
  private static final String COLONY = "colony";
  private static final String DATE = "date";
  private static final String BEES = "bees";
  private static final String BROOD = "brood";
  private static final String PLAN = "plan";
  private static final String WASH_BEES = "wash_bees";
  private static final String WASH_MITES = "wash_mites";
  private static final String METHOD = "method";
  private static final String BOARD_DAYS = "board_days";
  private static final String BOARD_MITES = "board_mites";
  private static final String DRONE_CELLS = "drone_cells";
  private static final String INFESTED_CELLS = "infested_cells";
  private static final String ALL_MITES = "all_mites";
  private static final String NOTE = "note";

  /** The columns that a table may have. */
  public static final List<String> COLUMNS =
      List.of(
          COLONY,
          DATE,
          BEES,
          BROOD,
          PLAN,
          WASH_BEES,
          WASH_MITES,
          METHOD,
          BOARD_DAYS,
          BOARD_MITES,
          DRONE_CELLS,
          INFESTED_CELLS,
          ALL_MITES,
          NOTE);

  private static final int MOST_ROWS = 10_000;
  private static final int LONGEST_NAME = 40;

  private final Scenario site;
  private final Problems problems = new Problems();
  private final Map<String, Colony> colonies = new LinkedHashMap<>();

  private ObservationReader(Scenario site) {
    this.site = site;
  }

  /**
   * Reads the table.
   *
   * @param file the table
   * @param site place, first day, usual colony, arrivals and plans
   * @return the colonies in the order of the table, or all problems
   */
  public static Reading<List<ObservedColony>> read(Path file, Scenario site) {
    ObservationReader reader = new ObservationReader(site);
    CsvTable table = new CsvTable(file.toString(), COLUMNS, List.of(COLONY, DATE), reader.problems);
    for (CsvTable.Row row : table.read(file, MOST_ROWS, "visit")) {
      reader.add(row);
    }
    List<ObservedColony> observed = new ArrayList<>();
    for (Colony colony : reader.colonies.values()) {
      colony.observed().ifPresent(observed::add);
    }
    return reader.problems.isEmpty()
        ? Reading.of(List.copyOf(observed))
        : Reading.failed(reader.problems);
  }

  private void add(CsvTable.Row row) {
    Optional<Written<String>> name = row.value(COLONY, text -> Texts.text(text, LONGEST_NAME));
    Optional<Written<LocalDate>> date = row.value(DATE, Quantities::date);
    if (!row.has(COLONY)) {
      row.fail(COLONY, "the colony has no name", "name it in every row");
    }
    if (!row.has(DATE)) {
      row.fail(DATE, "the visit has no date", "write it as 2026-05-15");
    }
    if (name.isEmpty() || date.isEmpty()) {
      return;
    }
    Colony colony = colonies.get(name.get().value());
    if (colony == null) {
      colony = new Colony(row, name.get());
      colonies.put(name.get().value(), colony);
    } else {
      colony.refuseStart(row);
    }
    colony.visit(row, date.get().value());
  }

  /** A colony while its rows are read. */
  private final class Colony {
    private final Written<String> name;
    private final Optional<HiveFacts> facts;
    private final Optional<Plan> plan;
    private final List<Count> counts = new ArrayList<>();
    private final List<TotalMites> totals = new ArrayList<>();

    Colony(CsvTable.Row row, Written<String> name) {
      this.name = name;
      ApiaryRow start =
          new ApiaryRow(
              name,
              row.value(BEES, BeeUnit::parse),
              row.value(BROOD, BroodUnit::parse),
              List.of(),
              "",
              List.of());
      facts = new ApiaryResolver(site, problems).facts(start);
      plan =
          row.has(PLAN)
              ? row.value(PLAN, this::plan).map(Written::value)
              : Optional.of(site.plans().get(0));
    }

    private Plan plan(String text) throws BadValueException {
      for (Plan known : site.plans()) {
        if (known.name().toLowerCase(Locale.ROOT).equals(text.toLowerCase(Locale.ROOT))) {
          return known;
        }
      }
      throw new BadValueException(
          "there is no plan " + Quantities.quote(text),
          "plans of the scenario: "
              + site.plans().stream().map(Plan::name).collect(Collectors.joining(", ")));
    }

    void refuseStart(CsvTable.Row row) {
      for (String column : List.of(BEES, BROOD, PLAN)) {
        if (row.has(column)) {
          row.fail(
              column,
              "stands in a later row of " + name.text(),
              "give it in the first row of the colony only: it is that of the first day");
        }
      }
    }

    void visit(CsvTable.Row row, LocalDate date) {
      if (date.isBefore(site.start()) || date.isAfter(site.end())) {
        row.fail(
            DATE,
            date + " is outside the run, " + site.start() + " to " + site.end(),
            "colony.date and horizon of the scenario say when it begins and ends");
        return;
      }
      int before = counts.size() + totals.size();
      wash(row, date).ifPresent(counts::add);
      board(row, date).ifPresent(counts::add);
      cells(row, date).ifPresent(counts::add);
      row.limited(ALL_MITES, "mites.in-colony")
          .ifPresent(
              mites -> {
                if (mites.value() > 0) {
                  totals.add(new TotalMites(date, mites.value()));
                } else {
                  row.fail(ALL_MITES, "must be above 0", "leave it empty if it is not known");
                }
              });
      if (counts.size() + totals.size() == before && problems.isEmpty()) {
        row.fail(COLONY, "nothing was counted on this visit", "fill in a count or drop the row");
      }
    }

    private Optional<Count> wash(CsvTable.Row row, LocalDate date) {
      Optional<Written<Double>> bees = row.limited(WASH_BEES, "mites.counts.wash.bees");
      Optional<Written<Double>> mites = row.limited(WASH_MITES, "mites.counts.wash.mites");
      Optional<Written<WashMethod>> method = row.value(METHOD, MitesReader::method);
      if (!row.together(WASH_BEES, WASH_MITES) || bees.isEmpty() || mites.isEmpty()) {
        return Optional.empty();
      }
      if (mites.get().value() > bees.get().value()) {
        row.fail(
            WASH_MITES,
            "more mites than bees: a fit counts infested bees, so at most as many",
            "are bees and mites swapped?");
        return Optional.empty();
      }
      return Optional.of(
          new Wash(
              date,
              bees.get().value().intValue(),
              mites.get().value().intValue(),
              method.map(Written::value).orElse(WashMethod.ALCOHOL)));
    }

    private Optional<Count> board(CsvTable.Row row, LocalDate date) {
      Optional<Written<Double>> days = row.limited(BOARD_DAYS, "mites.counts.board.days");
      Optional<Written<Double>> mites =
          row.value(
              BOARD_MITES,
              text ->
                  StrictMath.rint(
                      InputLimits.shipped()
                          .get("mites.counts.board.mites")
                          .check(Quantities.number(text))));
      if (!row.together(BOARD_DAYS, BOARD_MITES) || days.isEmpty() || mites.isEmpty()) {
        return Optional.empty();
      }
      Board board = new Board(date, days.get().value().intValue(), mites.get().value());
      if (board.firstDay().isBefore(site.start())) {
        row.fail(
            BOARD_DAYS,
            "the board was put in before the run begins on " + site.start(),
            "begin the run of the scenario earlier");
        return Optional.empty();
      }
      return Optional.of(board);
    }

    private Optional<Count> cells(CsvTable.Row row, LocalDate date) {
      Optional<Written<Double>> opened =
          row.limited(DRONE_CELLS, "mites.counts.drone-cells.opened");
      Optional<Written<Double>> infested =
          row.limited(INFESTED_CELLS, "mites.counts.drone-cells.infested");
      if (!row.together(DRONE_CELLS, INFESTED_CELLS) || opened.isEmpty() || infested.isEmpty()) {
        return Optional.empty();
      }
      if (infested.get().value() > opened.get().value()) {
        row.fail(INFESTED_CELLS, "more cells than were opened", "");
        return Optional.empty();
      }
      return Optional.of(
          new DroneCells(date, opened.get().value().intValue(), infested.get().value().intValue()));
    }

    Optional<ObservedColony> observed() {
      if (facts.isEmpty() || plan.isEmpty() || !problems.isEmpty()) {
        return Optional.empty();
      }
      return Optional.of(
          new ObservedColony(
              name.value(),
              new ObservedColony.Start(
                  site.climate(),
                  site.start(),
                  facts.get().bees(),
                  facts.get().broodCells(),
                  facts.get().queenQuality()),
              site::arrivalsOn,
              List.copyOf(Interventions.of(site.stepsUnder(plan.get()), site.circumstances())),
              counts,
              totals));
    }
  }
}
