package org.undercap.cli.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercap.cli.CliRun;
import org.undercap.cli.SmallScenario;

/** What {@code batch} writes and refuses. */
class BatchCommandTest {
  private static final int RUNS = 600;

  @TempDir private Path folder;
  private String scenario;
  private String design;

  @BeforeEach
  void writeDesign() throws IOException {
    scenario = SmallScenario.in(folder, "small.yaml");
    StringBuilder text = new StringBuilder("label,mites,plan,invasion.worker,climate\n");
    for (int i = 0; i < RUNS; i++) {
      text.append("run ").append(i).append(',').append(100 + i).append(',');
      text.append(i % 3 == 0 ? "" : i % 3 == 1 ? "Dribble" : "\"Gel, twice\"").append(',');
      text.append(i % 2 == 0 ? "" : 0.5 + i / 10_000.0).append(',');
      text.append(i % 5 == 0 ? "cool-oceanic" : "").append('\n');
    }
    design = Files.writeString(folder.resolve("design.csv"), text).toString();
  }

  private CliRun batch(String out, String... options) {
    List<String> words =
        new ArrayList<>(
            List.of("batch", design, "--scenario=" + scenario, "--out=" + folder.resolve(out)));
    words.addAll(List.of(options));
    return CliRun.of(words.toArray(String[]::new));
  }

  private byte[] read(String name) throws IOException {
    return Files.readAllBytes(folder.resolve(name));
  }

  private static String unpacked(byte[] bytes) throws IOException {
    try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(bytes))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Test
  void writesOneRowARunAndOneARunAndDay() throws IOException {
    CliRun run = batch("out", "--every=30");
    assertEquals(0, run.exitCode(), run.err());
    assertEquals("", run.out());
    List<String> runs = Files.readAllLines(folder.resolve("out/runs.csv"));
    assertEquals(RUNS + 1, runs.size());
    assertTrue(runs.get(0).startsWith("run,label,plan,climate,first_day,"), runs.get(0));
    assertTrue(
        runs.get(3).startsWith("3,run 2,\"Gel, twice\",central-european,2026-08-08,2027-01-05,,,"),
        runs.get(3));
    List<String> days = Files.readAllLines(folder.resolve("out/daily.csv"));
    assertEquals(6 * RUNS + 1, days.size());
    assertTrue(days.get(1).startsWith("1,2026-08-08,"), days.get(1));
    assertTrue(days.get(8).startsWith("2,2026-09-07,"), days.get(8));
    JsonNode manifest = new ObjectMapper().readTree(read("out/manifest.json"));
    assertEquals("--scenario=small.yaml", manifest.get("command").get(2).asText());
    assertEquals(2, manifest.get("inputs").size());
    assertEquals(2, manifest.get("outputs").size());
  }

  @Test
  void sameBytesForAnyNumberOfThreads() throws IOException {
    assertEquals(0, batch("one", "--threads=1", "--every=50").exitCode());
    assertEquals(0, batch("two", "--threads=2", "--every=50").exitCode());
    for (String name : List.of("runs.csv", "daily.csv", "manifest.json")) {
      assertArrayEquals(read("one/" + name), read("two/" + name), name);
    }
  }

  @Test
  void shardsJoinToTheWhole() throws IOException {
    for (String form : List.of("--format=csv", "--format=jsonl", "--gzip")) {
      String ending =
          form.equals("--gzip") ? ".csv.gz" : form.equals("--format=csv") ? ".csv" : ".jsonl";
      String whole = "whole" + ending;
      assertEquals(0, batch(whole, form, "--every=50").exitCode());
      for (int shards : List.of(2, 3, 11)) {
        String digits = shards > 9 ? "%02d" : "%d";
        ByteArrayOutputStream runs = new ByteArrayOutputStream();
        ByteArrayOutputStream days = new ByteArrayOutputStream();
        String out = "shards" + shards + ending;
        for (int shard = 1; shard <= shards; shard++) {
          CliRun part = batch(out, form, "--every=50", "--shard=" + shard + "/" + shards);
          assertEquals(0, part.exitCode(), part.err());
          String suffix = "-" + digits.formatted(shard) + "-of-" + shards + ending;
          runs.writeBytes(read(out + "/runs" + suffix));
          days.writeBytes(read(out + "/daily" + suffix));
        }
        assertArrayEquals(read(whole + "/runs" + ending), runs.toByteArray(), form + shards);
        assertArrayEquals(read(whole + "/daily" + ending), days.toByteArray(), form + shards);
      }
    }
    assertEquals(
        Files.readString(folder.resolve("whole.csv/daily.csv")),
        unpacked(read("whole.csv.gz/daily.csv.gz")));
  }

