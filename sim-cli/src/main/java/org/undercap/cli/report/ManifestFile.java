package org.undercap.cli.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.undercap.cli.output.InvalidFileException;
import org.undercap.scenario.Problems;
import org.undercap.scenario.Quantities;
import org.undercap.scenario.io.FileText;

/** A manifest that was written by {@link Manifest}, as far as it is needed to make files again. */
public record ManifestFile(
    String programVersion,
    List<String> command,
    Map<String, String> inputs,
    Map<String, String> outputs) {

  private static final int LARGEST_FILE = 10_000_000;

  /**
   * Copies the list.
   *
   * @param programVersion version of the program that wrote it
   * @param command the words after {@code undercap}
   * @param inputs digests of the files that were read, by name, in their order
   * @param outputs digests of the files that were written, by name, in their order
   */
  public ManifestFile {
    command = List.copyOf(command);
  }

  /**
   * Reads a manifest.
   *
   * @param file the manifest
   * @return what it says
   * @throws InvalidFileException if it is none, or of an older form without a command
   */
  public static ManifestFile read(Path file) {
    Problems problems = new Problems();
    String text = new FileText(file.toString(), LARGEST_FILE, problems).read(file).orElse("");
    if (!problems.isEmpty()) {
      throw new InvalidFileException(InvalidFileException.text(problems.all()));
    }
    JsonNode root;
    try {
      root = new ObjectMapper().readTree(text);
    } catch (JsonProcessingException e) {
      throw invalid(file, "is no JSON document");
    }
    if (!root.path("schema").asText().equals("undercap-" + Manifest.SCHEMA)) {
      throw invalid(file, "is no manifest");
    }
    List<String> command = new ArrayList<>();
    root.path("command").forEach(word -> command.add(word.asText()));
    if (command.isEmpty()) {
      throw invalid(file, "names no command: it was made by an older version");
    }
    boolean harmless =
        !command.get(0).equals("rerun")
            && command.stream().allMatch(word -> word.chars().noneMatch(Character::isISOControl));
    if (!harmless) {
      throw invalid(file, "names a command that no result is made by");
    }
    return new ManifestFile(
        root.path("programVersion").asText(),
        command,
        digests(file, root.path("inputs")),
        digests(file, root.path("outputs")));
  }

  private static Map<String, String> digests(Path file, JsonNode list) {
    Map<String, String> digests = new LinkedHashMap<>();
    for (JsonNode entry : list) {
      String name = entry.path("file").asText();
      if (!isPlain(name)) {
        throw invalid(file, "names the file " + Quantities.quote(name) + ", not a plain name");
      }
      digests.put(name, entry.path("sha256").asText());
    }
    return digests;
  }

  private static boolean isPlain(String name) {
    try {
      return !name.isEmpty()
          && !name.equals("..")
          && name.equals(String.valueOf(Path.of(name).getFileName()));
    } catch (InvalidPathException e) {
      return false;
    }
  }

  private static InvalidFileException invalid(Path file, String why) {
    return new InvalidFileException(file + ": error: " + why);
  }
}
