package org.undercap.cli.report;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.undercap.cli.output.Digests;
import org.undercap.scenario.io.ScenarioReader;

/**
 * The files that a result was made from, by name and digest.
 *
 * @param files the scenario file, then those that it names, then that of parameters
 */
public record InputFiles(List<InputFile> files) {
  /**
   * Copies the list.
   *
   * @param files the scenario file, then those that it names, then that of parameters
   */
  public InputFiles {
    files = List.copyOf(files);
  }

  /**
   * Reads the files of a scenario.
   *
   * @param scenario the scenario file
   * @param parameters file of parameters that stood above those of the scenario, if any
   * @return names and digests
   */
  public static InputFiles of(Path scenario, Optional<Path> parameters) {
    List<Path> all = new ArrayList<>(ScenarioReader.filesOf(scenario));
    parameters.ifPresent(all::add);
    return of(all);
  }

  /**
   * Reads files.
   *
   * @param files the files, at least one
   * @return names and digests
   */
  public static InputFiles of(List<Path> files) {
    return new InputFiles(
        files.stream()
            .map(file -> new InputFile(String.valueOf(file.getFileName()), Digests.of(file)))
            .toList());
  }

  /**
   * Reads several files; of a scenario those that it names as well.
   *
   * @param given the files; those that end in .yaml, .yml or .json are scenarios
   * @return names and digests, each file once
   */
  public static InputFiles ofAll(List<Path> given) {
    Map<Path, InputFile> files = new LinkedHashMap<>();
    for (Path file : given) {
      boolean scenario =
          String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT).matches(".*\\.(ya?ml|json)");
      for (Path one : scenario ? ScenarioReader.filesOf(file) : List.of(file)) {
        files.computeIfAbsent(
            one, f -> new InputFile(String.valueOf(f.getFileName()), Digests.of(f)));
      }
    }
    return new InputFiles(List.copyOf(files.values()));
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
