package org.undercap.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.undercap.cli.CliRun;

class NewCommandTest {
  @TempDir Path folder;

  @Test
  void usualAnswersMakeAGoodFile() {
    Path file = folder.resolve("usual.yaml");
    CliRun made = CliRun.of("new", "--defaults", file.toString());
    assertEquals(0, made.exitCode(), made.err());
    assertEquals("", made.out());
    assertTrue(made.err().contains("next: "), made.err());
    assertEquals(0, CliRun.of("check", file.toString()).exitCode());
    CliRun again = CliRun.of("new", "--defaults", file.toString());
    assertEquals(2, again.exitCode());
    assertEquals(
        file + ": exists already; name another file\nTry 'undercap new --help'.\n", again.err());
  }

  @Test
  void answersMayBePipedInWithKeepersUnits() throws IOException {
    Path file = folder.resolve("piped.yaml");
    CliRun made =
        answering(
            "North Voe\ncool-oceanic\n2026-09-24\n\n4 1/2 lb\n140 sq in\nopen\n\n9 in half a cup\n",
            file);
    assertEquals(0, made.exitCode(), made.err());
    assertTrue(made.err().contains("10. "), made.err());
    String text = Files.readString(file);
    assertTrue(text.contains("bees: half a cup, mites: 9"), text);
    CliRun check = CliRun.of("check", "--assumptions", file.toString());
    assertEquals(0, check.exitCode(), check.err());
    assertTrue(check.out().contains("\"4 1/2 lb\" is taken as 18063 bees"), check.out());
  }

  @Test
  void boardsAreCountsToo() throws IOException {
    Path file = folder.resolve("board.yaml");
    assertEquals(
        0, CliRun.of("new", "--defaults", "--count=56 in 1 week", file.toString()).exitCode());
    assertTrue(Files.readString(file).contains("days: 7, mites: 56"));
  }

  @Test
  void wrongAnswersAreToldWithWhatToTry() {
    Path file = folder.resolve("wrong.yaml");
    CliRun percent = CliRun.of("new", "--defaults", "--count=3.7 %", file.toString());
    assertEquals(2, percent.exitCode());
    assertTrue(percent.err().contains("not the percent"), percent.err());
    CliRun swapped = CliRun.of("new", "--defaults", "--count=300 in 11 bees", file.toString());
    assertTrue(swapped.err().contains("swapped"), swapped.err());
    CliRun piped = answering("My colony\nmoon\n", file);
    assertEquals(2, piped.exitCode());
    assertTrue(piped.err().contains("unknown climate"), piped.err());
    assertFalse(Files.exists(file));
  }

  private static CliRun answering(String answers, Path file) {
    InputStream before = System.in;
    try {
      System.setIn(new ByteArrayInputStream(answers.getBytes(StandardCharsets.UTF_8)));
      return CliRun.of("new", file.toString());
    } finally {
      System.setIn(before);
    }
  }
}
