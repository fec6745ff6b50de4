package org.undercap.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.undercap.cli.CliRun;

/** What the commands about climates, parameters, sources and thresholds say. */
class ReferenceCommandsTest {
  @Test
  void climateIsShownMonthByMonthAndMarkedAsAssumption() {
    String page = CliRun.of("climates", "southern-temperate").out();
    assertTrue(page.contains("\nhemisphere        south\n"), page);
    assertTrue(page.contains("\nJan                 17.0       1250        1.25  ####"), page);
    assertTrue(page.contains("\nJun                  7.1         30        0.00  #\n"), page);
    assertTrue(page.contains("assumptions"), page);
  }

  @Test
  void climatesAreComparedInOneTable() {
    String table = CliRun.of("climates").out();
    assertTrue(table.contains("-16       21       2000  Jun\n"), table);
    assertTrue(table.contains("Nov, Dec\n"), table);
  }

  @Test
  void parametersFromMemoryAndAssumptionsAreMarked() {
    String table = CliRun.of("parameters").out();
    assertTrue(
        table.contains(
            """
            dispersion.drone                        2  1 to 5          none       assumption
              donze-1996
            """),
        table);
    assertTrue(table.contains("\n  winston-1987 * "), table);
    assertTrue(table.contains("\n  martin-1998 *\n"), table);
    assertFalse(table.contains("boot-1995 *"), table);
  }

  @Test
  void parameterIsExplainedWithItsSource() {
    CliRun run = CliRun.of("parameters", "treatment.strength");
    assertEquals(0, run.exitCode());
    assertEquals("", run.err());
    assertTrue(run.out().contains("\nvalue             1\n"), run.out());
    assertTrue(run.out().contains("\nunit              ratio of the hazard\n"), run.out());
    assertTrue(run.out().contains("\nplausible range   0.5 to 1.6\n"), run.out());
    assertTrue(run.out().contains("\nkind              assumption: nobody measured it\n"));
    assertTrue(run.out().contains("lognormal, value as median"), run.out());
    assertTrue(run.out().contains("\nhow read          abstract read\n"), run.out());
    assertTrue(run.out().contains("\n- floris-2004: Floris I."), run.out());
  }

  @Test
  void infiniteParameterStaysReadable() throws IOException {
    assertTrue(
        CliRun.of("parameters", "dispersion.worker")
            .out()
            .contains("\nvalue             infinity\n"));
    CliRun run = CliRun.of("parameters", "dispersion.worker", "--json");
    JsonNode parameter = new ObjectMapper().readTree(run.out()).get("parameters").get(0);
    assertEquals("infinity", parameter.get("values").get(0).asText());
    assertEquals(2, parameter.get("low").get(0).asDouble());
  }

  @Test
  void sourceTellsHowItWasReadAndWhatRestsOnIt() {
    String page = CliRun.of("sources", "winston-1987").out();
    assertTrue(page.contains("\nhow read          from memory, not read\n"), page);
    assertTrue(page.contains("\nparameters        brood.worker.days, brood.drone.days\n"), page);
    assertTrue(
        CliRun.of("sources", "giacomelli-2016").out().contains("\ntreatments        thymol"));
    assertTrue(CliRun.of("sources", "morfin-2024").out().contains("(British Columbia)"));
  }

  @Test
  void thresholdsOfOneWayOfCountingStandTogether() {
    List<String> headings =
        CliRun.of("thresholds").out().lines().filter(line -> line.startsWith("Mites ")).toList();
    assertEquals(
        List.of("Mites in the colony", "Mites falling per day", "Mites per 100 bees"), headings);
  }

  @Test
  void thresholdsOfAPlaceAreShownInFullWhateverTheCase() {
    CliRun run = CliRun.of("thresholds", "ONTARIO");
    assertEquals(0, run.exitCode());
    assertEquals("", run.err());
    assertTrue(
        run.out().startsWith("Canada (Ontario), May\nlimit             2 mites per 100 bees\n"));
    assertEquals(6, run.out().lines().filter(line -> line.startsWith("Canada (Ontario)")).count());
    assertTrue(run.out().contains("\nhow read          quoted by others, not read itself\n"));
  }

  @Test
  void thresholdsFromMemoryAreMarked() throws IOException {
    assertTrue(CliRun.of("thresholds").out().contains("currie-gatien-2006 *\n"));
    CliRun run = CliRun.of("thresholds", "prairies", "--json");
    JsonNode thresholds = new ObjectMapper().readTree(run.out()).get("thresholds");
    assertEquals(2, thresholds.size());
    assertTrue(thresholds.get(0).get("fromMemory").asBoolean());
  }
}
