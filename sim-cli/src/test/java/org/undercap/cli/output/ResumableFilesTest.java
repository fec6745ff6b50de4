package org.undercap.cli.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A run that is broken off anywhere ends with the bytes of one that was not. */
class ResumableFilesTest {
  private static final List<String> NAMES = List.of("a.csv", "b.csv");
  private static final PrintWriter NOWHERE = new PrintWriter(new StringWriter());

  @TempDir private Path folder;

  private ResumableFiles open(IfExists ifExists, String identity) {
    return ResumableFiles.open(new OutputFolder(folder, ifExists), NAMES, "batch", identity);
  }

  private static List<byte[]> piece(long number) {
    return List.of(bytes("a" + number + "\n"), bytes("b".repeat((int) number) + "\n"));
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static void write(ResumableFiles files, long until) {
    for (long piece = files.pieces(); piece < until; piece++) {
      files.append(piece(piece), 1);
    }
  }

  /** Copies of the folder as a killed run might leave it, made by stopping before publishing. */
  private void brokenOffAfter(int pieces) throws IOException {
    try (ResumableFiles files = open(IfExists.ERROR, "same")) {
      write(files, pieces);
    }
    Path journal = folder.resolve(".batch.journal");
    assertTrue(Files.exists(journal));
  }

  private String finished() throws IOException {
    try (ResumableFiles files = open(IfExists.ERROR, "same")) {
      write(files, 20);
      assertEquals(20, files.tally());
      files.publish(NOWHERE);
      files.forget();
    }
    try (var left = Files.list(folder)) {
      assertEquals(2, left.count(), "nothing else is left");
    }
    return Files.readString(folder.resolve("a.csv")) + Files.readString(folder.resolve("b.csv"));
  }

  private static String expected() {
    StringBuilder a = new StringBuilder();
    StringBuilder b = new StringBuilder();
    for (long i = 0; i < 20; i++) {
      a.append(new String(piece(i).get(0), StandardCharsets.UTF_8));
      b.append(new String(piece(i).get(1), StandardCharsets.UTF_8));
    }
    return a.toString() + b;
  }

  @Test
  void whatIsNotInTheJournalIsCutOff() throws IOException {
    brokenOffAfter(7);
    Files.writeString(folder.resolve(".a.csv.part"), "half a li", StandardOpenOption.APPEND);
    assertEquals(expected(), finished());
  }

  @Test
  void tornLineOfTheJournalDoesNotCount() throws IOException {
    // Each state of the journal, cut at each byte.
    List<String> whole = new ArrayList<>();
    try (ResumableFiles files = open(IfExists.ERROR, "same")) {
      for (int i = 0; i < 3; i++) {
        write(files, 4L * i + 4);
        pause();
        write(files, 4L * i + 5); // commits, since some time has passed
        whole.add(Files.readString(folder.resolve(".batch.journal")));
      }
    }
    String journal = whole.get(2);
    assertTrue(journal.lines().count() >= 4, journal);
    byte[] a = Files.readAllBytes(folder.resolve(".a.csv.part"));
    byte[] b = Files.readAllBytes(folder.resolve(".b.csv.part"));
    for (int length = 0; length <= journal.length(); length++) {
      Files.deleteIfExists(folder.resolve("a.csv"));
      Files.deleteIfExists(folder.resolve("b.csv"));
      Files.write(folder.resolve(".a.csv.part"), a);
      Files.write(folder.resolve(".b.csv.part"), b);
      Files.writeString(folder.resolve(".batch.journal"), journal.substring(0, length));
      assertEquals(expected(), finished(), "cut at " + length);
    }
  }

  private static void pause() {
    try {
      Thread.sleep(260);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void canBeKilledWhileTheFilesGetTheirNames() throws IOException {
    try (ResumableFiles files = open(IfExists.ERROR, "same")) {
      write(files, 20);
      files.publish(NOWHERE);
    }
    Files.move(folder.resolve("b.csv"), folder.resolve(".b.csv.part"));
    assertEquals(expected(), finished());
  }

  @Test
  void anotherRunDoesNotTakeItUp() throws IOException {
    brokenOffAfter(3);
    UsageException refused =
        assertThrows(UsageException.class, () -> open(IfExists.ERROR, "other").close());
    assertTrue(refused.getMessage().contains("broken off"), refused.getMessage());
    try (ResumableFiles files = open(IfExists.OVERWRITE, "other")) {
      assertEquals(0, files.pieces());
    }
  }

  @Test
  void onlyOneWritesAtATime() throws IOException {
    try (ResumableFiles files = open(IfExists.ERROR, "same")) {
      UsageException refused =
          assertThrows(UsageException.class, () -> open(IfExists.ERROR, "same").close());
      assertTrue(refused.getMessage().contains("another batch"), refused.getMessage());
      assertEquals(0, files.pieces());
    }
  }

  @Test
  void shortenedFileIsNotTakenUp() throws IOException {
    try (ResumableFiles files = open(IfExists.ERROR, "same")) {
      write(files, 3);
      pause();
      write(files, 4);
    }
    Files.writeString(folder.resolve(".a.csv.part"), "");
    assertThrows(UsageException.class, () -> open(IfExists.ERROR, "same").close());
  }

  @Test
  void filesThatAreThereStay() throws IOException {
    Files.writeString(folder.resolve("a.csv"), "old");
    assertThrows(UsageException.class, () -> open(IfExists.ERROR, "same").close());
    assertFalse(Files.exists(folder.resolve(".batch.journal")));
    assertEquals("old", Files.readString(folder.resolve("a.csv")));
  }
}
