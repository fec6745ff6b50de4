package org.undercap.model;

/**
 * The model left its range: a number that cannot be, or an account of mites that does not close.
 * Always a defect, never bad input.
 */
public final class ModelException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * Says what went wrong, on which day and in which state.
   *
   * @param message what, day and state
   */
  public ModelException(String message) {
    super(message);
  }
}
