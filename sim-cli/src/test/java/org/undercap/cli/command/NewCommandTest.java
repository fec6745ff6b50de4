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
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercap.advice.RuledOut;
import org.undercap.cli.CliRun;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;
import org.undercap.scenario.io.ScenarioReader;

class NewCommandTest {
  /** Answers of a keeper, with a place for the count. */
  private static final String ANSWERS =
      """
      52 N
      18 August 2026
      9 frames
      3 frames
      two thirds
      Zander
      %s
      no

      none
      organic


      """;

  @TempDir Path folder;

  @Test
  void examplesAreMarkedAsSuch() throws IOException {
    Path file = folder.resolve("north-yard.yaml");
    CliRun made = CliRun.of("new", "--defaults", "--bees=4 lb", file.toString());
    assertEquals(0, made.exitCode(), made.err());
    assertEquals("", made.out());
    String facts = "climate, date, brood, fullness, frame, count and supers";
    assertTrue(words(made).contains("an EXAMPLE, not your colony: " + facts), made.err());
    String text = Files.readString(file);
    assertTrue(text.startsWith("# EXAMPLE, not your colony: "), text);
    assertTrue(text.contains(facts) && text.contains("name: \"Example North yard\""), text);
    assertEquals(0, CliRun.of("check", file.toString()).exitCode());
    CliRun again = CliRun.of("new", "--defaults", file.toString());
    assertEquals(2, again.exitCode());
    assertEquals(
        file + ": exists already; name another file\nTry 'undercap new --help'.\n", again.err());
  }

  @Test
  void aFileOfOwnFactsIsNoExample() throws IOException {
    Path file = folder.resolve("own.yaml");
    CliRun made =
        answering(ANSWERS.formatted("9 in 300 bees, alcohol"), file, "--treat-from=2026-08-20");
    assertEquals(0, made.exitCode(), made.err());
    String text = Files.readString(file);
    assertFalse(text.contains("EXAMPLE") || made.err().contains("EXAMPLE"), text + made.err());
    assertTrue(text.contains("name: \"Own\""), text);
    assertTrue(text.contains("date: 2026-08-18 "), text);
    assertTrue(text.contains("brood: 3 frames two thirds full "), text);
    assertTrue(text.contains("frame: zander\n"), text);
    assertTrue(text.contains("bees: 300, mites: 9, method: alcohol}"), text);
    assertTrue(text.contains("done: []"), text);
    assertTrue(text.contains("organic: true"), text);
    assertFalse(text.contains("floor:") || text.contains("arrivals:"), text);
    assertTrue(made.err().endsWith("next, type: undercap compare " + file + "\n"), made.err());
    assertTrue(made.err().contains("  colony.floor: the floor is closed\n"), made.err());
    assertEquals(
        12 * 2 * 3200 / 6.0, ScenarioReader.read(file).orThrow().hive().broodCells(), 1e-9);
    CliRun compare =
        CliRun.of("compare", file.toString(), "--members=3", "--out=" + folder.resolve("answer"));
    assertEquals(0, compare.exitCode(), compare.err());
  }

  @Test
  void noFactIsTakenForGranted() {
    String[] lines = ANSWERS.formatted("9 in 300 bees, alcohol").split("\n", -1);
    List<String> asked =
        List.of(
            "Where does the colony stand?",
            "On which day did you look into it?",
            "How many bees?",
            "How much brood, eggs to sealed?",
            "How full of brood are they?",
            "Which frames has the hive?",
            "What did you count?",
            "Are honey supers on, and until when?");
    for (int i = 0; i < asked.size(); i++) {
      String[] typed = lines.clone();
      typed[i] = "";
      Path file = folder.resolve("empty-" + i + ".yaml");
      CliRun run = answering(String.join("\n", typed), file);
      assertEquals(3, run.exitCode(), run.err());
      String last = lastLine(run);
      assertTrue(
          last.startsWith("answer to \"" + asked.get(i) + "\": this must be answered; "), last);
      assertTrue(last.endsWith("; nothing was written"), last);
      assertFalse(Files.exists(file));
    }
  }

