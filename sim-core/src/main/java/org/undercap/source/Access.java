package org.undercap.source;

import java.util.Arrays;
import java.util.Locale;
import org.undercap.internal.Nearest;

/** How a source was read for the values taken from it, best first. */
public enum Access {
  /** The whole publication was read. */
  FULL,
  /** The abstract was read. */
  ABSTRACT,
  /** A table of the publication was read. */
  TABLE,
  /** The open data of the publication were read. */
  DATA,
  /** The value was read where others quote it. */
  SECONDARY,
  /** The value is from memory; the publication was not read. */
  MEMORY,
  /** There is no publication. */
  NONE;

  /**
   * The word used in files.
   *
   * @return the name in lower case
   */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * The access that a word of a file means.
   *
   * @param word a word as given by {@link #word()}
   * @return the access
   * @throws IllegalArgumentException if the word is unknown
   */
  public static Access of(String word) {
    for (Access access : values()) {
      if (access.word().equals(word)) {
        return access;
      }
    }
    throw Nearest.unknown("access", word, Arrays.stream(values()).map(Access::word).toList());
  }
}
