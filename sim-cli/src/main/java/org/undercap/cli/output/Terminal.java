package org.undercap.cli.output;

/**
 * Tells which streams a person watches. Java 17 cannot say this of standard error, and later
 * versions cannot say it of either stream, so the launcher script looks and passes it on. Without
 * the launcher neither counts as a terminal: then nothing is coloured and no progress is shown.
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
}
