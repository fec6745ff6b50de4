package org.undercap.climate;

import java.time.LocalDate;

/**
 * The day of a year of 365 days, so that a date has the same season in every year: 1 January is 1,
 * 1 March is always 60, 31 December is 365; 29 February counts as 28 February again (59).
 */
public final class SeasonDay {

  /** Days of the year (days). */
  public static final int DAYS = 365;

  private static final int LAST_OF_FEBRUARY = 59;

  private SeasonDay() {}

  /**
   * The season day of a date.
   *
   * @param date a date
   * @return the day (1 to 365)
   */
  public static int of(LocalDate date) {
    int day = date.getDayOfYear();
    return date.isLeapYear() && day > LAST_OF_FEBRUARY ? day - 1 : day;
  }

  /**
   * Checks a season day.
   *
   * @param doy the day
   * @return the same day
   * @throws IllegalArgumentException if it is not in 1 to 365
   */
  static int check(int doy) {
    if (!(doy >= 1 && doy <= DAYS)) {
      throw new IllegalArgumentException("season day " + doy + " must be in [1, " + DAYS + "]");
    }
    return doy;
  }
}
