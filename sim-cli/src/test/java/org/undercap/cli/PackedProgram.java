package org.undercap.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.stream.Stream;

/**
 * The packed program with its libraries beside it, in a folder that looks like a fresh copy of the
 * project. The launcher finds the program up to date; the Maven on its search path only fails.
 *
 * @param folder the copy, where commands are run
 */
record PackedProgram(Path folder) {
  private static final Path JAVA_HOME = Path.of(System.getProperty("java.home"));

  /** Copies the program to an empty folder. */
  static PackedProgram in(Path folder) throws IOException {
    PackedProgram program = new PackedProgram(folder);
    program.copyProject();
    return program;
  }

  private void copyProject() throws IOException {
    copyAll(Path.of("target", "lib"), "sim-cli/target/lib");
    copyAll(Path.of("..", "scenarios"), "scenarios");
    copy(Path.of("undercap"), "sim-cli/undercap");
    copyAll(Path.of("src", "main", "dist", "lib"), "sim-cli/src/main/dist/lib");
    assertTrue(folder.resolve("sim-cli/undercap").toFile().setExecutable(true));
    Files.createDirectories(folder.resolve("bin"));
    Files.createSymbolicLink(folder.resolve("bin/undercap"), Path.of("..", "sim-cli", "undercap"));
    Files.writeString(folder.resolve("bin/mvn"), "#!/bin/sh\nexit 1\n");
    assertTrue(folder.resolve("bin/mvn").toFile().setExecutable(true));
    copy(Path.of("target", "undercap.jar"), "sim-cli/target/undercap.jar");
    Path program = folder.resolve("sim-cli/target/undercap.jar");
    Files.setLastModifiedTime(program, FileTime.from(Instant.now().plusSeconds(1))); // up to date
  }

  /** Spares short tests the archive of classes that the launcher makes for quicker starts. */
  PackedProgram withoutArchive() throws IOException {
    Files.createFile(folder.resolve("sim-cli/target/undercap.jsa"));
    return this;
  }

  /** What one command of the shell gives. */
  record Ended(int exitCode, String out, String err) {}

  Ended shell(String command) throws IOException, InterruptedException {
    Path out = Files.createTempFile(folder, "out", ".txt");
    Path err = Files.createTempFile(folder, "err", ".txt");
    ProcessBuilder builder = new ProcessBuilder("sh", "-c", command);
    builder.directory(folder.toFile()).redirectOutput(out.toFile()).redirectError(err.toFile());
    builder.environment().put("JAVA_HOME", JAVA_HOME.toString());
    builder.environment().put("PATH", folder.resolve("bin") + ":" + System.getenv("PATH"));
    builder.environment().remove("UNDERCAP_JAVA_OPTIONS");
    int exitCode = builder.start().waitFor();
    return new Ended(exitCode, Files.readString(out), Files.readString(err));
  }

  private void copyAll(Path from, String to) throws IOException {
    try (Stream<Path> files = Files.list(from)) {
      for (Path file : files.toList()) {
        copy(file, to + "/" + file.getFileName());
      }
    }
  }

  private void copy(Path from, String to) throws IOException {
    Path target = folder.resolve(to);
    Files.createDirectories(target.getParent());
    Files.copy(from, target, StandardCopyOption.COPY_ATTRIBUTES);
  }
}
