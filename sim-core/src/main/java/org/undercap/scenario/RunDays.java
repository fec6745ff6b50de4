package org.undercap.scenario;

import java.time.LocalDate;

/** First and last day of a run. */
record RunDays(LocalDate start, LocalDate end) {
  /** Syrup that was fed shortly before the run still acts in it. */
  RunDays withWeeksBefore() {
    InputLimit before = InputLimits.shipped().get("feeding.before");
    return new RunDays(start.minusDays((long) before.high()), end);
  }

  boolean contains(LocalDate date) {
    return !date.isBefore(start) && !date.isAfter(end);
  }
}
