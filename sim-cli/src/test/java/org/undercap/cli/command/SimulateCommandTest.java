package org.undercap.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercap.cli.CliRun;
import org.undercap.cli.SmallScenario;

/** What {@code simulate} prints and writes, and what it refuses. */
class SimulateCommandTest {
  @TempDir private Path folder;
  private String scenario;

  @BeforeEach
  void writeScenario() {
    scenario = SmallScenario.in(folder, "small.yaml");
  }

  @Test
  void showsEveryPlanMonthByMonth() {
    CliRun run = CliRun.of("simulate", scenario);
    assertEquals(0, run.exitCode());
    assertEquals("", run.err());
    assertTrue(run.out().startsWith("Small yard, from 8 Aug 2026 to 5 Jan 2027\n"), run.out());
    for (String plan : List.of("Do nothing", "Gel, twice", "Dribble")) {
      assertTrue(run.out().contains("\n" + plan + "\nday "), plan);
    }
    assertEquals(3, count(run.out(), "\n8 Aug 2026 "));
    assertEquals(3, count(run.out(), "\n1 Dec 2026 "));
    assertEquals(3, count(run.out(), "\n5 Jan 2027 "));
    assertTrue(run.out().contains("\nCautions\n- About this report: "), run.out());
    assertEquals(List.of("small.yaml"), List.copyOf(SmallScenario.files(folder).keySet()));
  }

  @Test
  void firstDayShowsWhatTheFileSays() {
    String out = CliRun.of("simulate", scenario, "--plan=Do nothing").out();
    String row = out.substring(out.indexOf("\n8 Aug 2026 ") + 1).lines().findFirst().orElseThrow();
    String[] cells = row.split(" {2,}", -1);
    assertEquals("18000", cells[1], row);
    assertEquals("9000", cells[2], row);
    double mites = Double.parseDouble(cells[3]) + Double.parseDouble(cells[4]);
    assertEquals(500, mites, 10, row);
  }

  @Test
  void runsOneNamedPlanWhateverItsCase() {
    CliRun run = CliRun.of("simulate", scenario, "--plan", "gel, TWICE");
    assertEquals(0, run.exitCode());
    assertEquals("", run.err());
    assertTrue(run.out().contains("\nGel, twice\n"), run.out());
    assertFalse(run.out().contains("Do nothing"), run.out());
  }

  @Test
  void unknownPlanIsAnsweredWithTheNames() {
    CliRun run = CliRun.of("simulate", scenario, "--plan=Gel");
    assertEquals(2, run.exitCode());
    assertEquals("", run.out());
    assertEquals(
        """
        there is no plan 'Gel'; this scenario has: 'Do nothing', 'Gel, twice', 'Dribble'
        Try 'undercap simulate --help'.
        """,
        run.err());
  }

  @Test
  void planGivenTwiceIsRefused() {
    CliRun run = CliRun.of("simulate", scenario, "--plan=Dribble", "--plan=Do nothing");
    assertEquals(2, run.exitCode());
    assertEquals("", run.out());
    assertTrue(
        run.err().contains("option '--plan' (NAME) should be specified only once"), run.err());
  }

  @Test
  void explainsADay() {
    CliRun run = CliRun.of("simulate", scenario, "--explain=2026-08-12", "--plan=Gel, twice");
    assertEquals(0, run.exitCode());
    assertEquals("", run.err());
    assertTrue(run.out().startsWith("Gel, twice, 2026-08-12\n  thymol gel: "), run.out());
    assertTrue(run.out().contains("% of the mites on bees killed\n"), run.out());
  }

  @Test
  void explainsEachPlanIfNoneIsNamed() {
    CliRun run = CliRun.of("simulate", scenario, "--explain=2026-08-09");
    assertEquals(0, run.exitCode());
    assertEquals("", run.err());
    assertEquals(
        """
        Do nothing, 2026-08-09
          nothing acts on this day
        Gel, twice, 2026-08-09
          nothing acts on this day
        Dribble, 2026-08-09
          nothing acts on this day
        """,
        run.out());
  }

