package org.undercap.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercap.cli.CliRun;
import org.undercap.cli.PngImages;
import org.undercap.cli.SmallScenario;
import org.undercap.lesson.Lesson;

/** The commands lesson, flip-chart and start-map. */
class LessonCommandTest {
  @TempDir private Path folder;

  private static CliRun good(String... words) {
    CliRun run = CliRun.of(words);
    assertEquals(0, run.exitCode(), run.err());
    return run;
  }

  @Test
  void withoutANameItListsTheLessons() {
    String list = good("lesson").out();
    assertEquals(list, good("lesson", "list").out());
    Lesson.ids().forEach(id -> assertTrue(list.contains(id), id));
  }

  @Test
  void oneLessonIsToldAndDrawn() {
    CliRun run = good("lesson", "four-dates", "--svg", "--out=" + folder.resolve("one"));
    for (String words : List.of("33 %", "What it cannot tell", "Question for the room")) {
      assertTrue(run.out().contains(words), words + " in " + run.out());
    }
    PngImages.assertDrawn(folder.resolve("one/four-dates.png"));
    assertTrue(Files.exists(folder.resolve("one/four-dates.svg")));
    assertTrue(Files.exists(folder.resolve("one/four-dates.csv")));
    CliRun again = CliRun.of("lesson", "four-dates", "--out=" + folder.resolve("one"));
    assertEquals(2, again.exitCode(), "files are not replaced silently");
  }

  @Test
  void southTellsSouthernDates() {
    String north = good("lesson", "four-dates").out();
    String south = good("lesson", "four-dates", "--hemisphere=south").out();
    assertTrue(north.contains("15 Aug") && south.contains("15 Feb"), south);
  }

  @Test
  void jsonHoldsNumbersAndData() throws IOException {
    JsonNode lesson =
        new ObjectMapper()
            .readTree(good("lesson", "waiting", "--json").out())
            .get("lessons")
            .get(0);
    assertEquals("waiting", lesson.get("id").asText());
    assertTrue(lesson.get("numbersSayIt").asBoolean());
    assertTrue(lesson.get("numbers").get("harmLast").asDouble() > 0.1);
    assertEquals(2, lesson.get("panels").size());
  }

  @Test
  void wrongWordsAreRefusedWithAHint() {
    CliRun run = CliRun.of("lesson", "four-date");
    assertEquals(2, run.exitCode());
    assertTrue(run.err().contains("four-dates"), run.err());
    assertEquals(2, CliRun.of("lesson", "year", "--climate=tundra").exitCode());
    assertEquals(2, CliRun.of("lesson", "year", "--audience=experts").exitCode());
    assertEquals(2, CliRun.of("lesson", "year", "--paper=poster").exitCode());
  }

  @Test
  void wordsCanBeTranslatedAndMistakesAreAllTold() throws IOException {
    String words = good("lesson", "words").out();
    Path whole = Files.writeString(folder.resolve("whole.txt"), words);
    String checked = good("lesson", "words", "--check=" + whole).out();
    assertTrue(checked.contains("good"), checked);
    Path own =
        Files.writeString(
            folder.resolve("own.txt"), "# mine\nlesson.four-dates.title = Eine Behandlung\n");
    String told = good("lesson", "four-dates", "--language-file=" + own).out();
    assertTrue(told.startsWith("Eine Behandlung\n"), told);
    Path bad =
        Files.writeString(
            folder.resolve("bad.txt"),
            "lesson.four-dates.titel = x\nlesson.four-dates.finding = {kiled1%}\nnothing\n");
    CliRun run = CliRun.of("lesson", "words", "--check=" + bad);
    assertEquals(3, run.exitCode());
    for (String part :
        List.of("bad.txt:1:", "bad.txt:2:", "{kiled1%}", "bad.txt:3:", "3 problems")) {
      assertTrue(run.err().contains(part), part + " in " + run.err());
    }
  }

  @Test
  void countsOfAClassAreHeldAgainstTheModel() throws IOException {
    Path counts =
        Files.writeString(
            folder.resolve("class.csv"),
            "date,bees,mites\n2026-07-05,300,4\n2026-08-09,310,7\n2026-09-20,300,150\n");
    Path out = folder.resolve("class");
    CliRun run = good("lesson", "class", "--counts=" + counts, "--members=50", "--out=" + out);
    assertTrue(run.out().contains("2 of 3 counts lie within"), run.out());
    assertTrue(run.out().contains("20\u00a0Sep") || run.out().contains("20 Sep"), run.out());
    PngImages.assertDrawn(out.resolve("class.png"));
    List<String> table = Files.readAllLines(out.resolve("class.csv"));
    assertTrue(table.get(3).endsWith(",true"), table.toString());
  }

  @Test
  void treatmentBetweenTheCountsCounts() throws IOException {
    Path counts =
        Files.writeString(
            folder.resolve("treated.csv"), "date,bees,mites\n2026-07-05,300,9\n2026-10-01,300,3\n");
    CliRun without = good("lesson", "class", "--counts=" + counts, "--members=50");
    assertTrue(without.out().contains("missed"), without.out());
    CliRun with =
        good(
            "lesson",
            "class",
            "--counts=" + counts,
            "--members=50",
            "--treated=amitraz-strips=2026-07-20");
    assertTrue(with.out().contains("All 2 counts"), with.out());
  }

  @Test
  void badCountsAreAllTold() throws IOException {
    Path counts =
        Files.writeString(
            folder.resolve("bad.csv"),
            "date,bees,mites\n2026-02-30,300,4\n2026-08-09,three,7\n2026-08-01,30,40\n");
    CliRun run = CliRun.of("lesson", "class", "--counts=" + counts);
    assertEquals(3, run.exitCode());
    for (String part : List.of("bad.csv:2:", "bad.csv:3:", "bad.csv:4:", "more than bees")) {
      assertTrue(run.err().contains(part), part + " in " + run.err());
    }
  }

  @Test
  void mapsMarkTheColony() throws IOException {
    String scenario = SmallScenario.in(folder, "small.yaml");
    Path out = folder.resolve("maps");
    CliRun flip = good("flip-chart", scenario, "--out=" + out);
    assertTrue(flip.out().contains("* this colony"), flip.out());
    CliRun map = good("start-map", scenario, "--out=" + out);
    assertTrue(map.out().contains("* on the day of the facts"), map.out());
    assertTrue(map.out().contains("not a prescription"), map.out());
    PngImages.assertDrawn(out.resolve("flip-chart.png"));
    PngImages.assertDrawn(out.resolve("start-map.png"));
    JsonNode json = new ObjectMapper().readTree(good("flip-chart", scenario, "--json").out());
    assertTrue(json.get("numbers").get("onBees").asDouble() < 1);
    assertEquals(2, CliRun.of("flip-chart", scenario, "--method=thymol-gel").exitCode());
  }
}
