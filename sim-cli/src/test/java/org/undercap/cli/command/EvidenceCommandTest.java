package org.undercap.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.undercap.cli.CliRun;
import org.undercap.cli.report.EvidencePage;
import org.undercap.evidence.Evidence;

/** Published findings on the command line, in the README and in the reports are the same. */
class EvidenceCommandTest {
  private static final Path ROOT = Path.of("..");

  @Test
  void oneGroup() {
    CliRun run = CliRun.of("evidence", "--only", "drivers");
    assertEquals(0, run.exitCode());
    assertTrue(run.out().contains("thymol-pressure: agrees"), run.out());
    assertEquals("", run.err());
  }

  @Test
  void unknownGroup() {
    CliRun run = CliRun.of("evidence", "--only", "grwth");
    assertEquals(2, run.exitCode());
    assertEquals("", run.out());
    assertTrue(run.err().contains("growth, biology"), run.err());
  }

  @Test
  void reportsHoldTheTable() throws IOException {
    CliRun run = CliRun.of("evidence", "--markdown");
    assertEquals(0, run.exitCode());
    assertEquals(
        Files.readString(ROOT.resolve("reports/published-checks.md")),
        run.out(),
        "make it anew: undercap evidence --markdown > reports/published-checks.md");
  }

  @Test
  void readmeHoldsTheTable() throws IOException {
    String table = new EvidencePage(Evidence.runAll()).table();
    assertTrue(
        Files.readString(ROOT.resolve("README.md")).contains(table),
        "put into README.md:\n" + table);
  }
}
