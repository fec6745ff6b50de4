package org.undercap.cli.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class OutputFolderTest {
  private final StringWriter err = new StringWriter();

  @TempDir private Path temp;

  @Test
  void folderIsMadeAndTheFilesAreListed() throws IOException {
    Path folder = temp.resolve("new/deep");
    try (OutputFiles files = folder(folder, IfExists.ERROR).prepare(List.of("a.csv", "b.png"))) {
      files.bytes("b.png", stream -> stream.write(7));
      files.text("a.csv", writer -> writer.write("gr\u00f6\u00dfer\n"));
      assertFalse(Files.exists(folder.resolve("a.csv")), "shown before it is complete");
      files.publish(new PrintWriter(err));
    }
    assertEquals("gr\u00f6\u00dfer\n", Files.readString(folder.resolve("a.csv")));
    assertEquals(List.of("a.csv", "b.png"), names(folder));
    assertEquals(
        "wrote " + folder.resolve("a.csv") + "\nwrote " + folder.resolve("b.png") + "\n",
        err.toString());
  }

  @Test
  void failedRunLeavesNothingBehind() throws IOException {
    Path folder = temp.resolve("new/deep");
    try (OutputFiles files = folder(folder, IfExists.ERROR).prepare(List.of("a", "b"))) {
      files.text("a", writer -> writer.write("x"));
      assertEquals(1, names(folder).size());
    }
    assertEquals(List.of(), names(temp));
  }

  @Test
  void diskThatFillsUpIsNamedWithTheFileTheUserKnows() throws IOException {
    OutputFolder folder = folder(temp, IfExists.ERROR);
    try (OutputFiles files = folder.prepare(List.of("a.csv"))) {
      UncheckedIOException error =
          assertThrows(
              UncheckedIOException.class,
              () ->
                  files.text(
                      "a.csv",
                      writer -> {
                        throw new IOException("No space left on device");
                      }));
      assertEquals(
          temp.resolve("a.csv") + ": no space left on device; make room or name another folder",
          error.getCause().getMessage());
    }
    assertEquals(List.of(), names(temp));
  }

  @Test
  void existingFilesStopTheRunBeforeItBegins() throws IOException {
    Files.writeString(temp.resolve("b"), "old");
    assertEquals(
        temp.resolve("b")
            + " exists already; name another folder, or give --if-exists=overwrite or"
            + " --if-exists=skip",
        refusal(temp, "a", "b"));
    Files.writeString(temp.resolve("a"), "old");
    Files.writeString(temp.resolve("c"), "old");
    assertTrue(
        refusal(temp, "a", "b", "c").startsWith(temp.resolve("a") + " and 2 other files exist"));
    assertEquals("old", Files.readString(temp.resolve("b")));
  }

  @Test
  void existingFilesAreKeptOnRequest() throws IOException {
    Files.writeString(temp.resolve("a"), "old");
    try (OutputFiles files = folder(temp, IfExists.SKIP).prepare(List.of("a", "b"))) {
      assertFalse(files.wants("a"));
      assertTrue(files.wants("b"));
      files.text("a", writer -> writer.write("new"));
      files.text("b", writer -> writer.write("new"));
      files.publish(new PrintWriter(err));
    }
    assertEquals("old", Files.readString(temp.resolve("a")));
    assertEquals("new", Files.readString(temp.resolve("b")));
    assertEquals(
        "kept " + temp.resolve("a") + "\nwrote " + temp.resolve("b") + "\n", err.toString());
  }

  @Test
  void existingFilesAreReplacedOnRequest() throws IOException {
    Files.writeString(temp.resolve("a"), "old and longer");
    try (OutputFiles files = folder(temp, IfExists.OVERWRITE).prepare(List.of("a"))) {
      files.text("a", writer -> writer.write("new"));
      assertEquals("old and longer", Files.readString(temp.resolve("a")));
      files.publish(new PrintWriter(err));
    }
    assertEquals("new", Files.readString(temp.resolve("a")));
    assertEquals(List.of("a"), names(temp));
  }

  @Test
  void fileThatAppearsDuringTheRunIsNotOverwritten() throws IOException {
    try (OutputFiles files = folder(temp, IfExists.ERROR).prepare(List.of("a"))) {
      files.text("a", writer -> writer.write("new"));
      Files.writeString(temp.resolve("a"), "from elsewhere");
      assertThrows(UncheckedIOException.class, () -> files.publish(new PrintWriter(err)));
    }
    assertEquals("from elsewhere", Files.readString(temp.resolve("a")));
    assertEquals(List.of("a"), names(temp));
  }

  @ParameterizedTest
  @EnumSource
  void fileInPlaceOfTheFolderIsRefused(IfExists ifExists) throws IOException {
    Path file = Files.writeString(temp.resolve("out"), "x");
    UsageException error =
        assertThrows(UsageException.class, () -> folder(file, ifExists).prepare(List.of("a")));
    assertEquals(file + ": is a file, not a folder; name another folder", error.getMessage());
  }

  @ParameterizedTest
  @EnumSource
  void folderInPlaceOfAFileIsRefused(IfExists ifExists) throws IOException {
    Files.createDirectory(temp.resolve("a"));
    assertThrows(UsageException.class, () -> folder(temp, ifExists).prepare(List.of("a")));
  }

  @Test
  void folderBelowAFileCannotBeMade() throws IOException {
    Path file = Files.writeString(temp.resolve("out"), "x");
    OutputFolder folder = folder(file.resolve("deep"), IfExists.ERROR);
    assertThrows(UncheckedIOException.class, () -> folder.prepare(List.of("a")));
  }

  @Test
  @EnabledOnOs({OS.LINUX, OS.MAC})
  void folderThatCannotBeWrittenToIsFoundBeforeTheRun() throws IOException {
    Path locked = Files.createDirectory(temp.resolve("locked"));
    Files.setPosixFilePermissions(locked, PosixFilePermissions.fromString("r-xr-xr-x"));
    assumeFalse(Files.isWritable(locked), "the administrator may write everywhere");
    OutputFolder folder = folder(locked, IfExists.ERROR);
    UncheckedIOException error =
        assertThrows(UncheckedIOException.class, () -> folder.prepare(List.of("a")));
    assertTrue(
        error.getMessage().contains("permission denied; name another folder"), error::getMessage);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", ".", "..", "../a", "a/b", "a\\b"})
  void namesHoldNoFolders(String name) {
    OutputFolder folder = folder(temp, IfExists.ERROR);
    assertThrows(IllegalArgumentException.class, () -> folder.prepare(List.of(name)));
  }

  @Test
  void namesThatDifferOnlyInCaseClash() {
    OutputFolder folder = folder(temp, IfExists.ERROR);
    assertThrows(IllegalArgumentException.class, () -> folder.prepare(List.of("Plan", "plan")));
  }

  @Test
  void preparedFilesMustBeWrittenAndNoOthers() {
    try (OutputFiles files = folder(temp, IfExists.ERROR).prepare(List.of("a"))) {
      assertThrows(IllegalArgumentException.class, () -> files.text("b", w -> w.write("x")));
      assertThrows(IllegalStateException.class, () -> files.publish(new PrintWriter(err)));
    }
  }

  private String refusal(Path path, String... names) {
    return assertThrows(
            UsageException.class, () -> folder(path, IfExists.ERROR).prepare(List.of(names)))
        .getMessage();
  }

  private static OutputFolder folder(Path path, IfExists ifExists) {
    return new OutputFolder(path, ifExists);
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