  @ParameterizedTest
  @CsvSource({
    "2026-08-07, '2026-08-07 must lie in the run, 2026-08-08 to 2027-01-05'",
    "2027-01-06, '2027-01-06 must lie in the run, 2026-08-08 to 2027-01-05'",
    "2026-02-30, '2026-02-30 does not exist in the calendar; dates are written year-month-day'",
    "12.8.2026, '\"12.8.2026\" is not a date; dates are written year-month-day'"
  })
  void dayThatIsNotInTheRunIsRefused(String day, String message) {
    CliRun run = CliRun.of("simulate", scenario, "--explain", day);
    assertEquals(2, run.exitCode());
    assertEquals("", run.out());
    assertTrue(run.err().contains(message), run.err());
    assertTrue(run.err().endsWith("\nTry 'undercap simulate --help'.\n"), run.err());
    assertFalse(run.err().contains("java"), run.err());
  }

  @ParameterizedTest
  @CsvSource({"2026-08-08", "2027-01-05"})
  void firstAndLastDayLieInTheRun(String day) {
    CliRun run = CliRun.of("simulate", scenario, "--explain", day);
    assertEquals(0, run.exitCode());
    assertTrue(run.out().startsWith("Do nothing, " + day), run.out());
    assertEquals("", run.err());
  }

  @Test
  void traceNeedsAPlanIfThereAreSeveral() {
    CliRun run = CliRun.of("simulate", scenario, "--trace=" + folder.resolve("t.csv"));
    assertEquals(2, run.exitCode());
    assertEquals("", run.out());
    assertTrue(run.err().startsWith("--trace needs --plan, since Small yard has 3 plans"));
    assertFalse(Files.exists(folder.resolve("t.csv")));
  }

  @Test
  void traceIsNeverWrittenOverAFileUnasked() throws IOException {
    Path trace = folder.resolve("t.csv");
    String[] words = {"simulate", scenario, "--plan=Dribble", "--trace=" + trace};
    CliRun first = CliRun.of(words);
    assertEquals(0, first.exitCode());
    assertEquals("wrote " + trace + "\nwrote " + trace + ".manifest.json\n", first.err());
    List<String> lines = Files.readAllLines(trace);
    assertEquals(1 + 151, lines.size(), "a header and every day of the run");
    assertTrue(lines.get(0).startsWith("day,doy,temperature_c,adults_healthy,"), lines.get(0));
    CliRun again = CliRun.of(words);
    assertEquals(2, again.exitCode());
    assertTrue(again.err().startsWith(trace + " and 1 other file exist already"), again.err());
    assertEquals("", again.out(), "it refuses before it prints");
  }

  @Test
  void writesACurveForEachPlanAndTheDays() throws IOException {
    Path results = folder.resolve("results");
    CliRun run = CliRun.of("simulate", scenario, "--out=" + results);
    assertEquals(0, run.exitCode(), run.err());
    assertEquals(
        Set.of(
            "manifest.json",
            "daily.csv",
            "mites-1-do-nothing.png",
            "mites-2-gel-twice.png",
            "mites-3-dribble.png"),
        SmallScenario.files(results).keySet());
    assertEquals(1 + 3 * 151, Files.readAllLines(results.resolve("daily.csv")).size());
    assertEquals(2, CliRun.of("simulate", scenario, "--out=" + results).exitCode());
  }

  private static int count(String text, String part) {
    return text.split(part, -1).length - 1;
  }

  @Test
  void ledgerIsTheAccountOfEveryPlan() throws IOException {
    Path ledger = folder.resolve("account.csv");
    CliRun run = CliRun.of("simulate", scenario, "--ledger=" + ledger);
    assertEquals(0, run.exitCode(), run.err());
    List<String> lines = Files.readAllLines(ledger);
    assertEquals(1 + 3 * 151, lines.size());
    assertTrue(lines.get(0).startsWith("plan,date,mites_before,mites_born,"), lines.get(0));
    for (String line : lines.subList(1, lines.size())) {
      double difference = Double.parseDouble(line.substring(line.lastIndexOf(',') + 1));
      assertEquals(0, difference, 1e-6);
    }
    assertTrue(lines.get(152).startsWith("\"Gel, twice\",2026-08-08,"), lines.get(152));
  }
}
