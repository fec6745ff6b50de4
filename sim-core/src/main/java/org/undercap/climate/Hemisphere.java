package org.undercap.climate;

/** Half of the earth, which decides in which months the seasons fall. */
public enum Hemisphere {
  /** Summer in June to August. */
  NORTH,
  /** Summer in December to February. */
  SOUTH
}
