package org.undercap.batch;

import java.util.EnumSet;
import java.util.List;
import org.undercap.simulation.DailyColumn;

/** Which columns of which days a batch keeps. */
public record DailyChoice(List<DailyColumn> columns, int every) {
  /** No days. */
  public static final DailyChoice NONE = new DailyChoice(List.of(), 0);

  /** Columns that are kept unless others are named: bees, sealed brood and mites. */
  public static final List<DailyColumn> USUAL =
      List.copyOf(
          EnumSet.of(
              DailyColumn.ADULTS_HEALTHY,
              DailyColumn.ADULTS_WEAKENED,
              DailyColumn.SEALED_WORKER,
              DailyColumn.SEALED_DRONE,
              DailyColumn.MITES_ON_BEES,
              DailyColumn.MITES_IN_WORKER_CELLS,
              DailyColumn.MITES_IN_DRONE_CELLS));

  /**
   * Copies the list.
   *
   * @param columns the columns
   * @param every days from one day that is kept to the next (days), beginning with the first of the
   *     run; 0 keeps none
   * @throws IllegalArgumentException if the number of days is negative
   */
  public DailyChoice {
    columns = List.copyOf(columns);
    if (every < 0) {
      throw new IllegalArgumentException("days between rows " + every + " must be at least 0");
    }
  }
}
