package org.undercap.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * The packed program with its libraries beside it, run as a process of its own in a folder that
 * looks like a fresh copy of the project. The launcher finds the program up to date; the Maven on
 * its search path only fails.
 */
@EnabledOnOs({OS.LINUX, OS.MAC})
class PackedProgramIT {
  private static final Path JAVA_HOME = Path.of(System.getProperty("java.home"));

  @TempDir private static Path project;

  @BeforeAll
  static void copyProject() throws IOException {
    copy(Path.of("target", "undercap.jar"), "sim-cli/target/undercap.jar");
    copyAll(Path.of("target", "lib"), "sim-cli/target/lib");
    copyAll(Path.of("..", "scenarios"), "scenarios");
    copy(Path.of("undercap"), "sim-cli/undercap");
    copyAll(Path.of("src", "main", "dist", "lib"), "sim-cli/src/main/dist/lib");
    assertTrue(project.resolve("sim-cli/undercap").toFile().setExecutable(true));
    Files.createDirectories(project.resolve("bin"));
    Files.createSymbolicLink(project.resolve("bin/undercap"), Path.of("..", "sim-cli", "undercap"));
    Files.writeString(project.resolve("bin/mvn"), "#!/bin/sh\nexit 1\n");
    assertTrue(project.resolve("bin/mvn").toFile().setExecutable(true));
  }

  @Test
  void shellLinesOfTheReadmeDoWhatItSays() throws Exception {
    List<String> lines =
        Files.readAllLines(Path.of("..", "README.md")).stream()
            .filter(line -> line.startsWith("undercap ") || line.startsWith("sim-cli/undercap "))
            .filter(line -> !line.matches(".*\\b(SCENARIO|FILE|DIR|DATE|NAME)\\b.*"))
            .toList();
    assertTrue(lines.size() >= 1, "a command was found");
    for (String line : lines) {
      Ended run = shell(line);
      assertEquals(0, run.exitCode(), line + "\n" + run.err());
    }
  }

  @Test
  void comparesAShippedScenario() throws Exception {
    Ended run = shell("undercap compare scenarios/fjellro.yaml --members=50 --out=fjellro");
    assertEquals(0, run.exitCode(), run.err());
    assertTrue(
        run.out().startsWith("Fjellro, 20 July 2026 to 15 May 2027\n\nTHE ANSWER\n"), run.out());
    assertTrue(run.out().matches("(?s).*\nDo nothing +[0-9.]+ % \\(.*"), run.out());
    assertTrue(run.err().contains("wrote fjellro/plans.png\n"), run.err());
    PngImages.assertDrawn(project.resolve("fjellro/plans.png"));
    PngImages.assertDrawn(project.resolve("fjellro/infestation.png"));
    assertFalse(Files.exists(project.resolve("sim-cli/target/launcher.log")), "it was not built");
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void needsNoFontsOfTheSystem() throws Exception {
    Files.writeString(project.resolve("fonts.conf"), "<?xml version=\"1.0\"?><fontconfig/>");
    String compare = "undercap compare scenarios/roof-nine.yaml --members=5 ";
    Ended with = shell(compare + "--out=fonts");
    Ended without = shell("FONTCONFIG_FILE=fonts.conf " + compare + "--out=no-fonts");
    assertEquals(0, with.exitCode(), with.err());
    assertEquals(0, without.exitCode(), without.err());
    assertArrayEquals(
        Files.readAllBytes(project.resolve("fonts/plans.png")),
        Files.readAllBytes(project.resolve("no-fonts/plans.png")));
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void machineThatCannotDrawStillGetsTheTableAndSaysWhatIsMissing() throws Exception {
    Ended run =
        shell(
            "UNDERCAP_JAVA_OPTIONS=-Dsun.awt.fontconfig=/nowhere"
                + " undercap compare scenarios/roof-nine.yaml --members=5 --out=undrawn");
    assertEquals(1, run.exitCode());
    assertTrue(run.out().startsWith("Roof Nine, "), run.out());
    assertTrue(run.err().startsWith("charts need Java's drawing library"), run.err());
    assertEquals(1, run.err().lines().count(), run.err());
    assertFalse(Files.exists(project.resolve("undrawn")), "all files or none");
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void fullDiskBehindStandardOutputIsAFailure() throws Exception {
    Ended run = shell("LC_ALL=C undercap schema > /dev/full");
    assertEquals("standard output: no space left on device\n", run.err());
    assertEquals(1, run.exitCode());
  }

  @Test
  void readerWhoStopsEarlyEndsItQuietly() throws Exception {
    Ended run = shell("{ undercap parameters --json; echo \"code $?\" >&2; } | head -n 1");
    assertEquals("{\n", run.out());
    assertEquals("code 0\n", run.err());
  }

  @Test
  void wrongUseAndBrokenFilesHaveTheirExitCodes() throws Exception {
    assertEquals(2, shell("undercap compare").exitCode());
    assertEquals(3, shell("undercap check bin/undercap").exitCode());
  }

  @Test
  void textIsUtf8WhateverTheMachineSays() throws Exception {
    Files.writeString(
        project.resolve("umlaut.yaml"), SmallScenario.TEXT.replace("Small yard", "H\u00fcgel"));
    Ended run = shell("LC_ALL=C undercap check umlaut.yaml");
    assertEquals("umlaut.yaml: good: H\u00fcgel, 2 plans, 2026-08-08 to 2027-01-05\n", run.out());
    assertEquals(0, run.exitCode(), run.err());
  }

  /** What one command of the shell gives. */
  private record Ended(int exitCode, String out, String err) {}

  private static Ended shell(String command) throws IOException, InterruptedException {
    Path out = Files.createTempFile(project, "out", ".txt");
    Path err = Files.createTempFile(project, "err", ".txt");
    ProcessBuilder builder = new ProcessBuilder("sh", "-c", command);
    builder.directory(project.toFile()).redirectOutput(out.toFile()).redirectError(err.toFile());
    builder.environment().put("JAVA_HOME", JAVA_HOME.toString());
    builder.environment().put("PATH", project.resolve("bin") + ":" + System.getenv("PATH"));
    builder.environment().remove("UNDERCAP_JAVA_OPTIONS");
    int exitCode = builder.start().waitFor();
    return new Ended(exitCode, Files.readString(out), Files.readString(err));
  }

  private static void copyAll(Path from, String to) throws IOException {
    try (Stream<Path> files = Files.list(from)) {
      for (Path file : files.toList()) {
        copy(file, to + "/" + file.getFileName());
      }
    }
  }

  private static void copy(Path from, String to) throws IOException {
    Path target = project.resolve(to);
    Files.createDirectories(target.getParent());
    Files.copy(from, target, StandardCopyOption.COPY_ATTRIBUTES);
  }
}
