package org.undercap.scenario;

import java.util.Optional;
import org.undercap.hive.FrameType;
import org.undercap.internal.Checks;

/** Bees, brood and hive on the first day. */
public record HiveFacts(
    double bees,
    double broodCells,
    Optional<FrameType> frame,
    double queenQuality,
    boolean openFloor,
    boolean supersOn) {

  /**
   * Checks the numbers.
   *
   * @param bees adult workers (bees, above 0)
   * @param broodCells eggs, larvae and sealed brood (cells, at least 0)
   * @param frame type of the frames, if it matters
   * @param queenQuality laying against a good queen (ratio, at least 0)
   * @param openFloor whether the floor is open
   * @param supersOn whether honey supers are on
   * @throws IllegalArgumentException if a number is out of range
   */
  public HiveFacts {
    Checks.positive(bees, "bees");
    Checks.notNegative(broodCells, "brood (cells)");
    Checks.notNegative(queenQuality, "queen quality");
  }
}
