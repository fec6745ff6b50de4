package org.undercap.planning;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;

/**
 * Days on which a treatment may begin.
 *
 * @param from first day
 * @param until last day
 * @param everyDays days from one to the next (days)
 */
public record StartDates(LocalDate from, LocalDate until, int everyDays) {
  /** Days from one start to the next unless told otherwise. */
  public static final int WEEK = 7;

  private static final int LEAST_WEEKS = 8;

  /**
   * Checks the order.
   *
   * @param from first day
   * @param until not before the first
   * @param everyDays at least 1 (days)
   * @throws IllegalArgumentException if the days are reversed or the distance is out of range
   */
  public StartDates {
    if (until.isBefore(from)) {
      throw new IllegalArgumentException(
          "last start " + until + " must not lie before the first, " + from);
    }
    if (everyDays < 1) {
      throw new IllegalArgumentException(
          "days between starts " + everyDays + " must be at least 1");
    }
  }

  /**
   * Every week from the first day until no more winter bees emerge, and eight weeks at least.
   *
   * @param scope the run
   * @return the days
   */
  public static StartDates usual(TrialScope scope) {
    LocalDate start = scope.scenario().start();
    LocalDate least = start.plusDays((long) LEAST_WEEKS * WEEK);
    LocalDate reared = scope.dates().winterBeesUntil();
    LocalDate until = reared.isAfter(least) ? reared : least;
    LocalDate end = scope.scenario().end();
    return new StartDates(start, until.isAfter(end) ? end : until, WEEK);
  }

  /**
   * The days.
   *
   * @return at least one, in order
   */
  public List<LocalDate> all() {
    return from.datesUntil(until.plusDays(1), Period.ofDays(everyDays)).toList();
  }
}
