package org.undercap.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import org.undercap.cli.command.RootCommand;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.output.Terminal;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Help.Ansi;

/**
 * Starts the command line. Results go to standard output and everything else to standard error,
 * both as UTF-8 whatever the machine's own encoding is.
 */
public final class Main {
  private Main() {}

  /**
   * Runs the command that the arguments name, then ends the program with the command's exit code.
   *
   * @param args the words after {@code undercap}
   */
  public static void main(String[] args) {
    Locale.setDefault(Locale.ROOT); // Help and errors of libraries are the same everywhere.
    WatchedStream results = new WatchedStream(new FileOutputStream(FileDescriptor.out));
    PrintWriter out = utf8(results);
    PrintWriter err = utf8(new FileOutputStream(FileDescriptor.err));
    boolean colour = wantsColour(Terminal.onStandardOutput(), System.getenv(), args);
    FailureReport report = new FailureReport(Path.of(""));
    int exitCode = commandLine(out, err, colour, report, args).execute(args);
    out.flush();
    int finalCode = results.failure().map(why -> notPrinted(exitCode, why, err)).orElse(exitCode);
    err.flush();
    System.exit(finalCode);
  }

  /**
   * Decides how to end when results could not be printed. Whoever reads them may stop early, as
   * {@code head} does: that is no failure.
   *
   * @param exitCode the exit code of the command
   * @param why what happened to standard output
   * @param err told of a failure
   * @return the exit code of the program
   */
  static int notPrinted(int exitCode, IOException why, PrintWriter err) {
    String reason = String.valueOf(why.getMessage());
    if (reason.toLowerCase(Locale.ROOT).contains("pipe")) {
      return exitCode;
    }
    err.println(ErrorHandler.describe(new FileSystemException("standard output", null, reason)));
    return exitCode == ExitCodes.DONE ? ExitCodes.UNEXPECTED : exitCode;
  }

  /**
   * Builds the command line.
   *
   * @param out takes results and help
   * @param err takes errors, warnings and progress; never coloured
   * @param colour whether help on {@code out} is coloured
   * @param report takes what was not foreseen
   * @param args the words after {@code undercap}, for which it is built; none for all commands
   */
  static CommandLine commandLine(
      PrintWriter out, PrintWriter err, boolean colour, FailureReport report, String... args) {
    RootCommand root = new RootCommand();
    ErrorHandler errors = new ErrorHandler(root, report);
    CommandLine line = new CommandLine(root);
    RootCommand.addCommands(line, args);
    return line.setOut(out)
        .setErr(err)
        .setColorScheme(Help.defaultColorScheme(colour ? Ansi.ON : Ansi.OFF))
        .setExecutionStrategy(errors::execute)
        .setParameterExceptionHandler(errors)
        .setExecutionExceptionHandler(errors);
  }

  /**
   * Decides about colours: only on a terminal that can show them, and only if the user has not
   * declined them.
   *
   * @param terminal whether standard output is a terminal
   * @param environment the environment variables
   * @param args the words after {@code undercap}
   */
  static boolean wantsColour(boolean terminal, Map<String, String> environment, String... args) {
    return terminal
        && !"dumb".equals(environment.get("TERM"))
        && environment.getOrDefault("NO_COLOR", "").isEmpty()
        && !Arrays.asList(args).contains(RootCommand.NO_COLOR);
  }

  private static PrintWriter utf8(OutputStream stream) {
    return new PrintWriter(stream, true, StandardCharsets.UTF_8);
  }
}
