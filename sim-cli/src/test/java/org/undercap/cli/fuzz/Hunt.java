package org.undercap.cli.fuzz;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.undercap.cli.output.InvalidFileException;
import org.undercap.scenario.Problem;
import org.undercap.scenario.Reading;

/**
 * What every reader promises, whatever a file holds: a result or problems that can be shown, soon.
 */
public final class Hunt {
  private static final long MOST_NANOSECONDS = 2_000_000_000L;
  private static final int ATTEMPTS = 3;
  private static final int MOST_LINES = 2;
  private static final Path FOLDER = folder();

  private Hunt() {}

  private static Path folder() {
    try {
      return Files.createTempDirectory("undercap-hunt");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Lets a reader of the library read a file. */
  public static <T> void library(String name, byte[] bytes, Function<Path, Reading<T>> reader) {
    Path file = file(name, bytes);
    for (Problem problem : soon(() -> reader.apply(file)).problems()) {
      assertShown(problem.text());
      assertTrue(problem.text().lines().count() <= MOST_LINES, problem.text());
    }
  }

  /** Lets a reader of the command line read a file. */
  public static void program(String name, byte[] bytes, Consumer<Path> reader) {
    Path file = file(name, bytes);
    soon(() -> {
          try {
            reader.accept(file);
            return Optional.<String>empty();
          } catch (InvalidFileException e) {
            return Optional.of(e.getMessage());
          }
        })
        .ifPresent(Hunt::assertShown);
  }

  /**
   * Does something and asserts that it takes little time of the processor, so that a busy machine
   * fails no test. What takes long is done again: the first time, classes are loaded and watched.
   */
  private static <T> T soon(Supplier<T> work) {
    ThreadMXBean clock = ManagementFactory.getThreadMXBean();
    T result = null;
    for (int attempt = 1; attempt <= ATTEMPTS; attempt++) {
      long start = clock.getCurrentThreadCpuTime();
      result = work.get();
      long nanoseconds = clock.getCurrentThreadCpuTime() - start;
      if (nanoseconds < MOST_NANOSECONDS) {
        break;
      }
      assertTrue(attempt < ATTEMPTS, "slow: " + nanoseconds + " ns");
    }
    return result;
  }

  /** Writes a file in the folder in which the hunted files are read. */
  public static Path file(String name, byte[] bytes) {
    try {
      return Files.write(FOLDER.resolve(name), bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The content of files to begin with. */
  public static Stream<byte[]> contents(Path folder, String ending) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(ending)).sorted().toList().stream()
          .map(Hunt::bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Texts to begin with. */
  public static Stream<byte[]> texts(String... texts) {
    return Stream.of(texts).map(text -> text.getBytes(StandardCharsets.UTF_8));
  }

  /** The content of a file. */
  public static byte[] bytes(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void assertShown(String text) {
    assertTrue(!text.isBlank(), "no message");
    assertTrue(
        text.chars().allMatch(c -> c == '\n' || !Character.isISOControl(c)), "controls: " + text);
  }
}
