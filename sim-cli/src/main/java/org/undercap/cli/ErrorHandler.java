package org.undercap.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.util.List;
import org.undercap.cli.chart.ChartsUnavailableException;
import org.undercap.cli.command.RootCommand;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.output.FileFailure;
import org.undercap.cli.output.InvalidFileException;
import org.undercap.cli.output.UsageException;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.RunLast;
import picocli.CommandLine.UnmatchedArgumentException;

/** Turns every error into a short message on the error stream and into the right exit code. */
final class ErrorHandler implements IParameterExceptionHandler, IExecutionExceptionHandler {
  private final RootCommand root;
  private final FailureReport report;

  ErrorHandler(RootCommand root, FailureReport report) {
    this.root = root;
    this.report = report;
  }

  @Override
  public int handleParseException(ParameterException error, String[] args) {
    CommandLine command = error.getCommandLine();
    PrintWriter err = command.getErr();
    err.println(plain(printable(error.getMessage())));
    UnmatchedArgumentException.printSuggestions(error, err);
    return wrongUsage(command);
  }

  @Override
  public int handleExecutionException(Exception error, CommandLine command, ParseResult parsed) {
    PrintWriter err = command.getErr();
    if (error instanceof InvalidFileException) {
      err.println(error.getMessage());
      return ExitCodes.INVALID_FILE;
    }
    if (error instanceof UsageException) {
      err.println(error.getMessage());
      return wrongUsage(command);
    }
    if (error instanceof ChartsUnavailableException && !root.debug()) {
      err.println(error.getMessage());
      return ExitCodes.UNEXPECTED;
    }
    IOException ioError = ioErrorIn(error);
    if (ioError == null) {
      return unexpected(error, command, parsed.originalArgs());
    }
    err.println(describe(ioError));
    if (root.debug()) {
      error.printStackTrace(err);
    }
    return ExitCodes.UNEXPECTED;
  }

  /** Says in one line what no one foresaw, and leaves the details in a file. */
  int unexpected(Throwable error, CommandLine command, List<String> words) {
    PrintWriter err = command.getErr();
    if (isOutOfMemory(error)) {
      err.println(
          "not enough memory; give the program more, as in UNDERCAP_JAVA_OPTIONS=-Xmx2g, or ask for"
              + " less at once");
    } else {
      String place =
          report
              .write(error, words)
              .map(file -> "the file " + file)
              .orElse("what the same command prints with " + RootCommand.DEBUG);
      err.println(
          "unexpected error: "
              + String.valueOf(error).replaceAll("\\s+", " ")
              + "; this is a fault of the program, please report it with "
              + place);
    }
    if (root.debug()) {
      error.printStackTrace(err);
    }
    return ExitCodes.UNEXPECTED;
  }

  private static boolean isOutOfMemory(Throwable error) {
    Throwable at = error;
    while (at != null && !(at instanceof OutOfMemoryError)) {
      at = at.getCause();
    }
    return at != null;
  }

  /** Runs a command whose words can all be printed. */
  int execute(ParseResult parsed) {
    CommandLine command = parsed.commandSpec().commandLine();
    for (String word : parsed.originalArgs()) {
      if (!word.equals(printable(word))) {
        command
            .getErr()
            .println(
                "'"
                    + printable(word)
                    + "' holds a line end or another character that cannot be shown; give the file"
                    + " another name, or leave the character out");
        return wrongUsage(command);
      }
    }
    try {
      return new RunLast().execute(parsed);
    } catch (Error e) {
      return unexpected(e, command, parsed.originalArgs());
    }
  }

  /** The parser of the command line speaks to programmers. */
  private static String plain(String message) {
    return message
        .replaceFirst("^Unmatched arguments? (at|from) index \\d+:", "Unknown word:")
        .replaceFirst(" is not an? (int|long)$", " is not a whole number")
        .replaceFirst(" is not a (float|double)$", " is not a number");
  }

  /** Line ends and signs that move the cursor or turn the writing round would garble a message. */
  private static String printable(String words) {
    return words.replaceAll("[\\p{Cc}\\u2028\\u2029\\u202a-\\u202e\\u2066-\\u2069]", "?");
  }

  private static int wrongUsage(CommandLine command) {
    command.getErr().println("Try '" + command.getCommandSpec().qualifiedName() + " --help'.");
    return ExitCodes.USAGE;
  }

  private static IOException ioErrorIn(Exception error) {
    if (error instanceof UncheckedIOException unchecked) {
      return unchecked.getCause();
    }
    return error instanceof IOException io ? io : null;
  }

  /** Says in words what the bare name of a file in the message of a file error means. */
  static String describe(IOException error) {
    return error instanceof FileSystemException system && system.getFile() != null
        ? system.getFile() + ": " + FileFailure.reason(error)
        : "cannot read or write: " + FileFailure.reason(error);
  }
}
