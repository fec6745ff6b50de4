package org.undercap.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import org.undercap.cli.command.RootCommand;
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
    PrintWriter out = utf8(FileDescriptor.out);
    PrintWriter err = utf8(FileDescriptor.err);
    boolean colour = wantsColour(Terminal.onStandardOutput(), System.getenv(), args);
    int exitCode = commandLine(out, err, colour).execute(args);
    out.flush();
    err.flush();
    System.exit(exitCode);
  }

  /**
   * Builds the command line.
   *
   * @param out takes results and help
   * @param err takes errors, warnings and progress; never coloured
   * @param colour whether help on {@code out} is coloured
   */
  static CommandLine commandLine(PrintWriter out, PrintWriter err, boolean colour) {
    RootCommand root = new RootCommand();
    ErrorHandler errors = new ErrorHandler(root);
    return new CommandLine(root)
        .setOut(out)
        .setErr(err)
        .setColorScheme(Help.defaultColorScheme(colour ? Ansi.ON : Ansi.OFF))
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

  private static PrintWriter utf8(FileDescriptor stream) {
    return new PrintWriter(new FileOutputStream(stream), true, StandardCharsets.UTF_8);
  }
}
