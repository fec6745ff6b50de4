package org.undercap.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The teaching packs in {@code reports} are what the program makes today. Pictures depend on the
 * machine: of these only size and ink are looked at, by {@link ReportsTest} too.
 */
class LessonReportsTest {
  private static final long MOST_BYTES = 2_500_000;

  @ParameterizedTest
  @ValueSource(strings = {"temperate-oceanic", "southern-temperate"})
  void packIsWhatTheProgramMakes(String climate, @TempDir Path folder) throws IOException {
    Path shipped = Path.of("..", "reports", "lessons-" + climate);
    copyPictures(shipped, folder);
    CliRun run =
        CliRun.of("lesson", "all", "--climate=" + climate, "--out=" + folder, "--if-exists=skip");
    assertEquals(0, run.exitCode(), run.err());
    Map<String, String> expected = SmallScenario.files(shipped);
    Map<String, String> made = SmallScenario.files(folder);
    List<String> outOfDate =
        made.keySet().stream().filter(name -> !made.get(name).equals(expected.get(name))).toList();
    assertEquals(
        List.of(),
        outOfDate,
        "out of date; make it anew: sim-cli/undercap lesson all --climate "
            + climate
            + " --out reports/lessons-"
            + climate
            + " --if-exists=overwrite");
    assertEquals(made.keySet(), expected.keySet());
    long bytes = expected.values().stream().mapToLong(String::length).sum();
    assertTrue(bytes < MOST_BYTES, "size " + bytes);
  }

  private static void copyPictures(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.list(from)) {
      for (Path file : files.toList()) {
        String name = file.getFileName().toString();
        if (name.endsWith(".png") || name.endsWith(".gif")) {
          Files.copy(file, to.resolve(name));
        }
      }
    }
  }
}
