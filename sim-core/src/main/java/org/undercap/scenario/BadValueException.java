package org.undercap.scenario;

/** Tells why a value in a file cannot be used; whoever knows the place makes a problem of it. */
public final class BadValueException extends Exception {

  private static final long serialVersionUID = 1;

  private final String hint;

  /**
   * A mistake.
   *
   * @param message what is wrong, with the value and what would be right
   * @param hint what to try, or empty text
   */
  public BadValueException(String message, String hint) {
    super(message);
    this.hint = hint;
  }

  /**
   * What to try.
   *
   * @return one line, possibly empty
   */
  public String hint() {
    return hint;
  }
}
