package org.undercap.cli.report;

import java.nio.file.Path;
import java.util.List;
import org.undercap.cli.output.Digests;
import org.undercap.scenario.io.ScenarioReader;

/**
 * The files that a result was made from, by name and digest.
 *
 * @param files the scenario file, then those that it names
 */
public record InputFiles(List<InputFile> files) {
  /**
   * Copies the list.
   *
   * @param files the scenario file, then those that it names
   * @throws IllegalArgumentException if there is no file
   */
  public InputFiles {
    files = List.copyOf(files);
    if (files.isEmpty()) {
      throw new IllegalArgumentException("a scenario has at least one file");
    }
  }

  /**
   * Reads the files of a scenario.
   *
   * @param scenario the scenario file
   * @return names and digests
   */
  public static InputFiles of(Path scenario) {
    return new InputFiles(
        ScenarioReader.filesOf(scenario).stream()
            .map(file -> new InputFile(String.valueOf(file.getFileName()), Digests.of(file)))
            .toList());
  }

  /** Digest of all of them, which changes when one does. */
  String digest() {
    StringBuilder all = new StringBuilder();
    files.forEach(file -> all.append(file.sha256()).append('\n'));
    return Digests.of(all.toString());
  }

  /**
   * One file.
   *
   * @param name its name without folders
   * @param sha256 its digest (hexadecimal)
   */
  public record InputFile(String name, String sha256) {}
}
