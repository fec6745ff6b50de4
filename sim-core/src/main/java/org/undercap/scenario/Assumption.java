package org.undercap.scenario;

/**
 * Something that a result rests on beside the plain facts of the user.
 *
 * @param field the field of the scenario file, as in {@code colony.bees}
 * @param basis why it is assumed
 * @param text what is assumed, a sentence without a full stop
 */
public record Assumption(String field, Basis basis, String text) {

  /** Why something is assumed. */
  public enum Basis {
    /** The user did not say; this is the default. */
    DEFAULT,
    /** It was worked out from what the user said. */
    DERIVED,
    /** The user changed what the library ships. */
    CHANGED
  }
}
