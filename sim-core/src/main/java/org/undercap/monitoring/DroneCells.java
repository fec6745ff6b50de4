package org.undercap.monitoring;

import java.time.LocalDate;
import org.undercap.internal.Checks;

/** Sealed drone cells that were opened to look for mites. */
public record DroneCells(LocalDate date, int opened, int infested) implements Count {

  /**
   * Checks the numbers.
   *
   * @param date day of the count
   * @param opened cells opened (cells, at least 1)
   * @param infested cells with at least one mite (cells, 0 to {@code opened})
   * @throws IllegalArgumentException if a number is too small, or more cells are infested than
   *     opened
   */
  public DroneCells {
    Checks.positive(opened, "drone cells opened");
    Checks.notNegative(infested, "infested drone cells");
    if (infested > opened) {
      throw new IllegalArgumentException(
          infested + " infested drone cells are more than the " + opened + " opened");
    }
  }

  @Override
  public double found() {
    return infested;
  }
}
