package org.undercap.cli.lesson;

import java.util.Locale;

/** Who listens. */
public enum Audience {
  /** People who are new to bees. */
  NEW,
  /** Keepers. */
  PRACTISED,
  /** Veterinarians and inspectors. */
  VET;

  /**
   * The word in commands and in keys of the texts.
   *
   * @return in lower case
   */
  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT);
  }
}
