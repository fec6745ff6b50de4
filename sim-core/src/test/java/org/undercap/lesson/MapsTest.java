package org.undercap.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.undercap.scenario.Scenario;
import org.undercap.scenario.io.ScenarioReader;
import org.undercap.treatment.Method;
import org.undercap.treatment.MethodCatalogue;

/** The maps of a user's colony. */
class MapsTest {
  private static final Method GEL = MethodCatalogue.shipped().get("thymol-gel");
  private static final Method VAPOUR = MethodCatalogue.shipped().get("oxalic-sublimation");

  private static Scenario scenario(String brood, String extra) throws IOException {
    String text =
        "undercap: 1\nname: Map yard\nsite: {climate: central-european}\n"
            + "colony: {date: 2026-08-08, bees: 18000, brood: "
            + brood
            + "}\nmites: {in-colony: 500}\nhorizon: 150 days\n"
            + extra;
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return ScenarioReader.read("map.yaml", new ByteArrayInputStream(bytes)).orThrow();
  }

  @Test
  void eachCellIsAheadWhereTheMethodWorks() throws IOException {
    LessonResult result = FlipChart.of(scenario("9000 cells", ""), 500, GEL, VAPOUR).lesson();
    Panel panel = result.panels().get(0);
    double warmBrood = value(panel, 0, panel.rows().indexOf("26"));
    double coolBroodless = value(panel, panel.columns().size() - 1, panel.rows().indexOf("14"));
    assertTrue(warmBrood > 20, "gel where it is warm: " + warmBrood);
    assertTrue(coolBroodless < -5, "oxalic acid without brood: " + coolBroodless);
    assertEquals(1, marked(panel, "own"));
    assertTrue(result.numbers().get("onBees") < 0.6, result.numbers().toString());
  }

  @Test
  void colonyWithoutBroodStandsAtTheEdge() throws IOException {
    LessonResult result = FlipChart.of(scenario("none seen", ""), 500, GEL, VAPOUR).lesson();
    Panel panel = result.panels().get(0);
    assertEquals(1, result.numbers().get("onBees"), 1e-9);
    Cell own = panel.cells().stream().filter(c -> c.mark().equals("own")).findFirst().orElseThrow();
    assertEquals(panel.columns().size() - 1, own.column());
  }

  @Test
  void arrivalsOfTheScenarioCount() throws IOException {
    double quiet = best(scenario("9000 cells", ""));
    double robbed = best(scenario("9000 cells", "arrivals: collapsing\n"));
    assertTrue(robbed > 1.5 * quiet, robbed + " against " + quiet);
  }

  private static double best(Scenario scenario) {
    return StartMap.of(scenario, 500, List.of(VAPOUR)).lesson().numbers().get("best");
  }

  @Test
  void firstColumnIsTheDayOfTheFacts() throws IOException {
    Panel panel = StartMap.of(scenario("9000 cells", ""), 500, List.of()).lesson().panels().get(0);
    assertEquals("2026-08-08", panel.columns().get(0));
    assertTrue(marked(panel, "today") > 0);
    assertEquals(
        0, panel.cells().stream().filter(c -> c.column() > 0 && c.mark().equals("today")).count());
  }

  private static double value(Panel panel, int column, int row) {
    return panel.cells().stream()
        .filter(cell -> cell.column() == column && cell.row() == row)
        .mapToDouble(Cell::value)
        .findFirst()
        .orElseThrow();
  }

  private static long marked(Panel panel, String mark) {
    return panel.cells().stream().filter(cell -> cell.mark().equals(mark)).count();
  }
}
