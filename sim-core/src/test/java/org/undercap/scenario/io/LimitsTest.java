package org.undercap.scenario.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercap.parameter.ParameterChanges;
import org.undercap.scenario.Problem;
import org.undercap.scenario.Reading;
import org.undercap.scenario.Scenario;

/** What is too large, too deep, too long or too many: refused with few words. */
class LimitsTest {
  private static final int MOST_SHOWN = 101;
  private static final int LONGEST_MESSAGE = 1_000;

  @TempDir private Path folder;

  private static String refused(String text) {
    return messages(TestFiles.read(text));
  }

  private static String messages(Reading<?> reading) {
    List<Problem> problems = reading.problems();
    assertTrue(!problems.isEmpty(), "accepted");
    assertTrue(problems.size() <= MOST_SHOWN, problems.size() + " problems");
    for (Problem problem : problems) {
      assertTrue(problem.text().length() < LONGEST_MESSAGE, "length " + problem.text().length());
    }
    return problems.stream().map(Problem::text).collect(Collectors.joining("\n"));
  }

  private static void assertSays(String expected, String said) {
    assertTrue(said.contains(expected), said);
  }

  @Test
  void longFile() {
    String said = refused(TestFiles.SMALL + "# " + "x".repeat(200_000));
    assertSays("is larger than the 200 000 bytes that are accepted", said);
  }

  @Test
  void longNumbers() {
    String ones = "1".repeat(100_000);
    for (String number : List.of(ones, "0." + ones, "1" + ",000".repeat(40_000), "1e" + ones)) {
      assertSays("is longer than the 40 characters", refused(small("500}", quoted(number) + "}")));
      assertSays("is longer than the 40 characters", refused(small("18000", quoted(number))));
    }
    assertSays("too large", refused(small("500}", "1e999}")));
    refused(TestFiles.SMALL + "costs: {thymol-gel: " + ones + " EUR}\n");
    refused(small("9000 cells", quoted("1/" + ones + " box")));
  }

  @Test
  void longWords() {
    String word = "w".repeat(150_000);
    assertSays("longer than the 80 letters", refused(small("Small", word)));
    refused(small("central-european", word));
    refused(small("2026-08-08", word));
    refused(small("9000 cells", "9000 " + word));
    refused(TestFiles.SMALL + "? " + word + "\n: 1\n");
    refused("{" + quoted(word) + ": 1}");
  }

  @Test
  void manyMistakes() {
    String keys = "key";
    StringBuilder many = new StringBuilder(TestFiles.SMALL);
    for (int i = 0; i < 15_000; i++) {
      many.append(keys).append(i).append(": 1\n");
    }
    assertSays("has many more problems", refused(many.toString()));
  }

  @Test
  void manyPlansAndSteps() {
    String step = "{date: 2026-08-10, treatment: thymol-gel}, ";
    String tooManySteps = "plans: [{name: A, steps: [" + step.repeat(1_001) + "]}]\n";
    assertSays(
        "plans.steps: has 1001 entries, at most 1000", refused(TestFiles.SMALL + tooManySteps));
    assertSays("plans: has 1000 entries, at most 100 are", refused(TestFiles.SMALL + plans(1_000)));
    assertEquals(101, TestFiles.read(TestFiles.SMALL + plans(100)).orThrow().plans().size());
    assertSays(
        "has 60000 entries", refused(TestFiles.SMALL + "plans: [" + "{},".repeat(60_000) + "]"));
  }

  private static String plans(int count) {
    StringBuilder plans = new StringBuilder("plans:\n");
    for (int i = 0; i < count; i++) {
      plans.append("  - {name: P").append(i).append(", steps: []}\n");
    }
    return plans.toString();
  }

  @Test
  void deepNesting() {
    assertSays("nested deeper than 20 levels", refused("[".repeat(90_000)));
    assertSays("nested deeper than 20 levels", refused("a:\n" + "- ".repeat(90_000)));
    String json = "{\"a\":".repeat(30_000);
    assertSays(
        "nested deeper than 20 levels",
        messages(TestFiles.read("deep.json", json.getBytes(StandardCharsets.UTF_8))));
  }

