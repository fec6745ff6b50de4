package org.undercap.cli.output;

/**
 * Tells which streams a person watches or types into. Java 17 cannot say this of standard error,
 * and later versions cannot say it of any stream, so the launcher script looks and passes it on.
 * Without the launcher none counts as a terminal: then nothing is coloured and no progress is
 * shown.
 */
public final class Terminal {
  private Terminal() {}

  /**
   * Tells whether standard output is a terminal.
   *
   * @return true if so
   */
  public static boolean onStandardOutput() {
    return Boolean.getBoolean("undercap.terminal.out");
  }

  /**
   * Tells whether standard error is a terminal.
   *
   * @return true if so
   */
  public static boolean onStandardError() {
    return Boolean.getBoolean("undercap.terminal.err");
  }

  /**
   * Tells whether a person types the answers.
   *
   * @return true if standard input is a terminal
   */
  public static boolean onStandardInput() {
    return Boolean.getBoolean("undercap.terminal.in");
  }
}
