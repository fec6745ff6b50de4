package org.undercap.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercap.cli.CliRun;
import org.undercap.cli.SmallScenario;

/** Every command that writes files leaves a manifest from which they can be made again. */
class RerunCommandTest {
  @TempDir private Path folder;
  private String scenario;
  private Path out;

  @BeforeEach
  void writeScenario() {
    scenario = SmallScenario.in(folder, "small.yaml");
    out = folder.resolve("out");
  }

  private CliRun rerun(String manifest) {
    return CliRun.of("rerun", folder.resolve(manifest).toString(), "--inputs=" + folder);
  }

  private void assertSame(int files, String manifest) {
    CliRun again = rerun(manifest);
    assertEquals(
        "the same, byte for byte: " + files + (files == 1 ? " file\n" : " files\n"), again.out());
    assertEquals(0, again.exitCode(), again.err());
    assertEquals("", again.err());
  }

  @Test
  void comparisonIsMadeAgain() {
    CliRun.of("compare", scenario, "--members=5", "--seed=7", "--svg", "--out=" + out);
    assertSame(11, "out/manifest.json");
  }

  @Test
  void parametersOfOnesOwnAreAmongTheFilesRead() throws IOException {
    Path values = parameters();
    CliRun.of("compare", scenario, "--members=5", "--parameters=" + values, "--out=" + out + "-c");
    assertSame(9, "out-c/manifest.json");
    Path design = Files.writeString(folder.resolve("design.csv"), "mites\n5\n");
    for (String option : List.of("--every=100", "--parameters=" + values)) {
      CliRun.of(
          "batch",
          design.toString(),
          "--scenario=" + scenario,
          option,
          "--out=" + out + (option.startsWith("--p") ? "-b" : "-a"));
    }
    assertSame(2, "out-b/manifest.json");
    String changed = Files.readString(folder.resolve("out-b/runs.csv"));
    assertNotEquals(Files.readString(folder.resolve("out-a/runs.csv")), changed);
  }

  private Path parameters() throws IOException {
    return Files.writeString(
        folder.resolve("fitted.yaml"),
        "undercap-parameters: 1\nvalues:\n  reproduction.worker: 0.8\n");
  }

  @Test
  void otherCommandsToo() throws IOException {
    CliRun.of("simulate", scenario, "--plan=Gel, twice", "--out=" + out);
    assertSame(2, "out/manifest.json");
    CliRun.of("timing", scenario, "--method=thymol-gel", "--members=4", "--out=" + out + "-t");
    assertSame(5, "out-t/manifest.json");
    CliRun.of("plan", scenario, "--schedules=30", "--members=4", "--out=" + out + "-p");
    assertSame(3, "out-p/manifest.json");
    Path yard =
        Files.writeString(folder.resolve("yard.csv"), "colony,wash_bees,wash_mites\nA,300,4\n");
    CliRun.of(
        "apiary", yard.toString(), "--scenario=" + scenario, "--members=4", "--out=" + out + "-a");
    assertSame(5, "out-a/manifest.json");
  }

  @Test
  void singleFilesHaveAManifestOfTheirOwn() {
    CliRun run =
        CliRun.of(
            "simulate",
            scenario,
            "--plan=Dribble",
            "--trace=" + folder.resolve("day.csv"),
            "--ledger=" + folder.resolve("account.csv"));
    assertEquals(0, run.exitCode(), run.err());
    assertSame(1, "day.csv.manifest.json");
    assertSame(1, "account.csv.manifest.json");
  }

  @Test
  void batchIsMadeAgain() throws IOException {
    Path design = Files.writeString(folder.resolve("design.csv"), "mites\n5\n6\n");
    CliRun.of("batch", design.toString(), "--scenario=" + scenario, "--out=" + out, "--gzip");
    assertSame(2, "out/manifest.json");
  }

  @Test
  void saysWhatDiffers() throws IOException {
    CliRun.of("simulate", scenario, "--out=" + out);
    Files.writeString(
        Path.of(scenario), SmallScenario.TEXT.replace("in-colony: 500", "in-colony: 501"));
    CliRun again = rerun("out/manifest.json");
    assertEquals(4, again.exitCode());
    List<String> lines = again.out().lines().toList();
    assertEquals(scenario + ": was read, and has changed since", lines.get(0));
    assertTrue(again.out().contains("daily.csv: differs from line 2, byte "), again.out());
  }

  @Test
  void missesWhatWasRead() throws IOException {
    CliRun.of("simulate", scenario, "--out=" + out);
    Files.delete(Path.of(scenario));
    CliRun again = rerun("out/manifest.json");
    assertEquals(4, again.exitCode());
    assertEquals(
        "small.yaml: was read, but is not found; name its folder with --inputs\n", again.out());
  }

  @Test
  void otherVersionIsSaid() throws IOException {
    CliRun.of("simulate", scenario, "--out=" + out);
    Path manifest = out.resolve("manifest.json");
    Files.writeString(
        manifest,
        Files.readString(manifest)
            .replaceFirst("\"programVersion\": \".*\"", "\"programVersion\": \"0.0.1\""));
    CliRun again = rerun("out/manifest.json");
    assertEquals(4, again.exitCode());
    assertTrue(again.out().startsWith("program: made with version 0.0.1, this is "), again.out());
  }

  @Test
  void refusesWhatIsNoManifest() throws IOException {
    assertEquals(3, rerun("small.yaml").exitCode());
    Path other = Files.writeString(folder.resolve("other.json"), "{\"schema\": \"other\"}");
    assertEquals(3, rerun(other.getFileName().toString()).exitCode());
    Path bad =
        Files.writeString(
            folder.resolve("bad.json"),
            "{\"schema\": \"undercap-manifest\", \"command\": [\"simulate\"], \"outputs\":"
                + " [{\"file\": \"../x\"}]}");
    CliRun run = rerun(bad.getFileName().toString());
    assertEquals(3, run.exitCode());
    assertTrue(run.err().contains("\"../x\""), run.err());
    Files.writeString(
        bad, "{\"schema\": \"undercap-manifest\", \"command\": [\"rerun\", \"bad.json\"]}");
    CliRun endless = rerun(bad.getFileName().toString());
    assertEquals(3, endless.exitCode());
    assertTrue(endless.err().contains("names a command that no result is made by"), endless.err());
    assertEquals(3, rerun("none.json").exitCode());
  }
}
