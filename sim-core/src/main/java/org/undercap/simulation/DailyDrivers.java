package org.undercap.simulation;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import org.undercap.climate.Climate;
import org.undercap.climate.SeasonDay;
import org.undercap.climate.TemperatureCourse;

/**
 * Season, weather and arrivals laid out day by day before a run, so that no dates are reckoned in
 * the day loop: what the place brings is the same for all colonies, temperature and arrivals may
 * differ from colony to colony.
 */
public final class DailyDrivers {
  private final LocalDate start;
  private final int[] seasonDay;
  private final double[] potentialEggs;
  private final double[] droneShare;
  private final double[][] temperature;
  private final double[][] arriving;

  private DailyDrivers(LocalDate start, int days, Climate climate, int lanes) {
    this.start = start;
    seasonDay = new int[days];
    potentialEggs = new double[days];
    droneShare = new double[days];
    temperature = new double[days][lanes];
    arriving = new double[days][lanes];
    for (int day = 0; day < days; day++) {
      int doy = SeasonDay.of(start.plusDays(day));
      seasonDay[day] = doy;
      potentialEggs[day] = climate.potentialEggs(doy);
      droneShare[day] = climate.droneShare(doy);
    }
  }

  /**
   * The days from a date on, the same for all colonies.
   *
   * @param climate place
   * @param start first day
   * @param days number of days, at least 1
   * @param arrivals mites that arrive on a date (mites per day), at least 0
   * @param lanes number of colonies side by side
   * @return the drivers
   * @throws IllegalArgumentException if an arrival is negative or not finite
   */
  public static DailyDrivers of(
      Climate climate, LocalDate start, int days, ToDoubleFunction<LocalDate> arrivals, int lanes) {
    DailyDrivers drivers = new DailyDrivers(start, days, climate, lanes);
    TemperatureCourse course = climate.temperature();
    for (int day = 0; day < days; day++) {
      LocalDate date = start.plusDays(day);
      double mites = arrivals.applyAsDouble(date);
      if (!(mites >= 0 && mites < Double.POSITIVE_INFINITY)) {
        throw new IllegalArgumentException(
            "mites arriving on " + date + ": " + mites + " must be a finite number of at least 0");
      }
      Arrays.fill(drivers.temperature[day], course.at(date));
      Arrays.fill(drivers.arriving[day], mites);
    }
    return drivers;
  }

  /**
   * Days of the 365-day year in the usual weather of a climate, without leap days and arrivals.
   *
   * @param climate place
   * @param first day of the year to begin with, 1 to 365
   * @param days number of days, at least 1
   * @param lanes number of colonies side by side
   * @return the drivers; their dates are nominal
   */
  static DailyDrivers ofSeason(Climate climate, int first, int days, int lanes) {
    DailyDrivers drivers = new DailyDrivers(LocalDate.ofYearDay(2001, first), days, climate, lanes);
    for (int day = 0; day < days; day++) {
      int doy = (first - 1 + day) % SeasonDay.DAYS + 1;
      drivers.seasonDay[day] = doy;
      drivers.potentialEggs[day] = climate.potentialEggs(doy);
      drivers.droneShare[day] = climate.droneShare(doy);
      Arrays.fill(drivers.temperature[day], climate.temperature().at(doy));
    }
    return drivers;
  }

  /**
   * First day.
   *
   * @return its date
   */
  public LocalDate start() {
    return start;
  }

  /**
   * Number of days.
   *
   * @return days, at least 1
   */
  public int days() {
    return seasonDay.length;
  }

  /**
   * Number of colonies side by side.
   *
   * @return lanes, at least 1
   */
  public int lanes() {
    return temperature[0].length;
  }

  int seasonDay(int day) {
    return seasonDay[day];
  }

  double potentialEggs(int day) {
    return potentialEggs[day];
  }

  double droneShare(int day) {
    return droneShare[day];
  }

  /**
   * Temperatures of a day, to be changed before a run where colonies meet different weather.
   *
   * @param day number of the day, from 0
   * @return daily mean outside temperature (C), one value a colony; live
   */
  public double[] temperature(int day) {
    return temperature[day];
  }

  /**
   * Arrivals of a day, to be changed before a run where colonies have different neighbours.
   *
   * @param day number of the day, from 0
   * @return mites arriving (mites per day), one value a colony; live
   */
  public double[] arriving(int day) {
    return arriving[day];
  }
}
