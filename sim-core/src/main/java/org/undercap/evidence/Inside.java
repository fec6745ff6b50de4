package org.undercap.evidence;

/** Whether the model agrees with a published finding. */
public enum Inside {
  /** All numbers lie inside the accepted intervals and all conditions hold. */
  YES("yes"),
  /** A number lies outside, or a condition does not hold. */
  NO("no"),
  /** The finding was not held against the model. */
  NOT_RUN("not run");

  private final String words;

  Inside(String words) {
    this.words = words;
  }

  /**
   * The answer in words.
   *
   * @return yes, no or not run
   */
  public String words() {
    return words;
  }
}
