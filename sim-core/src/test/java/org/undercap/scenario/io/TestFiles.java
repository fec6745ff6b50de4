package org.undercap.scenario.io;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.undercap.scenario.Problem;
import org.undercap.scenario.Reading;
import org.undercap.scenario.Scenario;

/** The scenario files that tests read. */
final class TestFiles {

  static final Path SHIPPED = Path.of("..", "scenarios");
  static final Path BROKEN = Path.of("src", "test", "resources", "broken");
  static final Path COMPLETE = Path.of("src", "test", "resources", "complete");

  /** A small scenario without a mistake. */
  static final String SMALL =
      """
      undercap: 1
      name: Small
      site: {climate: central-european}
      colony: {date: 2026-08-08, bees: 18000, brood: 9000 cells}
      mites: {in-colony: 500}
      """;

  private TestFiles() {}

  static List<Path> in(Path folder, String... endings) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> hasEnding(file, endings)).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static boolean hasEnding(Path file, String... endings) {
    return Stream.of(endings).anyMatch(ending -> file.toString().endsWith(ending));
  }

  static Reading<Scenario> read(String text) {
    return read("test.yaml", text.getBytes(StandardCharsets.UTF_8));
  }

  static Reading<Scenario> read(String name, byte[] bytes) {
    try {
      return ScenarioReader.read(name, new ByteArrayInputStream(bytes));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The texts of all problems, with file names instead of paths. */
  static String texts(List<Problem> problems, Path folder) {
    StringBuilder texts = new StringBuilder();
    for (Problem problem : problems) {
      texts.append(problem.text().replace(folder + "/", "")).append('\n');
    }
    return texts.toString();
  }
}
