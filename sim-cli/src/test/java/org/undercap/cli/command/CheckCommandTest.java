package org.undercap.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercap.cli.CliRun;
import org.undercap.cli.SmallScenario;

/** What {@code check} and {@code schema} print. */
class CheckCommandTest {
  private static final Path BROKEN =
      Path.of("..", "sim-core", "src", "test", "resources", "broken");

  @TempDir private Path folder;

  @Test
  void goodFileIsToldInOneLine() {
    String scenario = SmallScenario.in(folder, "small.yaml");
    CliRun run = CliRun.of("check", scenario);
    assertEquals(0, run.exitCode());
    assertEquals(scenario + ": good: Small yard, 2 plans, 2026-08-08 to 2027-01-05\n", run.out());
    assertEquals("", run.err());
  }

  @Test
  void assumptionsAreListedIfAsked() {
    CliRun run = CliRun.of("check", SmallScenario.in(folder, "small.yaml"), "--assumptions");
    assertEquals(0, run.exitCode());
    assertTrue(run.out().contains("\n- colony.floor: the floor is closed\n"), run.out());
    assertEquals("", run.err());
  }

  @Test
  void supersWithoutAnEndAreWarnedOf() throws IOException {
    Path file = folder.resolve("supers.yaml");
    Files.writeString(file, SmallScenario.TEXT.replace("9000 cells}", "9000 cells, supers: on}"));
    CliRun run = CliRun.of("check", file.toString());
    assertEquals(0, run.exitCode(), run.err());
    assertTrue(
        run.out().contains(file + ": warning: colony.supers: on, but not until when"), run.out());
    assertTrue(run.out().contains("supers-until: 2026-08-22"), run.out());
    assertTrue(run.out().startsWith(file + ": usable, 1 warning: Small yard, "), run.out());
    Files.writeString(
        file, SmallScenario.TEXT.replace("9000 cells}", "9000 cells, supers-until: 2026-08-09}"));
    assertEquals(1, CliRun.of("check", file.toString()).out().lines().count());
  }

  @Test
  void shippedScenariosAreGood() throws IOException {
    List<String> words = words(List.of("check"), Path.of("..", "scenarios"), ".yaml");
    CliRun run = CliRun.of(words.toArray(String[]::new));
    assertEquals(0, run.exitCode(), run.err());
    List<String> lines = run.out().lines().toList();
    List<String> warnings = lines.stream().filter(l -> l.contains(": warning: ")).toList();
    assertEquals(words.size() - 1, lines.size() - warnings.size());
    assertEquals(1, warnings.size(), "only the colony in the tropics: " + warnings);
    assertTrue(
        warnings.get(0).contains("no figures for this colony: the model was not tested"),
        warnings.get(0));
    assertEquals("", run.err());
  }

  @Test
  void everyMistakeOfManyFilesIsToldInOneRun() throws IOException {
    List<String> words = words(List.of("check"), BROKEN, ".yaml", ".json");
    assertTrue(words.size() > 20, words.toString());
    StringBuilder expected = new StringBuilder();
    for (String file : words.subList(1, words.size())) {
      Files.readString(Path.of(file + ".expected"))
          .lines()
          .map(line -> line.startsWith("  ") ? line : BROKEN + "/" + line)
          .forEach(line -> expected.append(line).append('\n'));
    }
    long problems = expected.toString().lines().filter(line -> !line.startsWith("  ")).count();
    CliRun run = CliRun.of(words.toArray(String[]::new));
    assertEquals(3, run.exitCode());
    assertEquals(expected + "" + problems + " problems\n", run.err());
    assertEquals("", run.out());
  }

  @Test
  void goodFilesAreToldBesideBrokenOnes() {
    String scenario = SmallScenario.in(folder, "small.yaml");
    CliRun run = CliRun.of("check", BROKEN.resolve("version.yaml").toString(), scenario);
    assertEquals(3, run.exitCode());
    assertTrue(run.out().startsWith(scenario + ": good: "), run.out());
    assertTrue(run.err().contains("version.yaml:1:11: error: "), run.err());
    assertTrue(run.err().endsWith("\n1 problem\n"), run.err());
  }

  @Test
  void missingFileIsNamed() {
    CliRun run = CliRun.of("check", "nowhere.yaml");
    assertEquals(3, run.exitCode());
    assertEquals("", run.out());
    assertTrue(run.err().startsWith("nowhere.yaml: error: there is no such file\n"), run.err());
  }

  @Test
  void schemaIsOneDocumentAndKnowsTheKeysOfAScenario() throws IOException {
    CliRun run = CliRun.of("schema");
    assertEquals(0, run.exitCode());
    JsonNode schema = new ObjectMapper().readTree(run.out());
    assertTrue(schema.get("$schema").textValue().contains("json-schema.org"));
    for (String key : List.of("undercap", "name", "site", "colony", "mites", "plans")) {
      assertTrue(schema.at("/properties").has(key), key);
    }
    assertTrue(run.out().endsWith("}\n"));
    assertEquals("", run.err());
  }

  private static List<String> words(List<String> start, Path folder, String... endings)
      throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      Stream<String> names =
          files
              .map(Path::toString)
              .filter(name -> Stream.of(endings).anyMatch(name::endsWith))
              .sorted();
      return Stream.concat(start.stream(), names).toList();
    }
  }
}
