package org.undercap.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.Locale;
import org.undercap.cli.chart.ChartsUnavailableException;
import org.undercap.cli.command.RootCommand;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.output.InvalidFileException;
import org.undercap.cli.output.UsageException;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** Turns every error into a short message on the error stream and into the right exit code. */
final class ErrorHandler implements IParameterExceptionHandler, IExecutionExceptionHandler {
  private final RootCommand root;

  ErrorHandler(RootCommand root) {
    this.root = root;
  }

  @Override
  public int handleParseException(ParameterException error, String[] args) {
    CommandLine command = error.getCommandLine();
    PrintWriter err = command.getErr();
    err.println(error.getMessage());
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
    err.println(ioError == null ? "unexpected error: " + error : describe(ioError));
    if (root.debug()) {
      error.printStackTrace(err);
    } else if (ioError == null) {
      err.println(
          "This is a fault of the program. Please report it with what the same command prints with "
              + RootCommand.DEBUG
              + ".");
    }
    return ExitCodes.UNEXPECTED;
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
    if (error instanceof NoSuchFileException missing) {
      return missing.getFile() + ": no such file or folder";
    }
    if (error instanceof AccessDeniedException denied) {
      return denied.getFile() + ": permission denied";
    }
    if (error instanceof FileAlreadyExistsException existing) {
      return existing.getFile() + ": exists already";
    }
    if (error instanceof FileSystemException system && system.getReason() != null) {
      return system.getFile() + ": " + firstLower(system.getReason());
    }
    return "cannot read or write: " + error.getMessage();
  }

  /** Messages begin with a lower-case letter, unless it is that of an abbreviation. */
  private static String firstLower(String words) {
    boolean word = words.length() > 1 && Character.isLowerCase(words.charAt(1));
    return word ? words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1) : words;
  }
}