  @Test
  void tenYears() {
    assertSays("3650 days is outside what is accepted: 1 to 1100 days", horizon("3650 days"));
    assertEquals(1_100, days(TestFiles.read(TestFiles.SMALL + "horizon: 1100 days\n").orThrow()));
  }

  private static String horizon(String text) {
    return refused(TestFiles.SMALL + "horizon: " + text + "\n");
  }

  private static long days(Scenario scenario) {
    return scenario.end().toEpochDay() - scenario.start().toEpochDay();
  }

  private static String small(String part, String other) {
    assertTrue(TestFiles.SMALL.contains(part));
    return TestFiles.SMALL.replace(part, other);
  }

  private static String quoted(String text) {
    return '"' + text + '"';
  }

  private String design(String text) throws IOException {
    Path design = Files.writeString(folder.resolve("design.csv"), text);
    Path scenario = Files.writeString(folder.resolve("small.yaml"), TestFiles.SMALL);
    return messages(DesignReader.check(design, Optional.of(scenario), ParameterChanges.none()));
  }

  @Test
  void designWithALongLineOrControls() throws IOException {
    assertSays(
        "the line is longer than the 20000 bytes", design("mites\n" + "1".repeat(9_000_000)));
    assertSays("2:2: error: the control character U+0000", design("mites\n1\0\n"));
  }

  private Reading<?> apiary(String text) throws IOException {
    Path file = Files.writeString(folder.resolve("apiary.csv"), text);
    return ApiaryReader.read(file, TestFiles.read(TestFiles.SMALL).orThrow());
  }

  @Test
  void manyRows() throws IOException {
    assertSays("more than 2000 colonies", messages(apiary("colony\n" + rows(2_001))));
    assertEquals(2_000, ((List<?>) apiary("colony\n" + rows(2_000)).orThrow()).size());
    assertSays("many more problems", messages(apiary("colony,bees\n" + rows(9_000))));
  }

  private static String rows(int count) {
    StringBuilder rows = new StringBuilder();
    for (int i = 0; i < count; i++) {
      rows.append('C').append(i).append('\n');
    }
    return rows.toString();
  }

  private static final String TABLE = "colony,wash_bees,wash_mites,note\nA,300,9,\nB,310,2,calm\n";

  @Test
  void tablesOfSpreadsheets() throws IOException {
    Object plain = apiary(TABLE).orThrow().toString();
    assertEquals(plain, apiary("\uFEFF" + TABLE.replace("\n", "\r\n")).orThrow().toString());
    assertSays("separated by commas", messages(apiary(TABLE.replace(',', ';'))));
    assertSays("separated by commas", messages(apiary(TABLE.replace(',', '\t'))));
    assertSays(
        "hint: write a decimal point: 300.5", messages(apiary(TABLE.replace("300", "\"300,5\""))));
    assertSays(
        "has 5 fields, the first line has 4", messages(apiary(TABLE.replace("300", "300,5"))));
  }

  private String temperatures(String rows) throws IOException {
    Files.writeString(folder.resolve("warm.csv"), rows);
    String site = "{climate: central-european, daily-temperatures: warm.csv}";
    Path file =
        Files.writeString(folder.resolve("warm.yaml"), small("{climate: central-european}", site));
    Reading<Scenario> reading = ScenarioReader.read(file);
    return reading.value().isPresent() ? "good" : messages(reading);
  }

  @Test
  void datesOfSpreadsheets() throws IOException {
    assertEquals("good", temperatures("date,temperature_c\n2026-08-08,13.5\n"));
    assertEquals("good", temperatures("\uFEFFdate,temperature_c\r\n2026-08-08,13.5\r\n"));
    for (String date : List.of("08.08.2026", "8/8/2026", "46242", "8-Aug-26", "2026-08-08 00:00")) {
      assertSays(
          "year-month-day, as in 2026-09-24", temperatures("date,temperature_c\n" + date + ",9\n"));
    }
    assertSays("decimal point", temperatures("date,temperature_c\n2026-08-08,13,5\n"));
    assertSays("does not name the columns", temperatures("date;temperature_c\n2026-08-08;13,5\n"));
  }
}