  @Test
  void everyQuestionHasAnOption() throws IOException {
    Path file = folder.resolve("options.yaml");
    CliRun made =
        answering(
            "",
            file,
            "--climate=37 S",
            "--date=20 February 2026",
            "--bees=11 seams",
            "--brood=5 sides",
            "--fullness=half",
            "--frame=Langstroth deep",
            "--count=4 in half a cup",
            "--method=sugar",
            "--supers=until 1 March 2026",
            "--feeding=from 25 February 2026 to 10 March 2026",
            "--done=oxalic dribble on 3 July 2025; formic pads on 1 Feb 2026, 2 times every 7 days",
            "--treatments=thymol gel, formic acid",
            "--floor=mesh",
            "--arrivals=dense",
            "--name=Hive 7",
            "--treat-from=2026-02-25");
    assertEquals(0, made.exitCode(), made.err());
    String text = Files.readString(file);
    for (String line :
        List.of(
            "name: \"Hive 7\"",
            "latitude: -37",
            "brood: 5 sides half full",
            "bees: half a cup, mites: 4, method: sugar",
            "supers-until: 2026-03-01",
            "- {from: 2026-02-25, until: 2026-03-10}",
            "- {date: 2025-07-03, treatment: oxalic-dribble}",
            "- {date: 2026-02-01, treatment: formic-pads, times: 2, every: 7 days}",
            "allowed: [thymol-gel, formic-pads, formic-dispenser]",
            "floor: open",
            "arrivals: dense",
            "- {date: 2026-03-03, treatment: thymol-gel")) {
      assertTrue(text.contains(line), line + "\n" + text);
    }
  }

