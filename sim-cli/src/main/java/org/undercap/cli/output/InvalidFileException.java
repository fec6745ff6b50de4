package org.undercap.cli.output;

/**
 * Ends a command because a file that it read is not valid.
 *
 * <p>The message is shown to the user as it stands. It lists all problems of the file, one to a
 * line, each with file, line and column.
 */
public final class InvalidFileException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * Creates the exception.
   *
   * @param problems all problems of the file, one to a line, without a line end after the last
   */
  public InvalidFileException(String problems) {
    super(problems);
  }
}
