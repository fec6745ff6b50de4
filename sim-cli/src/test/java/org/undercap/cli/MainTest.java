package org.undercap.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercap.cli.chart.ChartsUnavailableException;
import org.undercap.cli.output.InvalidFileException;
import org.undercap.cli.output.UsageException;
import picocli.CommandLine;
import picocli.CommandLine.Command;

class MainTest {
  private static final String ESCAPE = "\u001b";

  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @Test
  void versionIsOneLineWrittenByTheBuild() {
    assertEquals(0, run("--version"));
    assertTrue(out.toString().matches("undercap \\d+\\.\\d+\\.\\d+\\S*\\R"), out::toString);
    assertEquals("", err.toString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"--help", "-h", "help"})
  void helpGoesToStandardOutputAndNamesTheExitCodes(String words) {
    assertEquals(0, run(words));
    assertTrue(out.toString().contains("Usage: undercap"), out::toString);
    assertTrue(out.toString().contains("3   a file that was read is not valid"), out::toString);
    assertEquals("", err.toString());
  }

  @Test
  void withoutWordsItTellsWhatToTypeFirst() {
    assertEquals(0, run());
    assertEquals("", err.toString());
    assertTrue(out.toString().contains("\n  undercap new my-colony.yaml "), out::toString);
    assertTrue(out.toString().contains("undercap --help"), out::toString);
    assertTrue(out.toString().lines().count() < 12, out::toString);
  }

  @Test
  void helpGroupsEveryCommandByItsUsers() {
    assertEquals(0, run("--help"));
    List<String> lines = out.toString().lines().toList();
    CommandLine all =
        Main.commandLine(new PrintWriter(out), new PrintWriter(err), false, CliRun.REPORT);
    for (String name : all.getSubcommands().keySet()) {
      assertEquals(
          1, lines.stream().filter(line -> line.startsWith("  " + name + " ")).count(), name);
    }
    List<String> headings =
        List.of(
            "For your colony:",
            "For teaching:",
            "For research:",
            "What the program knows:",
            "Housekeeping:");
    List<Integer> places = headings.stream().map(lines::indexOf).toList();
    assertEquals(places.stream().sorted().toList(), places);
    assertTrue(places.get(0) > 0, out::toString);
    assertTrue(lines.get(places.get(0) + 1).startsWith("  new "), out::toString);
    lines.forEach(line -> assertTrue(line.length() <= 80, line));
  }

  @Test
  void helpOfOneCommandIsTheSameInBothForms() {
    assertEquals(0, run("help", "completion"));
    String first = out.toString();
    out.getBuffer().setLength(0);
    assertEquals(0, run("completion", "--help"));
    assertEquals(first, out.toString());
    assertTrue(first.contains("Usage: undercap completion"), first);
    assertTrue(first.contains("Exit codes:"), first);
  }

  @Test
  void completionScriptNamesTheProgram() {
    assertEquals(0, run("completion", "bash"));
    assertTrue(out.toString().contains("complete -F _complete_undercap"), out::toString);
  }

  @Test
  void wrongOptionIsAnsweredInThreeLinesWithASuggestion() {
    assertEquals(2, run("--debugg"));
    assertEquals("", out.toString());
    assertEquals(
        """
        Unknown option: '--debugg'
        Possible solutions: --debug
        Try 'undercap --help'.
        """,
        err.toString());
  }

  @Test
  void mistypedCommandIsSuggestedNotRun() {
    assertEquals(2, run("hepl"));
    assertEquals("", out.toString());
    assertTrue(err.toString().contains("Did you mean: undercap help"), err::toString);
  }

  @Test
  void errorsAreNeverColoured() {
    assertEquals(2, coloured().execute("hepl"));
    assertFalse(err.toString().contains(ESCAPE), err::toString);
  }

  @Test
  void helpIsColouredOnlyWhenWanted() {
    run("--help");
    assertFalse(out.toString().contains(ESCAPE));
    coloured().execute("--help");
    assertTrue(out.toString().contains(ESCAPE));
  }

