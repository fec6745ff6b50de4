package org.undercap.cli.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.undercap.cli.output.FileFailure;
import org.undercap.cli.output.InvalidFileException;

/** A manifest that was written by {@link Manifest}, as far as it is needed to make files again. */
public record ManifestFile(
    String programVersion,
    List<String> command,
    Map<String, String> inputs,
    Map<String, String> outputs) {

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
    JsonNode root;
    try {
      root = new ObjectMapper().readTree(Files.readAllBytes(file));
    } catch (JsonProcessingException e) {
      throw invalid(file, "is no JSON document");
    } catch (IOException e) {
      throw invalid(file, FileFailure.reason(e));
    }
    if (!root.path("schema").asText().equals("undercap-" + Manifest.SCHEMA)) {
      throw invalid(file, "is no manifest");
    }
    List<String> command = new ArrayList<>();
    root.path("command").forEach(word -> command.add(word.asText()));
    if (command.isEmpty()) {
      throw invalid(file, "names no command: it was made by an older version");
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
      if (name.isEmpty() || !name.equals(String.valueOf(Path.of(name).getFileName()))) {
        throw invalid(file, "names the file '" + name + "', which is not a plain name");
      }
      digests.put(name, entry.path("sha256").asText());
    }
    return digests;
  }

  private static InvalidFileException invalid(Path file, String why) {
    return new InvalidFileException(file + ": error: " + why);
  }
}
