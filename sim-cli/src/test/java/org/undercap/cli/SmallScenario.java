package org.undercap.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** A scenario that is quick to run, and what to do with the files that the program makes of it. */
public final class SmallScenario {
  /** The text of the scenario. */
  public static final String TEXT =
      """
      undercap: 1
      name: Small yard
      site: {climate: central-european}
      colony: {date: 2026-08-08, bees: 18000, brood: 9000 cells}
      mites: {in-colony: 500}
      horizon: 150 days
      plans:
        - name: Gel, twice
          steps:
            - {date: 2026-08-10, treatment: thymol-gel}
            - {date: 2026-08-24, treatment: thymol-gel}
        - name: Dribble
          steps:
            - {date: 2026-12-18, treatment: oxalic-dribble}
      """;

  private SmallScenario() {}

  /** Writes the scenario to a new file of this name and gives its path. */
  public static String in(Path folder, String name) {
    try {
      return Files.writeString(folder.resolve(name), TEXT).toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** All files in a folder and the folders in it: bytes as text (one character each) by path. */
  public static Map<String, String> files(Path folder) {
    Map<String, String> contents = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String name = folder.relativize(file).toString().replace('\\', '/');
        contents.put(name, new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return contents;
  }
}