  @Test
  void unexpectedErrorTakesOneLineAndLeavesItsDetailsInAFile() throws IOException {
    assertEquals(1, runFailing(new IllegalStateException("bees\nbelow zero")));
    assertEquals("", out.toString());
    Path report = folder.resolve("undercap-failure.txt");
    assertEquals(
        "unexpected error: java.lang.IllegalStateException: bees below zero; this is a fault of the"
            + " program, please report it with the file "
            + report
            + "\n",
        err.toString());
    String text = Files.readString(report);
    assertTrue(text.startsWith("undercap "), text);
    assertTrue(text.contains("\ncommand: fail\nJava "), text);
    assertTrue(text.contains("\tat org.undercap.cli.MainTest"), text);
  }

  @Test
  void laterFailureReplacesTheReport() throws IOException {
    runFailing(new IllegalStateException("first"));
    runFailing(new IllegalStateException("second"));
    String text = Files.readString(folder.resolve("undercap-failure.txt"));
    assertTrue(text.contains("second") && !text.contains("first"), text);
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(1, files.count());
    }
  }

  @Test
  void reportThatCannotBeWrittenIsNoFailureOfItsOwn() throws IOException {
    Files.createDirectory(folder.resolve("undercap-failure.txt"));
    assertEquals(1, runFailing(new IllegalStateException("bees below zero")));
    assertEquals(
        "unexpected error: java.lang.IllegalStateException: bees below zero; this is a fault of the"
            + " program, please report it with what the same command prints with --debug\n",
        err.toString());
  }

  @Test
  void lackOfMemoryIsToldWithWhatToDo() {
    String expected =
        "not enough memory; give the program more, as in UNDERCAP_JAVA_OPTIONS=-Xmx2g, or ask for"
            + " less at once\n";
    assertEquals(1, runFailing(new OutOfMemoryError("Java heap space")));
    assertEquals(expected, err.toString());
    err.getBuffer().setLength(0);
    assertEquals(1, runFailing(new IllegalStateException(new OutOfMemoryError("in a thread"))));
    assertEquals(expected, err.toString());
  }

  @Test
  void errorOfJavaIsNoStackTraceEither() {
    assertEquals(1, runFailing(new StackOverflowError()));
    assertTrue(err.toString().startsWith("unexpected error: java.lang.StackOverflowError; this"));
    assertEquals(1, err.toString().lines().count());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"a\nb.yaml", "a\tb", "\u001b[31mred", "a\u202eb", "a\u2028b", "\u0000", "a\rb"})
  void wordThatWouldGarbleAMessageIsRefusedInTwoLines(String word) {
    assertEquals(2, run("check", word));
    assertEquals("", out.toString());
    assertEquals(2, err.toString().lines().count(), err::toString);
    assertTrue(err.toString().contains("?"), err::toString);
    assertFalse(err.toString().contains(ESCAPE), err::toString);
    err.getBuffer().setLength(0);
    assertEquals(2, run("--unknown" + word));
    assertFalse(err.toString().contains(ESCAPE) || err.toString().contains("\u202e"));
  }

  @Test
  void debugShowsTheStackTrace() {
    assertEquals(1, runFailing(new IllegalStateException("bees below zero"), "--debug"));
    assertTrue(err.toString().contains("\tat org.undercap.cli.MainTest"), err::toString);
  }

  @Test
  void missingFileIsNamedInPlainWords() {
    assertEquals(1, runFailing(new UncheckedIOException(new NoSuchFileException("hive.yaml"))));
    assertEquals("hive.yaml: no such file or folder\n", err.toString());
  }

  @Test
  void invalidFileHasItsOwnExitCodeAndItsMessageStandsAlone() {
    assertEquals(3, runFailing(new InvalidFileException("hive.yaml:5:15: error: no such date")));
    assertEquals("hive.yaml:5:15: error: no such date\n", err.toString());
  }

  @Test
  void wrongUseFoundLateIsAnsweredLikeAnyOther() {
    assertEquals(2, runFailing(new UsageException("out: is a file")));
    assertEquals("", out.toString());
    assertEquals("out: is a file\nTry 'undercap fail --help'.\n", err.toString());
  }

  @Test
  void fullDiskIsNamedInPlainWords() {
    IOException full = new FileSystemException("a.csv", null, "No space left on device");
    assertEquals(1, runFailing(new UncheckedIOException(full)));
    assertEquals("a.csv: no space left on device\n", err.toString());
  }

  @Test
  void machineThatCannotDrawIsNoFaultOfTheProgram() {
    RuntimeException error = new ChartsUnavailableException("charts need fonts", new Error());
    assertEquals(1, runFailing(error));
    assertEquals("charts need fonts\n", err.toString());
    assertEquals(1, runFailing(error, "--debug"));
    assertTrue(err.toString().contains("\tat org.undercap.cli.MainTest"), err::toString);
  }

  @Test
  void resultsThatCannotBePrintedAreAFailure() {
    IOException full = new IOException("No space left on device");
    assertEquals(1, Main.notPrinted(0, full, new PrintWriter(err, true)));
    assertEquals("standard output: no space left on device\n", err.toString());
    assertEquals(3, Main.notPrinted(3, full, new PrintWriter(err, true)), "the first failure");
  }

  @Test
  void readerWhoHasSeenEnoughIsNoFailure() {
    assertEquals(0, Main.notPrinted(0, new IOException("Broken pipe"), new PrintWriter(err, true)));
    assertEquals("", err.toString());
  }

  @Test
  void firstFailureOfAStreamIsRemembered() {
    WatchedStream stream =
        new WatchedStream(
            new OutputStream() {
              private int calls;

              @Override
              public void write(int oneByte) throws IOException {
                throw new IOException("failure " + ++calls);
              }
            });
    PrintWriter writer = new PrintWriter(stream, true, StandardCharsets.UTF_8);
    assertTrue(stream.failure().isEmpty());
    writer.println("a");
    writer.println("b");
    assertEquals("failure 1", stream.failure().orElseThrow().getMessage());
  }

  @Test
  void coloursNeedATerminalAndConsent() {
    assertTrue(Main.wantsColour(true, Map.of("TERM", "xterm", "NO_COLOR", "")));
    assertFalse(Main.wantsColour(false, Map.of("TERM", "xterm")));
    assertFalse(Main.wantsColour(true, Map.of("TERM", "dumb")));
    assertFalse(Main.wantsColour(true, Map.of("TERM", "xterm", "NO_COLOR", "1")));
    assertFalse(Main.wantsColour(true, Map.of("TERM", "xterm"), "help", "--no-color"));
  }

  private int run(String... args) {
    return commandLine(false).execute(args);
  }

  private int runFailing(Throwable error, String... options) {
    CommandLine commandLine = commandLine(false);
    commandLine.addSubcommand("fail", new FailingCommand(error));
    // The sub-command is given its handlers again because it came after they were set.
    commandLine.setExecutionExceptionHandler(commandLine.getExecutionExceptionHandler());
    commandLine.setOut(commandLine.getOut()).setErr(commandLine.getErr());
    String[] args = new String[options.length + 1];
    System.arraycopy(options, 0, args, 0, options.length);
    args[options.length] = "fail";
    return commandLine.execute(args);
  }

  private CommandLine coloured() {
    return commandLine(true);
  }

  private CommandLine commandLine(boolean colour) {
    return Main.commandLine(
        new PrintWriter(out, true), new PrintWriter(err, true), colour, new FailureReport(folder));
  }

  /** A command that does nothing but fail. */
  @Command
  private static final class FailingCommand implements Callable<Integer> {
    private final Throwable error;

    FailingCommand(Throwable error) {
      this.error = error;
    }

    @Override
    public Integer call() {
      if (error instanceof Error fatal) {
        throw fatal;
      }
      throw (RuntimeException) error;
    }
  }
}
