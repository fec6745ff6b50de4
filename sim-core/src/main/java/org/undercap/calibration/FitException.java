package org.undercap.calibration;

/** A fit that has no answer. */
public final class FitException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * Says why.
   *
   * @param message what went wrong and what to try
   */
  public FitException(String message) {
    super(message);
  }
}