  @Test
  void jsonLinesHoldTheSameNumbers() throws IOException {
    assertEquals(0, batch("lines", "--format=jsonl", "--every=0").exitCode());
    assertEquals(0, batch("table", "--every=0").exitCode());
    assertFalse(Files.exists(folder.resolve("lines/daily.jsonl")));
    List<String> lines = Files.readAllLines(folder.resolve("lines/runs.jsonl"));
    List<String> table = Files.readAllLines(folder.resolve("table/runs.csv"));
    String comma = ",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)"; // one that is not within quotes
    String[] names = table.get(0).split(",", -1);
    assertEquals(RUNS, lines.size());
    for (int i : List.of(0, 1, 599)) {
      JsonNode line = new ObjectMapper().readTree(lines.get(i));
      String[] cells = table.get(i + 1).split(comma, -1);
      for (int column = 0; column < names.length; column++) {
        String value = line.has(names[column]) ? line.get(names[column]).asText() : "";
        assertEquals(cells[column].replace("\"", ""), value, names[column]);
      }
    }
  }

  @Test
  void runsThatCannotBeRunAreToldInTheirRow() throws IOException {
    design =
        Files.writeString(folder.resolve("bad.csv"), "ageing.flight.low\n\n7\n40\n").toString();
    CliRun run = batch("out", "--every=0");
    assertEquals(3, run.exitCode());
    assertTrue(
        run.err()
            .endsWith("1 run could not be run; the column problem of the table of runs says why\n"),
        run.err());
    List<String> rows = Files.readAllLines(folder.resolve("out/runs.csv"));
    assertTrue(rows.get(2).contains("parameter ageing.flight.low is 40.0"), rows.get(2));
  }

  @Test
  void wrongDesignIsToldWithAllItsProblems() throws IOException {
    design = Files.writeString(folder.resolve("bad.csv"), "mites,plan\nx,Gel\n").toString();
    CliRun run = batch("out");
    assertEquals(3, run.exitCode());
    assertTrue(run.err().contains("bad.csv:2:1: error: mites: "), run.err());
    assertTrue(run.err().contains("bad.csv:2:3: error: plan: unknown plan"), run.err());
    assertTrue(run.err().endsWith("\n2 problems\n"), run.err());
    assertFalse(Files.exists(folder.resolve("out")));
  }

  @Test
  void wrongOptionsAreWrongUse() {
    assertEquals(2, batch("out", "--shard=0/3").exitCode());
    assertEquals(2, batch("out", "--shard=half").exitCode());
    assertEquals(2, batch("out", "--format=xml").exitCode());
    assertEquals(2, batch("out", "--every=-1").exitCode());
    CliRun run = batch("out", "--columns=mites");
    assertEquals(2, run.exitCode());
    assertTrue(run.err().contains("mites_on_bees"), run.err());
  }

  @Test
  void existingResultsStay() throws IOException {
    assertEquals(0, batch("out", "--every=0").exitCode());
    byte[] before = read("out/runs.csv");
    CliRun again = batch("out", "--every=0");
    assertEquals(2, again.exitCode());
    assertTrue(again.err().contains("holds a finished batch already"), again.err());
    assertTrue(again.err().contains("--if-exists=skip keeps it"), again.err());
    assertTrue(again.err().contains("--if-exists=overwrite runs it anew"), again.err());
    CliRun kept = batch("out", "--every=0", "--if-exists=skip");
    assertEquals(0, kept.exitCode());
    assertTrue(kept.err().startsWith("kept "), kept.err());
    assertEquals(0, batch("out", "--every=0", "--if-exists=overwrite").exitCode());
    assertArrayEquals(before, read("out/runs.csv"));
  }

  @Test
  void sampleOfTheHelpRuns() throws IOException {
    String sample = BatchCommand.sample();
    assertEquals(4, sample.lines().count());
    String help = CliRun.of("help", "batch").out();
    sample.lines().forEach(row -> assertTrue(help.contains("\n" + row + "\n"), help));
    assertTrue(CliRun.of("columns", "DESIGN").out().contains(sample));
    Path file = Files.writeString(folder.resolve("sample.csv"), sample.replace("  ", ""));
    CliRun run =
        CliRun.of(
            "batch",
            file.toString(),
            "--scenario=" + Path.of("..", "scenarios", "saltmere-garth.yaml"),
            "--every=0",
            "--out=" + folder.resolve("sampled"));
    assertEquals(0, run.exitCode(), run.err());
    assertEquals(4, Files.readAllLines(folder.resolve("sampled/runs.csv")).size());
  }

  @Test
  void chosenColumnsStandInTheirOrder() throws IOException {
    assertEquals(0, batch("out", "--every=100", "--columns=mites_on_bees,day").exitCode());
    List<String> days = Files.readAllLines(folder.resolve("out/daily.csv"));
    assertEquals("run,date,mites_on_bees,day", days.get(0));
    assertTrue(days.get(2).endsWith(",100"), days.get(2));
    assertEquals(0, batch("all", "--every=100", "--columns=all").exitCode());
    assertTrue(
        Files.readAllLines(folder.resolve("all/daily.csv")).get(0).endsWith(",mites_removed"));
  }
}
