package org.undercap.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercap.cli.CliRun;
import org.undercap.cli.SmallScenario;

/** What {@code compare} prints and writes, and what it refuses. */
class CompareCommandTest {
  private static final Set<String> FILES =
      Set.of(
          "answer.html",
          "answer.md",
          "calendar.ics",
          "comparison.json",
          "curves.csv",
          "infestation.png",
          "outcomes.csv",
          "manifest.json",
          "plans.png",
          "record-sheet.html");

  @TempDir private Path folder;
  private String scenario;

  @BeforeEach
  void writeScenario() {
    scenario = SmallScenario.in(folder, "small.yaml");
  }

  @Test
  void tellsTheAnswerTheTableAndTheCautions() {
    CliRun run = compare("results");
    assertEquals(0, run.exitCode());
    assertTrue(run.out().startsWith("Small yard, 8 August 2026 to 5 January 2027\n"), run.out());
    assertTrue(run.out().contains("THE ANSWER\nThymol gel"), run.out());
    assertTrue(run.out().contains("500 mites"), run.out());
    assertTrue(
        run.out().matches("(?s).*\nDo nothing +[0-9.]+ % \\([0-9.]+-[0-9.]+\\).*"), run.out());
    assertTrue(run.out().contains("\nCAUTIONS\n- About this report: "), run.out());
    assertTrue(run.out().contains("\n- Thymol: "), run.out());
    assertTrue(run.out().contains("\n- Oxalic acid dribble: "), run.out());
    assertTrue(run.out().lines().allMatch(line -> line.length() <= 80), run.out());
    assertTrue(run.err().contains("and print it; count mites again\n"), run.err());
  }

  @Test
  void writesChartsTablesAndAPageAndNamesThem() {
    CliRun run = compare("results");
    Map<String, String> files = SmallScenario.files(folder.resolve("results"));
    assertEquals(FILES, files.keySet());
    for (String name : FILES) {
      assertTrue(run.err().contains("wrote " + folder.resolve("results/" + name) + "\n"), name);
    }
    String page = files.get("answer.md");
    assertTrue(page.contains("](plans.png)"), page);
    assertTrue(files.get("outcomes.csv").startsWith("plan,rank,outcome,mean,p10,"));
    assertTrue(files.get("outcomes.csv").contains("\n\"Gel, twice\",1,"));
  }

  @Test
  void drawsVectorChartsIfAsked() {
    CliRun run = compare("results", "--svg");
    assertEquals(0, run.exitCode(), run.err());
    Map<String, String> files = SmallScenario.files(folder.resolve("results"));
    assertTrue(files.get("plans.svg").contains("<svg"));
    assertTrue(files.get("infestation.svg").contains("<svg"));
  }

  @Test
  void cannotBeMadeToLeaveTheCautionsOut() throws IOException {
    Path bare = folder.resolve("bare.yaml");
    Files.writeString(bare, SmallScenario.TEXT.substring(0, SmallScenario.TEXT.indexOf("plans:")));
    CliRun run = CliRun.of("compare", bare.toString(), "--members=3", "--out=" + folder + "/bare");
    assertEquals(0, run.exitCode(), run.err());
    assertTrue(run.out().contains("THE ANSWER\n"), run.out());
    assertTrue(run.out().contains("\nCAUTIONS\n- About this report: "), run.out());
  }

  @Test
  void severalScenariosGetAFolderEachAndAPageThatListsThem() throws IOException {
    String other = SmallScenario.in(folder, "other.yaml");
    CliRun run =
        CliRun.of("compare", scenario, other, "--members=5", "--out=" + folder + "/results");
    assertEquals(0, run.exitCode(), run.err());
    assertTrue(run.out().startsWith("- small: Thymol gel"), run.out());
    assertTrue(run.out().contains("\n- other: Thymol gel"), run.out());
    assertTrue(run.out().contains("\nCautions\n- About this report: "), run.out());
    assertTrue(run.out().lines().allMatch(line -> line.length() <= 80), run.out());
    Map<String, String> files = SmallScenario.files(folder.resolve("results"));
    assertEquals(2 * FILES.size() + 1, files.size(), files.keySet().toString());
    assertTrue(files.get("README.md").contains("(other/answer.md)"));
    assertEquals(files.get("small/curves.csv"), files.get("other/curves.csv"));
    assertTrue(run.err().endsWith("wrote " + folder.resolve("results/README.md") + "\n"));
  }

  @Test
  void noAdviceOutsideWhatWasTested() {
    String untested = "../scenarios/serra-do-ipe-roxo.yaml";
    CliRun one = CliRun.of("compare", untested, "--out=" + folder + "/results");
    assertEquals(4, one.exitCode());
    assertTrue(one.out().contains("No advice. The model was not tested for "), one.out());
    assertEquals(
        Set.of("answer.html", "answer.md", "manifest.json"),
        SmallScenario.files(folder.resolve("results")).keySet());
  }

