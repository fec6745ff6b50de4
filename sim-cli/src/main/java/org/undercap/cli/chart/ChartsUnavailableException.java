package org.undercap.cli.chart;

/** Java's own drawing cannot start on this machine; the message says in one line what to do. */
public final class ChartsUnavailableException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * Keeps the reason.
   *
   * @param message what is missing and how to install it
   * @param cause what Java reported
   */
  public ChartsUnavailableException(String message, Throwable cause) {
    super(message, cause);
  }
}
