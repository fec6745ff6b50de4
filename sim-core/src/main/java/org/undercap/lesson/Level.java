package org.undercap.lesson;

import org.undercap.internal.Checks;

/**
 * A level that is drawn through the whole panel.
 *
 * @param key what it is, a key of the texts
 * @param value how high it lies (unit of the panel)
 */
public record Level(String key, double value) {
  /**
   * Checks the value.
   *
   * @param key what it is
   * @param value at least 0
   * @throws IllegalArgumentException if the value is out of range
   */
  public Level {
    Checks.notNegative(value, "level " + key);
  }
}
