package org.undercap.monitoring;

/** What counts say about a treatment. */
public enum Verdict {
  /** The whole interval of the efficacy lies above the minimum. */
  WORKS,
  /** The whole interval of the efficacy lies below the minimum. */
  POOR,
  /** The minimum lies in the interval: the counts cannot tell. */
  CANNOT_TELL
}