  @Test
  void answersMayBePipedInWithKeepersUnits() throws IOException {
    Path file = folder.resolve("piped.yaml");
    CliRun made =
        answering(
            """
            cool-oceanic
            2026-09-24
            4 1/2 lb
            140 sq in
            national deep
            9 in half a cup
            soap
            no



            open

            """,
            file);
    assertEquals(0, made.exitCode(), made.err());
    assertTrue(made.err().contains("\n12. Do mites"), made.err());
    assertTrue(made.err().contains("\n6b. In what"), made.err());
    String text = Files.readString(file);
    assertTrue(text.contains("bees: half a cup, mites: 9, method: soap"), text);
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
      for (String may : List.of("any", "organic", "oxalic acid", "pyrethroid-strips")) {
        Path file = folder.resolve((place + " " + may).replace(' ', '-') + ".yaml");
        CliRun made =
            CliRun.of(
                "new",
                "--defaults",
                "--climate=" + where[0],
                "--date=" + where[1],
                "--treatments=" + may,
                "--treat-from=" + where[1],
                file.toString());
        assertEquals(0, made.exitCode(), made.err());
        Scenario scenario = ScenarioReader.read(file).orThrow();
        RuledOut rules = new RuledOut(scenario);
        boolean nothingFits = place.equals("continental-cold 2026-11-25");
        assertEquals(!nothingFits, scenario.plans().size() > 1, place + " " + may);
        assertEquals(nothingFits, made.err().contains("(nothing that you may use"), made.err());
        scenario.plans().forEach(plan -> assertEquals(List.of(), rules.reasons(plan), place));
      }
    }
  }

  @Test
  void aTreatmentInWinterFollowsThatInAutumn() throws IOException {
    Path file = folder.resolve("two.yaml");
    CliRun made =
        CliRun.of(
            "new",
            "--defaults",
            "--climate=temperate-oceanic",
            "--date=2026-08-18",
            "--treat-from=20 August 2026",
            "--treatments=thymol or formic, oxalic & amitraz",
            "--fullness=don't know",
            file.toString());
    assertEquals(0, made.exitCode(), made.err());
    Scenario scenario = ScenarioReader.read(file).orThrow();
    List<String> plans = scenario.plans().stream().map(Plan::name).toList();
    assertEquals(
        List.of(
            "Do nothing",
            "Thymol gel twice, then dribble on 22 Dec",
            "Formic acid pads, then dribble on 22 Dec",
            "Oxalic acid vapour four times, then dribble on 22 Dec",
            "Amitraz strips, then dribble on 22 Dec",
            "Thymol wafer twice, then dribble on 22 Dec",
            "Oxalic acid dribble on 22 Dec"),
        plans);
    String told = words(made);
    assertTrue(
        told.contains("in none of them: formic-dispenser, oxalic-glycerine-strips, since"), told);
    String text = Files.readString(file);
    assertTrue(text.contains("brood: 3 frames two thirds full # how full they are was gu"), text);
  }

  @Test
  void plansBeginAfterTheHoneyIsOff() throws IOException {
    Path file = folder.resolve("honey.yaml");
    CliRun made =
        CliRun.of(
            "new",
            "--defaults",
            "--date=2026-08-01",
            "--supers=2026-08-20",
            "--treat-from=2026-08-03",
            file.toString());
    assertEquals(0, made.exitCode(), made.err());
    assertTrue(Files.readString(file).contains("{date: 2026-08-22, treatment: formic-pads}"));
  }

  @Test
  void noPlanBeginsInThePast() throws IOException {
    LocalDate today = LocalDate.now(ZoneId.systemDefault());
    for (int old : List.of(0, 20, 45)) {
      Path file = folder.resolve("old-" + old + ".yaml");
      CliRun made =
          CliRun.of("new", "--defaults", "--date=" + today.minusDays(old), file.toString());
      assertEquals(0, made.exitCode(), made.err());
      Scenario scenario = ScenarioReader.read(file).orThrow();
      LocalDate first = scenario.end().isAfter(today.plusDays(2)) ? today : scenario.start();
      scenario.plans().stream()
          .flatMap(plan -> plan.steps().stream())
          .forEach(step -> assertFalse(step.date().isBefore(first), step + " " + today));
      assertEquals(old > 30, made.err().contains("the facts are " + old + " days old"), made.err());
    }
    Path file = folder.resolve("study.yaml");
    CliRun past = CliRun.of("new", "--defaults", "--date=2020-08-01", file.toString());
    assertTrue(past.err().contains("the season is over"), past.err());
    assertTrue(Files.readString(file).contains("{date: 2020-08-03, "), past.err());
  }

  @Test
  void boardsAreCountsToo() throws IOException {
    Path file = folder.resolve("board.yaml");
    assertEquals(
        0, CliRun.of("new", "--defaults", "--count=56 in 1 week", file.toString()).exitCode());
    assertTrue(Files.readString(file).contains("days: 7, mites: 56"));
  }

  @Test
  void doubtfulCountsAreWarnedOfButTaken() {
    CliRun many = CliRun.of("new", "--defaults", "--count=200 in 300", at("many.yaml"));
    assertEquals(0, many.exitCode(), many.err());
    assertTrue(many.err().contains("warning: 200 mites on 300 bees is 67 per 100"), many.err());
    assertTrue(words(many).contains("is that mites in the whole wash"), many.err());
    CliRun none = CliRun.of("new", "--defaults", "--count=0 in 60", at("none.yaml"));
    assertTrue(none.err().contains("warning: no mite on 60 bees tells next to"), none.err());
    CliRun check = CliRun.of("check", at("many.yaml"));
    assertTrue(check.out().contains(": usable, 1 warning: "), check.out());
    assertTrue(check.out().contains("warning: mites.counts: 200 mites on 300 bees"), check.out());
    CliRun estimate = CliRun.of("estimate", at("many.yaml"));
    assertTrue(estimate.err().contains("many.yaml: warning: mites.counts: 200"), estimate.err());
  }

  @Test
  void wrongAnswersAreToldWithWhatToTry() {
    CliRun percent = CliRun.of("new", "--defaults", "--count=3.7 %", at("wrong.yaml"));
    assertEquals(2, percent.exitCode());
    assertTrue(percent.err().contains("not the percent"), percent.err());
    CliRun swapped = CliRun.of("new", "--defaults", "--count=300 in 11 bees", at("wrong.yaml"));
    assertTrue(swapped.err().contains("swapped"), swapped.err());
    CliRun piped = answering("moon\n", folder.resolve("wrong.yaml"));
    assertEquals(3, piped.exitCode());
    String last = lastLine(piped);
    assertTrue(last.startsWith("answer to \"Where does the colony stand?\": "), last);
    assertTrue(last.contains("moon") && last.contains("cool-oceanic, "), last);
    assertTrue(last.endsWith("; nothing was written"), last);
    CliRun needless =
        CliRun.of("new", "--defaults", "--brood=none", "--fullness=half", at("wrong.yaml"));
    assertEquals(2, needless.exitCode());
    assertTrue(needless.err().startsWith("--fullness: nothing to say"), needless.err());
    assertFalse(Files.exists(folder.resolve("wrong.yaml")));
  }

  @Test
  void answersThatDoNotFitTogetherAreRefusedByTheirQuestion() {
    CliRun piped =
        answering(
            ANSWERS.formatted("9 in 300 bees, alcohol").replace("9 frames", "1 frame"),
            folder.resolve("wrong.yaml"));
    assertEquals(3, piped.exitCode());
    String last = lastLine(piped);
    assertTrue(last.startsWith("answer to \"How much brood, eggs to sealed?\": "), last);
    assertTrue(last.contains("more brood than 2000 bees can cover"), last);
    CliRun option = CliRun.of("new", "--defaults", "--brood=20 frames", at("wrong.yaml"));
    assertEquals(2, option.exitCode());
    assertTrue(option.err().startsWith("--brood: "), option.err());
    assertFalse(Files.exists(folder.resolve("wrong.yaml")));
  }

  @Test
  void feedingThatIsOverIsAFactToo() throws IOException {
    Path file = folder.resolve("fed.yaml");
    CliRun made =
        answering(
            "",
            file,
            "--defaults",
            "--climate=52 N",
            "--date=8 September 2026",
            "--feeding=25 August 2026");
    assertEquals(0, made.exitCode(), made.err());
    String text = Files.readString(file);
    assertTrue(text.contains("{from: 2026-08-12, until: 2026-08-25}   # first day guessed"), text);
    assertEquals(0, CliRun.of("check", file.toString()).exitCode());
  }

  @Test
  void aPersonIsAskedAgain() throws IOException {
    Path file = folder.resolve("person.yaml");
    System.setProperty("undercap.terminal.in", "true");
    try {
      CliRun made =
          answering(
              ANSWERS
                  .formatted("what?\n3 %\n9 in 300 bees, alcohol")
                  .replace("18 August 2026", "8/9/2026\n\n18 August 2026"),
              file,
              "--treat-from=2026-08-20");
      assertEquals(0, made.exitCode(), made.err());
      assertTrue(words(made).contains("may be 8 September or 9 August; write the"), made.err());
      assertTrue(made.err().contains("this must be answered; The run begins"), made.err());
      assertTrue(made.err().contains("\"what?\" is no count; "), made.err());
    } finally {
      System.clearProperty("undercap.terminal.in");
    }
    assertTrue(Files.readString(file).contains("mites: 9, "));
  }

  @Test
  void aPersonIsAskedAgainForBeesAndBroodThatDoNotFit() throws IOException {
    Path file = folder.resolve("fit.yaml");
    System.setProperty("undercap.terminal.in", "true");
    try {
      String answers = ANSWERS.formatted("9 in 300 bees, alcohol").replace("9 frames", "1 frame");
      CliRun made = answering(answers + "9 frames\n3 frames\nhalf\n", file);
      assertEquals(0, made.exitCode(), made.err());
      assertTrue(words(made).contains("more brood than 2000 bees can cover; are"), made.err());
    } finally {
      System.clearProperty("undercap.terminal.in");
    }
    String text = Files.readString(file);
    assertTrue(text.contains("bees: 9 frames ") && text.contains("3 frames half full"), text);
  }

  @Test
  void answersThatEndTooSoonAreNotMadeUp() {
    Path file = folder.resolve("short.yaml");
    CliRun run = answering("central-european\n", file);
    assertEquals(3, run.exitCode());
    assertTrue(
        run.err().contains("the answers end before \"On which day did you look into it?\"; "),
        run.err());
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

  private String at(String name) {
    return folder.resolve(name).toString();
  }

  private static String words(CliRun run) {
    return run.err().replaceAll("\\s+", " ");
  }

  private static String lastLine(CliRun run) {
    String last = run.err().strip();
    return last.substring(last.lastIndexOf('\n') + 1);
  }

  private static CliRun answering(String answers, Path file, String... options) {
    List<String> words = new ArrayList<>(List.of("new", file.toString()));
    words.addAll(List.of(options));
    InputStream before = System.in;
    try {
      System.setIn(new ByteArrayInputStream(answers.getBytes(StandardCharsets.UTF_8)));
      return CliRun.of(words.toArray(String[]::new));
    } finally {
      System.setIn(before);
    }
  }
}
