package org.undercap.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Enumeration;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.undercap.cli.output.Digests;
import org.undercap.cli.output.ProgramVersion;

/**
 * The archive that is handed out, unpacked far from the project into a folder with a blank in its
 * name, for a user who has Java and no Maven.
 */
@EnabledOnOs({OS.LINUX, OS.MAC})
class ArchivesIT {
  private static final String NAME = "undercap-" + ProgramVersion.text();
  private static final Path ZIP = Path.of("target", NAME + ".zip");

  @TempDir private static Path place;

  private static Path home;

  @BeforeAll
  static void unpack() throws IOException {
    Path folder = Files.createDirectories(place.resolve("my programs"));
    try (ZipFile zip = new ZipFile(ZIP.toFile())) {
      for (Enumeration<? extends ZipEntry> all = zip.entries(); all.hasMoreElements(); ) {
        ZipEntry entry = all.nextElement();
        Path file = folder.resolve(entry.getName());
        Files.createDirectories(entry.isDirectory() ? file : file.getParent());
        if (!entry.isDirectory()) {
          try (InputStream in = zip.getInputStream(entry)) {
            Files.copy(in, file);
          }
        }
      }
    }
    home = folder.resolve(NAME);
    assertTrue(home.resolve("bin/undercap").toFile().setExecutable(true));
  }

  private static String run(int expected, Path userHome, String... words) throws Exception {
    ProcessBuilder builder = new ProcessBuilder(words);
    Path out = Files.createTempFile(place, "out", ".txt");
    builder.directory(home.toFile()).redirectErrorStream(true).redirectOutput(out.toFile());
    builder.environment().clear();
    builder.environment().put("HOME", userHome.toString());
    builder.environment().put("PATH", "/usr/bin:/bin");
    builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
    assertEquals(expected, builder.start().waitFor(), () -> read(out));
    return read(out);
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void firstExampleRunsAndLaterStartsUseTheClassesKept() throws Exception {
    Path user = Files.createDirectories(place.resolve("a user"));
    String answer =
        run(0, user, "bin/undercap", "compare", "scenarios/saltmere-garth.yaml", "--members=20");
    assertTrue(answer.startsWith("Saltmere Garth, "), answer);
    assertTrue(Files.exists(home.resolve("saltmere-garth-comparison/answer.html")));
    try (Stream<Path> kept = Files.list(user.resolve(".cache/undercap"))) {
      List<Path> files = kept.toList();
      assertEquals(1, files.size(), files::toString);
      assertTrue(Files.size(files.get(0)) > 1_000_000, files::toString);
    }
    assertEquals(
        "undercap " + ProgramVersion.text() + "\n",
        run(0, user, "bin/undercap", "--version"),
        "the second start");
  }

  @Test
  void runsWhereNothingCanBeKept() throws Exception {
    Path file = Files.writeString(place.resolve("no-folder"), "");
    String version = run(0, file, "bin/undercap", "--version");
    assertEquals("undercap " + ProgramVersion.text() + "\n", version);
  }

  @Test
  void holdsWhatAStrangerNeeds() {
    for (String file :
        List.of(
            "README.txt",
            "LICENSE",
            "licences/THIRD-PARTY.txt",
            "licences/LGPL-2.1.txt",
            "man/man1/undercap-compare.1",
            "completion/undercap.fish",
            "scenarios/research/plot-7.yaml",
            "bin/undercap.cmd")) {
      assertTrue(Files.isRegularFile(home.resolve(file)), file);
    }
    assertFalse(read(home.resolve("bin/undercap.cmd")).contains("${project"));
    assertTrue(read(home.resolve("bin/undercap.cmd")).contains("\r\n"));
  }

  @Test
  void commandsOfItsReadmeExist() {
    List<String> commands =
        read(home.resolve("README.txt"))
            .lines()
            .filter(line -> line.startsWith("  bin/undercap "))
            .map(line -> line.strip().split(" ", -1)[1])
            .toList();
    assertEquals(List.of("compare", "new", "help"), commands);
    commands.forEach(command -> assertEquals(0, CliRun.of("help", command).exitCode(), command));
  }

  @Test
  void checksumsAreThoseOfTheFiles() throws IOException {
    List<String> lines = Files.readAllLines(Path.of("target", NAME + ".sha256"));
    assertTrue(lines.size() >= 3, lines::toString);
    for (String line : lines) {
      String[] parts = line.split(" [ *]", 2);
      assertEquals(Digests.of(Path.of("target", parts[1])), parts[0], line);
    }
  }
}
