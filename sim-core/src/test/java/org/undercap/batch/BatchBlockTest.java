package org.undercap.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.comparison.CentralRun;
import org.undercap.ensemble.Outcome;
import org.undercap.parameter.Parameter;
import org.undercap.parameter.ParameterCatalogue;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.scenario.Scenario;
import org.undercap.scenario.io.ScenarioReader;
import org.undercap.simulation.DailyColumn;
import org.undercap.simulation.DailyTable;

/** A run of a batch is the run that the simulator makes of it alone, to the last bit. */
class BatchBlockTest {
  private static final String TEXT =
      """
      undercap: 1
      name: Small yard
      site: {climate: central-european}
      colony: {date: 2026-08-08, bees: 18000, brood: 9000 cells}
      mites: {in-colony: 500}
      arrivals: low
      horizon: 200 days
      plans:
        - name: Gel and vapour
          steps:
            - {date: 2026-08-10, treatment: thymol-gel}
            - {date: 2026-08-24, treatment: thymol-gel}
            - {date: 2026-12-18, treatment: oxalic-sublimation}
      """;
  private static final List<DailyColumn> COLUMNS = Arrays.asList(DailyColumn.values());
  private static final DailyChoice ALL = new DailyChoice(COLUMNS, 1);

  private static Scenario scenario;

  @BeforeAll
  static void read() throws IOException {
    scenario =
        ScenarioReader.read(
                "small.yaml", new ByteArrayInputStream(TEXT.getBytes(StandardCharsets.UTF_8)))
            .orThrow();
  }

  private static BatchRow row(long number, ParameterSet parameters, double mites, int plan) {
    return new BatchRow(
        number,
        "",
        scenario,
        scenario.climate(),
        scenario.start(),
        scenario.end(),
        scenario.plans().get(plan),
        parameters,
        scenario.hive().bees(),
        scenario.hive().broodCells(),
        mites,
        1,
        scenario.arrivals(),
        0);
  }

  private static BatchRow warmer(BatchRow row, double warmer) {
    return new BatchRow(
        row.number(),
        row.label(),
        row.scenario(),
        ClimateCatalogue.shipped().get("temperate-oceanic"),
        row.start(),
        row.end().minusDays(20),
        row.plan(),
        row.parameters(),
        row.bees(),
        row.broodCells(),
        row.mites(),
        row.queenQuality(),
        row.arrivals(),
        warmer);
  }

  private static List<List<Double>> days(BatchResult result) {
    return result.days().stream().map(day -> Arrays.stream(day.values()).boxed().toList()).toList();
  }

  @Test
  void isTheRunOfTheSimulator() {
    for (int plan = 0; plan < 2; plan++) {
      DailyTable table = CentralRun.of(scenario, 500, scenario.plans()).get(plan).table();
      BatchResult result =
          new BatchBlock(ALL)
              .run(
                  List.of(
                      row(1, scenario.parameters(), 90, plan),
                      row(2, scenario.parameters(), 500, plan)))
              .get(1);
      assertEquals(table.days(), result.days().size());
      for (int day = 0; day < table.days(); day++) {
        assertEquals(table.start().plusDays(day), result.days().get(day).date());
        for (DailyColumn column : DailyColumn.values()) {
          assertEquals(
              table.at(column, day), result.days().get(day).values()[COLUMNS.indexOf(column)], 0.0);
        }
      }
      double atMidwinter = table.mites(Math.toIntExact(146));
      assertEquals("2027-01-01", table.start().plusDays(146).toString());
      assertEquals(atMidwinter, result.outcome(Outcome.MITES_AT_MIDWINTER).orElseThrow(), 1e-9);
    }
  }

  /** Each parameter, whether it may differ from lane to lane or parts the runs. */
  @Test
  void everyParameterActsOnItsOwnRunOnly() {
    List<BatchRow> rows = new ArrayList<>();
    rows.add(row(1, scenario.parameters(), 400, 1));
    for (Parameter parameter : ParameterCatalogue.shipped().all()) {
      if (parameter.values().size() == 1) {
        double value = parameter.values().get(0);
        rows.add(
            row(
                rows.size() + 1,
                scenario.parameters().with(parameter.id(), other(parameter, value)),
                400,
                1));
      }
    }
    rows.add(warmer(row(rows.size() + 1, scenario.parameters(), 300, 1), 2));
    assertTrue(rows.size() > 50, "parameters were found");
    List<BatchResult> together = new BatchBlock(ALL).run(rows);
    int different = 0;
    for (int i = 0; i < rows.size(); i++) {
      BatchResult alone = new BatchBlock(ALL).run(List.of(rows.get(i))).get(0);
      assertEquals(alone.problem(), together.get(i).problem());
      assertEquals(alone.outcomes(), together.get(i).outcomes(), "row " + (i + 1));
      assertEquals(days(alone), days(together.get(i)), "row " + (i + 1));
      different += alone.outcomes().equals(together.get(0).outcomes()) ? 0 : 1;
    }
    assertTrue(different > 30, "parameters make a difference: " + different);
  }

  /** Another value that the parameter may have. */
  private static double other(Parameter parameter, double value) {
    double smaller = value == Math.rint(value) && value > 1 ? value - 1 : 0.97 * value;
    return parameter.id().domain().accepts(smaller) ? smaller : value + 1;
  }

  @Test
  void warmthChangesTheRun() {
    BatchRow row = row(1, scenario.parameters(), 300, 1);
    List<BatchResult> results = new BatchBlock(ALL).run(List.of(warmer(row, 0), warmer(row, 3)));
    int temperature = COLUMNS.indexOf(DailyColumn.TEMPERATURE);
    assertEquals(
        results.get(0).days().get(5).values()[temperature] + 3,
        results.get(1).days().get(5).values()[temperature],
        1e-12);
  }

  @Test
  void runThatCannotBeRunDoesNotSpoilItsNeighbours() {
    ParameterSet reversed = scenario.parameters().with(ParameterId.AGEING_FLIGHT_LOW, 40);
    BatchRow good = row(1, scenario.parameters(), 500, 1);
    BatchRow bad = row(2, reversed, 500, 1);
    List<BatchResult> results = new BatchBlock(DailyChoice.NONE).run(List.of(good, bad, good, bad));
    BatchResult alone = new BatchBlock(DailyChoice.NONE).run(List.of(good)).get(0);
    assertEquals(alone.outcomes(), results.get(0).outcomes());
    assertEquals(alone.outcomes(), results.get(2).outcomes());
    assertTrue(
        results.get(1).problem().orElseThrow().contains("ageing.flight.low"),
        results.get(1).problem()::toString);
    assertTrue(results.get(3).outcomes().isEmpty());
  }

  @Test
  void lostColonySaysWhenAndItsDaysEnd() {
    BatchResult lost =
        new BatchBlock(new DailyChoice(DailyChoice.USUAL, 7))
            .run(List.of(row(1, scenario.parameters(), 30_000, 0)))
            .get(0);
    assertEquals(1, lost.outcome(Outcome.LOST).orElseThrow());
    BatchResult.BatchDay last = lost.days().get(lost.days().size() - 1);
    assertTrue(!last.date().isAfter(lost.lostOn().orElseThrow()), last::toString);
    assertEquals(
        7 * (lost.days().size() - 1L), last.date().toEpochDay() - scenario.start().toEpochDay());
  }
}
