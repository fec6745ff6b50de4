package org.undercap.climate;

import java.time.LocalDate;

/** Daily mean outside temperature through the year or on dates. */
public sealed interface TemperatureCourse
    permits Sinusoid, MonthlyNormals, DailyTemperatures, Spell {

  /**
   * The temperature of the season.
   *
   * @param doy season day (1 to 365)
   * @return daily mean (C)
   * @throws IllegalArgumentException if the day is not in 1 to 365
   */
  double at(int doy);

  /**
   * The temperature on a date.
   *
   * @param date a date
   * @return daily mean (C)
   */
  default double at(LocalDate date) {
    return at(SeasonDay.of(date));
  }

  /**
   * The same seasons half a year later, as on the other hemisphere. Temperatures that were measured
   * on dates stay on their dates.
   *
   * @return the shifted course
   */
  TemperatureCourse mirrored();

  /**
   * The same course, warmer or cooler on every day.
   *
   * @param degrees how much warmer (C); negative is cooler
   * @return the shifted course
   */
  TemperatureCourse warmer(double degrees);

  /**
   * Whether the temperature of a date was measured or forecast for that date, so that no other
   * weather is to be expected.
   *
   * @param date a date
   * @return false where only the season is known
   */
  default boolean measured(LocalDate date) {
    return false;
  }
}
