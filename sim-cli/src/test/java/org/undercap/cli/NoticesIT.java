package org.undercap.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Whoever adds or drops a library, a font or the data of others must say so in the notices that are
 * handed out with it.
 */
class NoticesIT {
  private static final Path LIBRARIES = Path.of("target", "lib");
  private static final Path CORE_RESOURCES = Path.of("..", "sim-core", "src", "main", "resources");

  /** A line of a list of libraries: what they belong to, then their names. */
  private static final Pattern LIST =
      Pattern.compile("(?m)^  [^ :][^:\n]*: ((?:[a-z0-9-]+(?:,\\s+)?)+)(?=[.\n])");

  @Test
  void namesTheLibrariesThatAreHandedOutAndNoOther() throws IOException {
    assertEquals(libraries(), namedLibraries());
  }

  @Test
  void listOfPartsForProgramsNamesTheSameLibraries() throws IOException {
    JsonNode parts =
        JsonMapper.builder().build().readTree(Path.of("target", "undercap.cdx.json").toFile());
    assertEquals("CycloneDX", parts.path("bomFormat").asText());
    Set<String> named = new TreeSet<>();
    for (JsonNode part : parts.path("components")) {
      named.add(part.path("name").asText());
      assertTrue(part.path("hashes").size() > 0, part::toString);
    }
    named.remove("sim-core");
    assertEquals(libraries(), named);
  }

  @Test
  void licenceTextsAreHandedOut() throws IOException {
    assertTrue(resource("/META-INF/LGPL-2.1.txt").contains("GNU LESSER GENERAL PUBLIC LICENSE"));
    assertFalse(resource("/org/undercap/cli/chart/DejaVuSans-licence.txt").isBlank());
  }

  @Test
  void namesEveryFont() throws IOException {
    String notices = resource("/META-INF/THIRD-PARTY.txt");
    try (Stream<Path> files = Files.walk(Path.of("src", "main", "resources"))) {
      Set<String> fonts =
          files
              .map(file -> file.getFileName().toString())
              .filter(name -> name.endsWith(".ttf"))
              .map(name -> name.replaceAll("-.*|\\.ttf", ""))
              .collect(Collectors.toCollection(TreeSet::new));
      assertEquals(Set.of("DejaVuSans"), fonts);
    }
    assertTrue(notices.contains("DejaVu Sans and DejaVu Sans Bold"), notices);
  }

  @Test
  void citesOpenDataWithLicenceAndChanges() throws IOException {
    String notices = resource("/META-INF/THIRD-PARTY.txt").replaceAll("\\s+", " ");
    int found = 0;
    try (Stream<Path> files = Files.walk(CORE_RESOURCES)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".csv")).toList()) {
        String head = Files.readString(file).lines().limit(4).collect(Collectors.joining(" "));
        if (head.contains("licence CC-BY")) {
          found++;
          assertTrue(notices.contains(file.getFileName().toString()), () -> file + " is not named");
          Matcher doi = Pattern.compile("doi (10\\.\\S+?)[;,]?(?= |$)").matcher(head);
          while (doi.find()) {
            assertTrue(notices.contains(doi.group(1)), () -> doi.group(1) + " is not cited");
          }
        }
      }
    }
    assertTrue(found > 0, "open data were found");
    assertTrue(notices.contains("https://creativecommons.org/licenses/by/4.0/"), notices);
    assertTrue(notices.contains(" Changed: "), notices);
  }

  private static Set<String> libraries() throws IOException {
    try (Stream<Path> files = Files.list(LIBRARIES)) {
      return files
          .map(file -> file.getFileName().toString().replaceFirst("-\\d[^-]*\\.jar$", ""))
          .filter(name -> !name.equals("sim-core"))
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }

  private static Set<String> namedLibraries() throws IOException {
    Set<String> named = new TreeSet<>();
    Matcher lists = LIST.matcher(resource("/META-INF/THIRD-PARTY.txt"));
    while (lists.find()) {
      named.addAll(Set.of(lists.group(1).strip().split(",\\s+")));
    }
    return named;
  }

  private static String resource(String name) throws IOException {
    try (InputStream in = NoticesIT.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
