package org.undercap.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercap.cli.CliRun;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.hive.Threshold;
import org.undercap.hive.ThresholdCatalogue;
import org.undercap.parameter.ParameterCatalogue;
import org.undercap.source.Bibliography;
import org.undercap.source.Source;
import org.undercap.treatment.Method;
import org.undercap.treatment.MethodCatalogue;

/** What all commands that show a catalogue have in common. */
class CatalogueCommandsTest {
  private static final int COLUMNS = 80;
  private static final Locale TURKISH = Locale.forLanguageTag("tr-TR");

  static Stream<List<String>> calls() {
    return Stream.concat(
        commands().map(List::of), commands().flatMap(c -> ids(c).map(id -> List.of(c, id))));
  }

  static Stream<String> commands() {
    return Stream.of("methods", "climates", "thresholds", "parameters", "sources");
  }

  private static Stream<String> ids(String command) {
    return switch (command) {
      case "methods" -> MethodCatalogue.shipped().all().stream().map(Method::id);
      case "climates" -> ClimateCatalogue.shipped().all().stream().map(Climate::id);
      case "thresholds" ->
          ThresholdCatalogue.shipped().all().stream().map(Threshold::place).distinct();
      case "parameters" -> ParameterCatalogue.shipped().all().stream().map(p -> p.id().id());
      case "sources" -> Bibliography.shipped().all().stream().map(Source::key);
      default -> throw new IllegalArgumentException(command);
    };
  }

  @ParameterizedTest
  @MethodSource("calls")
  void textFitsTheTerminal(List<String> call) {
    String[] args = call.toArray(String[]::new);
    CliRun run = CliRun.of(args);
    assertEquals(0, run.exitCode());
    assertEquals("", run.err());
    assertTrue(run.out().endsWith("\n"));
    assertFalse(run.out().contains("\r"));
    for (String line : run.out().split("\n", -1)) {
      assertTrue(line.length() <= COLUMNS, line);
      assertEquals(line.stripTrailing(), line);
      assertTrue(line.chars().allMatch(c -> c >= ' ' && c <= '~'), line);
    }
  }

  @ParameterizedTest
  @MethodSource("commands")
  void textIsTheSameInEveryLanguage(String command) {
    String id = ids(command).findFirst().orElseThrow();
    for (String[] args : new String[][] {{command}, {command, id}}) {
      CliRun run = CliRun.of(args);
      assertEquals(run, CliRun.in(Locale.GERMANY, args));
      assertEquals(run, CliRun.in(TURKISH, args));
    }
  }

  @ParameterizedTest
  @MethodSource("commands")
  void tableNamesEveryEntry(String command) {
    String words = CliRun.of(command).out().replaceAll("\\s+", " ");
    ids(command)
        .filter(id -> !command.equals("thresholds")) // Places are wrapped between other columns.
        .forEach(id -> assertTrue(words.contains(id), id));
  }

  @ParameterizedTest
  @MethodSource("commands")
  void jsonIsOneDocumentOfAllEntriesInEveryLanguage(String command) throws IOException {
    CliRun run = CliRun.of(command, "--json");
    assertEquals(0, run.exitCode());
    assertEquals("", run.err());
    JsonNode document = new ObjectMapper().readTree(run.out());
    assertEquals("undercap-" + command, document.get("schema").asText());
    assertEquals(1, document.get("schemaVersion").asInt());
    assertTrue(document.get("programVersion").asText().matches("\\d+\\.\\d+.*"));
    long entries =
        command.equals("thresholds")
            ? ThresholdCatalogue.shipped().all().size()
            : ids(command).count();
    assertEquals(entries, document.get(command).size());
    assertEquals(run, CliRun.in(Locale.GERMANY, command, "--json"));
    assertEquals(run, CliRun.in(TURKISH, command, "--json"));
  }

  @ParameterizedTest
  @MethodSource("commands")
  void helpShowsExamplesThatWork(String command) {
    CliRun help = CliRun.of(command, "--help");
    assertEquals(0, help.exitCode());
    assertEquals("", help.err());
    assertTrue(help.out().contains("Exit codes:"), help.out());
    List<String> examples =
        help.out().lines().filter(line -> line.startsWith("  undercap ")).toList();
    assertTrue(examples.size() >= 2, help.out());
    for (String example : examples) {
      String words = example.strip().replaceFirst("^undercap ", "").replaceFirst(" > .*", "");
      String[] args = words.replace("\"", "").split(" ", 2);
      assertEquals(0, CliRun.of(args).exitCode(), example);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "methods, thymol-gle, unknown treatment 'thymol-gle'; did you mean thymol-gel?",
    "methods, thymol, unknown treatment 'thymol'; did you mean thymol-gel or thymol-wafer?",
    "methods, THYMOL-GEL, unknown treatment 'THYMOL-GEL'; did you mean thymol-gel?",
    "methods, xyzzy, unknown treatment 'xyzzy'; 'undercap methods' lists all",
    "climates, mediteranean, unknown climate 'mediteranean'; did you mean mediterranean?",
    "parameters, invasion, "
        + "unknown parameter 'invasion'; did you mean invasion.worker or invasion.drone?",
    "sources, boot1995, unknown source 'boot1995'; did you mean boot-1995?",
    "thresholds, Canda, no threshold for a place like 'Canda'; did you mean Canada?",
    "thresholds, xyzzy, no threshold for a place like 'xyzzy'; 'undercap thresholds' lists all"
  })
  void wrongNameIsAnsweredWithTheNearest(String command, String id, String message) {
    for (Locale locale : List.of(Locale.ROOT, Locale.GERMANY, TURKISH)) {
      CliRun run = CliRun.in(locale, command, id);
      assertEquals(2, run.exitCode());
      assertEquals("", run.out());
      assertEquals(
          message + "\nTry 'undercap " + command + " --help'.\n",
          run.err().replace(System.lineSeparator(), "\n"));
    }
  }

  @Test
  void onlyOneEntryIsShownAtATime() {
    CliRun run = CliRun.of("methods", "thymol-gel", "formic-pads");
    assertEquals(2, run.exitCode());
    assertEquals("", run.out());
    assertTrue(run.err().contains("formic-pads"), run.err());
  }
}
