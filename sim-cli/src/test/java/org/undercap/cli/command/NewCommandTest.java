package org.undercap.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercap.advice.RuledOut;
import org.undercap.cli.CliRun;
import org.undercap.scenario.Scenario;
import org.undercap.scenario.io.ScenarioReader;

class NewCommandTest {
  @TempDir Path folder;

  @Test
  void usualAnswersMakeAGoodFile() {
    Path file = folder.resolve("usual.yaml");
    CliRun made = CliRun.of("new", "--defaults", file.toString());
    assertEquals(0, made.exitCode(), made.err());
    assertEquals("", made.out());
    assertTrue(made.err().contains("next: "), made.err());
    assertEquals(0, CliRun.of("check", file.toString()).exitCode());
    CliRun again = CliRun.of("new", "--defaults", file.toString());
    assertEquals(2, again.exitCode());
    assertEquals(
        file + ": exists already; name another file\nTry 'undercap new --help'.\n", again.err());
  }

  @Test
  void answersMayBePipedInWithKeepersUnits() throws IOException {
    Path file = folder.resolve("piped.yaml");
    CliRun made =
        answering(
            "North Voe\ncool-oceanic\n2026-09-24\n\n4 1/2 lb\n140 sq in\nopen\n\n9 in half a cup\n\n",
            file);
    assertEquals(0, made.exitCode(), made.err());
    assertTrue(made.err().contains("10. "), made.err());
    String text = Files.readString(file);
    assertTrue(text.contains("bees: half a cup, mites: 9"), text);
    CliRun check = CliRun.of("check", "--assumptions", file.toString());
    assertEquals(0, check.exitCode(), check.err());
    assertTrue(check.out().contains("\"4 1/2 lb\" is taken as 18063 bees"), check.out());
  }

  @Test
  void writesOnlyPlansThatNothingRulesOut() throws IOException {
    for (String place :
        List.of(
            "cool-oceanic 2026-09-24",
            "continental-cold 2026-08-18",
            "mediterranean 2026-07-20",
            "southern-temperate 2026-02-20",
            "continental-cold 2026-11-25")) {
      String[] where = place.split(" ", -1);
      Path file = folder.resolve(place.replace(' ', '-') + ".yaml");
      CliRun made =
          CliRun.of(
              "new", "--defaults", "--climate=" + where[0], "--date=" + where[1], file.toString());
      assertEquals(0, made.exitCode(), made.err());
      Scenario scenario = ScenarioReader.read(file).orThrow();
      RuledOut rules = new RuledOut(scenario);
      assertTrue(scenario.plans().size() > 1, place);
      scenario.plans().forEach(plan -> assertEquals(List.of(), rules.reasons(plan), place));
    }
  }

  @Test
  void plansBeginAfterTheHoneyIsOff() throws IOException {
    Path file = folder.resolve("honey.yaml");
    CliRun made =
        CliRun.of("new", "--defaults", "--date=2026-08-01", "--supers=2026-08-20", file.toString());
    assertEquals(0, made.exitCode(), made.err());
    assertTrue(Files.readString(file).contains("{date: 2026-08-22, treatment: formic-pads}"));
  }

  @Test
  void boardsAreCountsToo() throws IOException {
    Path file = folder.resolve("board.yaml");
    assertEquals(
        0, CliRun.of("new", "--defaults", "--count=56 in 1 week", file.toString()).exitCode());
    assertTrue(Files.readString(file).contains("days: 7, mites: 56"));
  }

  @Test
  void wrongAnswersAreToldWithWhatToTry() {
    Path file = folder.resolve("wrong.yaml");
    CliRun percent = CliRun.of("new", "--defaults", "--count=3.7 %", file.toString());
    assertEquals(2, percent.exitCode());
    assertTrue(percent.err().contains("not the percent"), percent.err());
    CliRun swapped = CliRun.of("new", "--defaults", "--count=300 in 11 bees", file.toString());
    assertTrue(swapped.err().contains("swapped"), swapped.err());
    CliRun piped = answering("My colony\nmoon\n", file);
    assertEquals(3, piped.exitCode());
    String last = piped.err().strip();
    last = last.substring(last.lastIndexOf('\n') + 1);
    assertTrue(last.startsWith("answer 2, \"Which climate comes nearest to the place?\": "), last);
    assertTrue(last.contains("moon") && last.contains("cool-oceanic, "), last);
    assertTrue(last.endsWith("; nothing was written"), last);
    assertFalse(Files.exists(file));
  }

  @Test
  void answersThatEndTooSoonAreNotMadeUp() throws IOException {
    Path file = folder.resolve("short.yaml");
    CliRun run = answering("My colony\ncentral-european\n", file);
    assertEquals(3, run.exitCode());
    assertTrue(run.err().contains("the answers end before question 3 ("), run.err());
    assertFalse(Files.exists(file));
  }

  @Test
  void aFailedWriteLeavesNothingBehind() throws IOException {
    Path notAFolder = Files.writeString(folder.resolve("file"), "mine");
    CliRun run = CliRun.of("new", "--defaults", notAFolder.resolve("colony.yaml").toString());
    assertEquals(2, run.exitCode(), run.err());
    assertTrue(run.err().contains("is a file, not a folder"), run.err());
    Path deep = folder.resolve("new/folder/colony.yaml");
    assertEquals(0, CliRun.of("new", "--defaults", deep.toString()).exitCode());
    assertTrue(Files.exists(deep));
  }

  private static CliRun answering(String answers, Path file) {
    InputStream before = System.in;
    try {
      System.setIn(new ByteArrayInputStream(answers.getBytes(StandardCharsets.UTF_8)));
      return CliRun.of("new", file.toString());
    } finally {
      System.setIn(before);
    }
  }
}
