package org.undercap.monitoring;

import java.time.LocalDate;

/** A count of mites that a keeper made. */
public sealed interface Count permits Wash, Board, DroneCells {

  /**
   * The day of the count; for a board the day on which it was taken out.
   *
   * @return the date
   */
  LocalDate date();
}