  @Test
  void scenarioWithoutAdviceIsNotLeftOutInSilence() {
    String untested = "../scenarios/serra-do-ipe-roxo.yaml";
    CliRun run =
        CliRun.of("compare", untested, scenario, "--members=3", "--out=" + folder + "/results");
    assertEquals(4, run.exitCode(), run.err());
    assertTrue(run.out().contains("- serra-do-ipe-roxo: No advice. The model"), run.out());
    Map<String, String> files = SmallScenario.files(folder.resolve("results"));
    assertTrue(files.get("README.md").contains("No advice. The model"));
    assertEquals(FILES.size() + 4, files.size(), files.keySet().toString());
  }

  @Test
  void neverOverwritesUnasked() {
    assertEquals(0, compare("results").exitCode());
    Map<String, String> before = SmallScenario.files(folder);
    CliRun again = compare("results", "--seed=7");
    assertEquals(2, again.exitCode());
    assertEquals("", again.out(), "it refuses before the long run");
    assertTrue(again.err().contains("give --if-exists=overwrite"), again.err());
    assertEquals(before, SmallScenario.files(folder));
    assertEquals(0, compare("results", "--seed=7", "--if-exists=overwrite").exitCode());
    assertNotEquals(before, SmallScenario.files(folder));
  }

  @Test
  void anyTakenNameStopsSeveralScenariosBeforeTheFirstIsWritten() throws IOException {
    String other = SmallScenario.in(folder, "other.yaml");
    Path page = Files.createDirectory(folder.resolve("results")).resolve("README.md");
    Files.writeString(page, "mine");
    CliRun run = CliRun.of("compare", scenario, other, "--out=" + folder + "/results");
    assertEquals(2, run.exitCode());
    assertEquals("", run.out());
    assertTrue(run.err().startsWith(page + " exists already"), run.err());
    assertEquals(
        Map.of("README.md", "mine"), SmallScenario.files(folder.resolve("results")), run.err());
  }

  @Test
  void twoScenariosOfOneFileNameAreRefused() {
    CliRun run = CliRun.of("compare", scenario, scenario, "--out=" + folder + "/results");
    assertEquals(2, run.exitCode());
    assertEquals("", run.out());
    assertTrue(run.err().contains("another scenario has the name small too"), run.err());
    assertFalse(Files.exists(folder.resolve("results")));
  }

  @Test
  void severalScenariosNeedAFolder() {
    CliRun run = CliRun.of("compare", scenario, SmallScenario.in(folder, "other.yaml"));
    assertEquals(2, run.exitCode());
    assertEquals("", run.out());
    assertTrue(run.err().startsWith("several scenarios need a folder: give --out=DIR"), run.err());
  }

  @Test
  void seedChangesTheNumbersAndThreadsChangeNothing() {
    CliRun one = compare("one", "--threads=1");
    CliRun two = compare("two", "--threads=2");
    CliRun seed = compare("seed", "--seed=2");
    assertEquals(one.out(), two.out());
    assertEquals(
        SmallScenario.files(folder.resolve("one")), SmallScenario.files(folder.resolve("two")));
    assertNotEquals(
        SmallScenario.files(folder.resolve("one")).get("outcomes.csv"),
        SmallScenario.files(folder.resolve("seed")).get("outcomes.csv"));
    assertEquals(0, seed.exitCode());
  }

  @Test
  void numbersOutOfRangeAreRefused() {
    for (String option : new String[] {"--members=0", "--threads=-1"}) {
      CliRun run = CliRun.of("compare", scenario, option);
      assertEquals(2, run.exitCode(), option);
      assertEquals("", run.out());
      assertTrue(run.err().contains(" must be "), run.err());
    }
  }

  @Test
  void brokenFilesAreAllToldBeforeAnythingRuns() throws IOException {
    Path bad = folder.resolve("bad.yaml");
    Files.writeString(bad, SmallScenario.TEXT.replace("18000", "18000000"));
    Path worse = folder.resolve("worse.yaml");
    Files.writeString(worse, SmallScenario.TEXT.replace("thymol-gel", "thymol-jelly"));
    CliRun run =
        CliRun.of("compare", bad + "", scenario, worse + "", "--out=" + folder + "/results");
    assertEquals(3, run.exitCode());
    assertEquals("", run.out());
    assertTrue(run.err().contains(bad + ":4:34: error: colony.bees: "), run.err());
    assertTrue(run.err().contains(worse + ":10:39: error: "), run.err());
    assertTrue(run.err().endsWith("\n3 problems\n"), run.err());
    assertFalse(Files.exists(folder.resolve("results")));
  }

  @Test
  void coloniesThatAllDieLeaveEmptyCells() throws IOException {
    scenario =
        Files.writeString(
                folder.resolve("hopeless.yaml"),
                SmallScenario.TEXT.replace("in-colony: 500", "in-colony: 60000"))
            .toString();
    assertEquals(0, compare("hopeless").exitCode());
    String outcomes = Files.readString(folder.resolve("hopeless/outcomes.csv"));
    assertTrue(outcomes.contains("Do nothing,2,mites_at_midwinter,,,,,,\n"), outcomes);
    assertEquals(0, compare("unused", "--json").exitCode());
  }

  private CliRun compare(String results, String... options) {
    String[] words = new String[options.length + 4];
    words[0] = "compare";
    words[1] = scenario;
    words[2] = "--members=20";
    words[3] = "--out=" + folder.resolve(results);
    System.arraycopy(options, 0, words, 4, options.length);
    return CliRun.of(words);
  }
}
