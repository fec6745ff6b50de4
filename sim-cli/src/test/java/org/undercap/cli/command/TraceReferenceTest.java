package org.undercap.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercap.cli.CliRun;

/**
 * The whole way from a scenario file to a table of days against a reference table, to 1e-9 relative
 * (1e-9 absolute below 1).
 */
class TraceReferenceTest {
  private static final double TOLERANCE = 1e-9;
  private static final Path SCENARIO =
      Path.of("src/test/resources/org/undercap/cli/reference/thymol-gel-oceanic.yaml");
  private static final Path TABLE =
      Path.of(
          "../sim-core/src/test/resources/org/undercap/reference",
          "03-thymol-gel-oceanic-10-August.csv");

  @Test
  void scenarioFileGivesTheReferenceTable(@TempDir Path folder) throws IOException {
    Path trace = folder.resolve("trace.csv");
    CliRun run = CliRun.of("simulate", SCENARIO.toString(), "--plan=Gel twice", "--trace=" + trace);
    assertEquals(0, run.exitCode(), run.err());
    List<String> wanted = Files.readAllLines(TABLE);
    List<String> got = Files.readAllLines(trace);
    assertEquals(wanted.get(0), got.get(0), "header");
    assertEquals(wanted.size(), got.size(), "days");
    String[] columns = wanted.get(0).split(",", -1);
    for (int day = 1; day < wanted.size(); day++) {
      String[] want = wanted.get(day).split(",", -1);
      String[] have = got.get(day).split(",", -1);
      for (int column = 0; column < columns.length; column++) {
        double value = Double.parseDouble(want[column]);
        assertEquals(
            value,
            Double.parseDouble(have[column]),
            TOLERANCE * Math.max(1, Math.abs(value)),
            "day " + (day - 1) + " " + columns[column]);
      }
    }
  }
}
