package org.undercap.cli.output;

/**
 * Ends a command because the command line asks for something that cannot be: a name that does not
 * exist, a file that must not be overwritten. The message is shown to the user as it stands; it
 * says what to try.
 */
public final class UsageException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * Creates the exception.
   *
   * @param message what is wrong and what to try, in lower case, without a full stop
   */
  public UsageException(String message) {
    super(message);
  }
}
