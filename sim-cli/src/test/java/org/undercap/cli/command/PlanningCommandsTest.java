package org.undercap.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercap.cli.CliRun;

/** The commands timing, plan and apiary. */
class PlanningCommandsTest {
  private static final String SCENARIO =
      """
      undercap: 1
      name: Small
      site: {climate: central-european}
      colony: {date: 2026-08-08, bees: 9 frames, brood: 5 frames, frame: zander}
      mites:
        counts:
          - wash: {date: 2026-08-08, bees: 300, mites: 9, method: alcohol}
      plans:
        - name: Strips
          steps:
            - {date: 2026-08-10, treatment: amitraz-strips}
      """;
  private static final String TABLE =
      """
      colony,bees,brood,wash_bees,wash_mites,method,note
      calm,9 frames,4 frames,300,1,soap,
      bad,8 frames,4 frames,300,30,,old queen
      unseen,9 frames,4 frames,,,,
      """;
  @TempDir private Path folder;
  private String scenario;

  @BeforeEach
  void writeFiles() throws IOException {
    scenario = write("small.yaml", SCENARIO);
  }

  private String write(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.writeString(file, text);
    return file.toString();
  }

  private CliRun timing(String... more) {
    return run(
        List.of("timing", scenario, "--members", "16", "--until", "2026-10-17", "--every", "14"),
        more);
  }

  private CliRun plan(String... more) {
    return run(List.of("plan", scenario, "--members", "16", "--schedules", "80"), more);
  }

  private CliRun apiary(String table, String... more) {
    return run(List.of("apiary", table, "--scenario", scenario, "--members", "8"), more);
  }

  private static CliRun run(List<String> words, String... more) {
    List<String> all = new ArrayList<>(words);
    all.addAll(Arrays.asList(more));
    return CliRun.of(all.toArray(String[]::new));
  }

  private static JsonNode json(CliRun run) throws IOException {
    assertEquals(0, run.exitCode(), run.err());
    return new ObjectMapper().readTree(run.out());
  }

  @Test
  void timingTellsTheBestAndTheLastStart() {
    CliRun run = timing("--method", "thymol-wafer,oxalic-sublimation");
    assertEquals(0, run.exitCode(), run.err());
    assertEquals("", run.err());
    assertTrue(run.out().startsWith("Small: when to treat, from 8 August 2026\n"), run.out());
    assertTrue(run.out().contains("\nthymol wafer, 2 times 21 days apart\nstart"), run.out());
    assertTrue(run.out().contains("\noxalic acid vapour\nstart"), run.out());
    assertTrue(run.out().contains("\noxalic acid vapour, 4 times 5 days apart\n"), run.out());
    assertTrue(run.out().contains("last in time"), run.out());
    assertTrue(run.out().contains("no: too cold, only"), run.out());
    assertTrue(run.out().contains("- Winter treatment with oxalic acid: best from about"));
    assertTrue(run.out().contains("\n- Oxalic acid vapour: "), "caution of the method");
    assertTrue(run.out().contains("\n- Thymol: "), "caution of the method");
  }

  @Test
  void timingTakesTheTreatmentsOfThePlansUnlessToldOtherwise() throws IOException {
    JsonNode timing = json(timing("--json"));
    assertEquals("undercap-timing", timing.get("schema").asText());
    assertEquals(1, timing.get("courses").size());
    JsonNode course = timing.get("courses").get(0);
    assertEquals("amitraz-strips", course.get("method").asText());
    assertEquals(6, course.get("starts").size());
    assertEquals("2026-08-08", course.get("bestStart").asText());
    assertTrue(course.get("lastStartChanceFraction").asDouble() > 0);
    assertTrue(timing.get("cautions").size() > 2);
  }

  @Test
  void timingWritesChartAndTables() throws IOException {
    Path out = folder.resolve("out");
    CliRun run = timing("--out", out.toString(), "--svg");
    assertEquals(0, run.exitCode(), run.err());
    List<String> starts = Files.readAllLines(out.resolve("starts.csv"));
    assertTrue(starts.get(0).startsWith("method,times,every_days,start,share_within_limits"));
    assertEquals(8, starts.size(), "a header, six dates and a row without treatment");
    assertTrue(
        Files.readString(out.resolve("broodless.csv")).startsWith("date,broodless_fraction"));
    assertTrue(Files.size(out.resolve("waiting.png")) > 5000);
    String svg = Files.readString(out.resolve("waiting.svg"));
    assertTrue(svg.contains("Two panels with the start of the treatment across"), "alternative");
    assertEquals(timing().out(), Files.readString(out.resolve("timing.txt")));
  }

  @Test
  void timingRefusesWrongDatesAndNames() {
    CliRun early = timing("--from", "2026-01-01");
    assertEquals(2, early.exitCode());
    assertTrue(
        early.err().contains("2026-01-01 to 2026-10-17 must lie in 2026-08-08"), early.err());
    CliRun mistyped = timing("--method", "thymol-gle");
    assertEquals(2, mistyped.exitCode());
    assertTrue(mistyped.err().contains("thymol-gel"), mistyped.err());
    assertEquals(2, timing("--every", "0").exitCode());
  }

