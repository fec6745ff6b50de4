package org.undercap.lesson;

/** What runs across a panel. */
public enum Axis {
  /** Dates, as days since 1970-01-01. */
  DATES,
  /** Numbers: days after a treatment, rounds, years. */
  NUMBERS,
  /** Nothing: the panel has bars in rows, and values run across. */
  BARS,
  /** Columns of a map. */
  COLUMNS
}
