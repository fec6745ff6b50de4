package org.undercap.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The packed program with its libraries beside it, run as a process of its own. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class PackedProgramIT {
  @TempDir private static Path project;

  private static PackedProgram program;

  @BeforeAll
  static void copyProject() throws IOException {
    program = PackedProgram.in(project);
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
      PackedProgram.Ended run =
          program.shell(line.replace("undercap new ", "undercap new --defaults "));
      assertEquals(0, run.exitCode(), line + "\n" + run.err());
    }
  }

  @Test
  void comparesAShippedScenario() throws Exception {
    PackedProgram.Ended run =
        program.shell("undercap compare scenarios/fjellro.yaml --members=50 --out=fjellro");
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
    PackedProgram.Ended with = program.shell(compare + "--out=fonts");
    PackedProgram.Ended without =
        program.shell("FONTCONFIG_FILE=fonts.conf " + compare + "--out=no-fonts");
    assertEquals(0, with.exitCode(), with.err());
    assertEquals(0, without.exitCode(), without.err());
    assertArrayEquals(
        Files.readAllBytes(project.resolve("fonts/plans.png")),
        Files.readAllBytes(project.resolve("no-fonts/plans.png")));
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void machineThatCannotDrawStillGetsTheTableAndSaysWhatIsMissing() throws Exception {
    PackedProgram.Ended run =
        program.shell(
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
    PackedProgram.Ended run = program.shell("LC_ALL=C undercap schema > /dev/full");
    assertEquals("standard output: no space left on device\n", run.err());
    assertEquals(1, run.exitCode());
  }

  @Test
  void readerWhoStopsEarlyEndsItQuietly() throws Exception {
    PackedProgram.Ended run =
        program.shell("{ undercap parameters --json; echo \"code $?\" >&2; } | head -n 1");
    assertEquals("{\n", run.out());
    assertEquals("code 0\n", run.err());
  }

  @Test
  void wrongUseAndBrokenFilesHaveTheirExitCodes() throws Exception {
    assertEquals(2, program.shell("undercap compare").exitCode());
    assertEquals(3, program.shell("undercap check bin/undercap").exitCode());
  }

  @Test
  void textIsUtf8WhateverTheMachineSays() throws Exception {
    Files.writeString(
        project.resolve("umlaut.yaml"), SmallScenario.TEXT.replace("Small yard", "H\u00fcgel"));
    PackedProgram.Ended run = program.shell("LC_ALL=C undercap check umlaut.yaml");
    assertEquals("umlaut.yaml: good: H\u00fcgel, 2 plans, 2026-08-08 to 2027-01-05\n", run.out());
    assertEquals(0, run.exitCode(), run.err());
  }

  @Test
  void machineOfAnotherTongueOrAlmostNoneChangesNothing() throws Exception {
    Files.writeString(
        project.resolve("letters.yaml"), SmallScenario.TEXT.replace("Dribble", "Tr\u00e4ufeln"));
    String words =
        "sh -c 'undercap compare letters.yaml --members=5 --out=letters --if-exists=overwrite"
            + " && undercap help compare'";
    String usual = program.shell(words).out();
    assertTrue(usual.contains("Tr\u00e4ufeln"), "a letter that not every machine has");
    for (String machine :
        List.of(
            "LC_ALL=C TZ=Asia/Kathmandu TERM=dumb NO_COLOR=1 COLUMNS=20",
            "UNDERCAP_JAVA_OPTIONS='-Duser.language=tr -Duser.country=TR'",
            "UNDERCAP_JAVA_OPTIONS='-Duser.language=th -Duser.extensions=u-ca-buddhist-nu-thai'",
            "env -u HOME -u LANG -u TERM")) {
      assertEquals(usual, program.shell(machine + " " + words).out(), machine);
    }
  }
}
