package org.undercap.monitoring;

import java.time.LocalDate;

/** A count of mites that a keeper made. */
public sealed interface Count permits Wash, Board, DroneCells, WorkerCells {

  /**
   * The day of the count; for a board the day on which it was taken out.
   *
   * @return the date
   */
  LocalDate date();

  /**
   * The first day that the count covers.
   *
   * @return the date; for a board the day on which it was put in
   */
  default LocalDate firstDay() {
    return date();
  }

  /**
   * What was found.
   *
   * @return mites, or cells with at least one mite
   */
  double found();
}
