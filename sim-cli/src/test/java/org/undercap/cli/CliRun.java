package org.undercap.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.Locale;

/** What one call of the program gives: exit code, standard output, standard error. */
public record CliRun(int exitCode, String out, String err) {
  static final FailureReport REPORT = new FailureReport(Path.of("target"));

  /** Runs the program with the words after its name. */
  public static CliRun of(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int exitCode =
        Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true), false, REPORT)
            .execute(args);
    return new CliRun(exitCode, out.toString(), err.toString());
  }

  /** Runs the program on a machine that is set to another language. */
  public static CliRun in(Locale locale, String... args) {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(locale);
      return of(args);
    } finally {
      Locale.setDefault(before);
    }
  }
}
