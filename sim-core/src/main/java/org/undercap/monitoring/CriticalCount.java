package org.undercap.monitoring;

import org.undercap.internal.Checks;

/**
 * Mites of one colony that fell in a critical test, counted in the same way throughout.
 *
 * @param byTest mites killed by the treatment under test (mites)
 * @param byFollowUp mites killed afterwards by a treatment that kills the rest (mites)
 */
public record CriticalCount(long byTest, long byFollowUp) {
  /**
   * Checks the numbers.
   *
   * @param byTest at least 0 (mites)
   * @param byFollowUp at least 0 (mites)
   * @throws IllegalArgumentException if a number is negative
   */
  public CriticalCount {
    Checks.notNegative((double) byTest, "mites killed by the test");
    Checks.notNegative((double) byFollowUp, "mites killed by the follow-up");
  }
}
