package org.undercap.parameter;

import java.util.Arrays;
import java.util.Locale;
import org.undercap.internal.Nearest;

/** How far a value is known. */
public enum Kind {
  /** Somebody measured it. */
  MEASURED,
  /** Computed from published numbers. */
  DERIVED,
  /** Chosen so that the model agrees with field data. */
  CALIBRATED,
  /** Nobody measured it. */
  ASSUMPTION;

  /**
   * The word used in files and reports.
   *
   * @return the name in lower case
   */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * The kind that a word of a file means.
   *
   * @param word a word as given by {@link #word()}
   * @return the kind
   * @throws IllegalArgumentException if the word is unknown
   */
  public static Kind of(String word) {
    for (Kind kind : values()) {
      if (kind.word().equals(word)) {
        return kind;
      }
    }
    throw Nearest.unknown(
        "kind of parameter", word, Arrays.stream(values()).map(Kind::word).toList());
  }
}