  @Test
  void planShowsSchedulesAndHowManyWereTried() {
    CliRun run = plan();
    assertEquals(0, run.exitCode(), run.err());
    assertTrue(run.out().contains("Least harm to the winter bees: "), run.out());
    assertTrue(run.out().contains("How it was searched\n- 1 course: "), run.out());
    assertTrue(run.out().contains("each on 16 simulated seasons"), run.out());
    assertTrue(run.out().contains("- Cost was not weighed: "), run.out());
    assertTrue(run.out().contains("\nCautions\n- About this report: "), run.out());
  }

  @Test
  void planWritesItsFilesAndTheSameAgain() throws IOException {
    Path out = folder.resolve("out");
    CliRun run = plan("--out", out.toString(), "--json", "--threads", "2");
    JsonNode found = json(run);
    assertTrue(found.get("schedules").size() > 1);
    assertEquals(4, found.get("rounds").size());
    assertEquals(run.out(), Files.readString(out.resolve("plan.json")));
    assertEquals(run.out(), plan("--json", "--threads", "1").out());
    List<String> rows = Files.readAllLines(out.resolve("schedules.csv"));
    assertEquals(found.get("schedules").size() + 1, rows.size());
  }

  @Test
  void planWeighsCostsIfAllAreKnown() throws IOException {
    scenario = write("cost.yaml", SCENARIO + "allowed: [formic-pads]\ncosts: {formic-pads: 6.5}\n");
    CliRun run = plan();
    assertTrue(run.out().contains("cost"), run.out());
    assertFalse(run.out().contains("Cost was not weighed"), run.out());
    assertTrue(run.out().contains("6.5"), run.out());
  }

  @Test
  void apiaryNamesTheMostWorryingColonyFirst() throws IOException {
    CliRun run = apiary(write("colonies.csv", TABLE));
    assertEquals(0, run.exitCode(), run.err());
    int bad = run.out().indexOf("\nbad ");
    int calm = run.out().indexOf("\ncalm ");
    int unseen = run.out().indexOf("\nunseen ");
    assertTrue(bad > 0 && bad < calm && calm < unseen, run.out());
    assertTrue(run.out().contains("\"Strips\" protects the winter bees of this yard best"));
    assertTrue(run.out().contains("Treat all colonies on one day."), run.out());
    assertTrue(run.out().replaceAll("\\s+", " ").contains("was not modelled"), run.out());
    assertTrue(run.err().contains("colonies.csv:3:30: doubtful: method: not given"), run.err());
    assertTrue(run.err().contains("colonies.csv:4:1: doubtful: colony: nothing"), run.err());
  }

  @Test
  void apiaryWritesTablesAndJson() throws IOException {
    Path out = folder.resolve("out");
    CliRun run = apiary(write("colonies.csv", TABLE), "--json", "--out", out.toString());
    JsonNode yard = json(run);
    assertEquals("bad", yard.get("colonies").get(0).get("colony").asText());
    assertEquals("ALL_ON_ONE_DAY", yard.get("together").get("advice").asText());
    List<String> colonies = Files.readAllLines(out.resolve("colonies.csv"));
    assertEquals(4, colonies.size());
    assertTrue(colonies.get(1).startsWith("bad,"));
    assertTrue(colonies.get(3).startsWith("unseen,,,,,,,"));
    assertEquals(3, Files.readAllLines(out.resolve("plans.csv")).size());
  }

  @Test
  void apiaryTellsAllMistakesOfItsTable() throws IOException {
    CliRun run = apiary(write("bad.csv", "colony,bees\nA,9 frams\nA,x\n"));
    assertEquals(3, run.exitCode());
    assertEquals("", run.out());
    assertTrue(run.err().contains("bad.csv:2:3: error: bees: unknown unit"), run.err());
    assertTrue(run.err().contains("bad.csv:3:1: error: colony: A is there twice"), run.err());
  }

  @Test
  void thereIsNoAdviceOutsideTheTestedRange() throws IOException {
    scenario =
        write(
            "few.yaml", SCENARIO.replace("9 frames", "2000 bees").replace("5 frames", "500 cells"));
    for (CliRun run : List.of(timing(), plan(), apiary(write("colonies.csv", TABLE)))) {
      assertEquals(4, run.exitCode(), run.err());
      assertTrue(run.out().contains("No advice"), run.out());
    }
  }

  @Test
  void studyRunsAreStamped() throws IOException {
    scenario = write("study.yaml", SCENARIO + "study: true\n");
    for (CliRun run : List.of(timing(), plan(), apiary(write("colonies.csv", TABLE)))) {
      assertTrue(run.out().contains("\nSTUDY RUN, NOT ADVICE\n"), run.out());
    }
  }

  @Test
  void theLanguageOfTheMachineDoesNotMatter() {
    String[] words = {"plan", scenario, "--members", "8", "--schedules", "30"};
    assertEquals(CliRun.of(words).out(), CliRun.in(Locale.forLanguageTag("ar-EG"), words).out());
  }
}
