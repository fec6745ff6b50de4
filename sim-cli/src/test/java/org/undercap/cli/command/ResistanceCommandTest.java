package org.undercap.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercap.cli.CliRun;
import org.undercap.cli.SmallScenario;

/** What {@code resistance} prints and refuses. */
class ResistanceCommandTest {
  @TempDir private Path folder;
  private String scenario;

  @BeforeEach
  void writeScenario() throws IOException {
    scenario = SmallScenario.in(folder, "small.yaml");
  }

  @Test
  void showsEachSchemeYearByYear() throws IOException {
    CliRun run =
        CliRun.of(
            "resistance",
            scenario,
            "--years=2",
            "--share=thymol=1 %",
            "--scheme=Gel, twice",
            "--scheme=Dribble,Do nothing",
            "--out=" + folder.resolve("out"));
    assertEquals(0, run.exitCode(), run.err());
    assertTrue(run.out().contains("A study, not a forecast."), run.out());
    assertTrue(run.out().contains("\nGel, twice\n"), run.out());
    assertTrue(run.out().contains("\nDribble, Do nothing\n"), run.out());
    String csv = Files.readString(folder.resolve("out/years.csv"));
    assertEquals(1 + 2 * 2 * 2, csv.lines().count(), csv);
    assertTrue(Files.exists(folder.resolve("out/manifest.json")));
    CliRun again =
        CliRun.of("rerun", folder.resolve("out/manifest.json").toString(), "--inputs=" + folder);
    assertEquals("the same, byte for byte: 2 files\n", again.out());
  }

  @Test
  void treatmentSelects() throws IOException {
    CliRun run =
        CliRun.of(
            "resistance",
            scenario,
            "--years=2",
            "--share=thymol=0.01",
            "--json",
            "--scheme=Gel, twice");
    JsonNode years = new ObjectMapper().readTree(run.out()).get("schemes").get(0).get("years");
    double one = years.get(0).get("resistant").get(0).get("fraction").asDouble();
    double two = years.get(1).get("resistant").get(0).get("fraction").asDouble();
    assertTrue(0.01 < one && one < two && two < 1, run.out());
  }

  @Test
  void needsAShareToBeginWith() {
    CliRun run = CliRun.of("resistance", scenario);
    assertEquals(2, run.exitCode());
    assertTrue(run.err().startsWith("no mites are resistant on the first day: give --share"));
    assertEquals(2, CliRun.of("resistance", scenario, "--share=amitraz=1 %").exitCode());
    assertEquals(2, CliRun.of("resistance", scenario, "--share=thymol=lots").exitCode());
    assertEquals(
        2, CliRun.of("resistance", scenario, "--share=thymol=1 %", "--years=99").exitCode());
    assertEquals(
        2, CliRun.of("resistance", scenario, "--share=thymol=1 %", "--scheme=x").exitCode());
  }
}
