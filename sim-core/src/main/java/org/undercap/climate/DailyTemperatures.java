package org.undercap.climate;

import java.time.LocalDate;
import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** Temperatures of dates, as from a weather station, and another course for dates without one. */
public final class DailyTemperatures implements TemperatureCourse {

  private final SortedMap<LocalDate, Double> daily;
  private final TemperatureCourse elsewhere;

  /**
   * Joins daily temperatures and a course for all other days.
   *
   * @param daily daily mean temperatures by date (C); copied
   * @param elsewhere course for dates without a temperature, and for days without a year
   * @throws IllegalArgumentException if a temperature is not finite
   */
  public DailyTemperatures(SortedMap<LocalDate, Double> daily, TemperatureCourse elsewhere) {
    for (Map.Entry<LocalDate, Double> day : daily.entrySet()) {
      if (!Double.isFinite(day.getValue())) {
        throw new IllegalArgumentException(
            "temperature of " + day.getKey() + " is " + day.getValue() + " C, must be finite");
      }
    }
    this.daily = Collections.unmodifiableSortedMap(new TreeMap<>(daily));
    this.elsewhere = elsewhere;
  }

  /**
   * The temperatures of dates.
   *
   * @return an unmodifiable map from date to daily mean (C)
   */
  public SortedMap<LocalDate, Double> daily() {
    return daily;
  }

  /**
   * The course for all other days.
   *
   * @return the course
   */
  public TemperatureCourse elsewhere() {
    return elsewhere;
  }

  @Override
  public boolean measured(LocalDate date) {
    return daily.containsKey(date);
  }

  @Override
  public double at(int doy) {
    return elsewhere.at(doy);
  }

  @Override
  public double at(LocalDate date) {
    Double measured = daily.get(date);
    return measured != null ? measured : elsewhere.at(date);
  }

  @Override
  public TemperatureCourse warmer(double degrees) {
    SortedMap<LocalDate, Double> shifted = new TreeMap<>();
    daily.forEach((date, t) -> shifted.put(date, t + degrees));
    return new DailyTemperatures(shifted, elsewhere.warmer(degrees));
  }

  @Override
  public DailyTemperatures mirrored() {
    return new DailyTemperatures(daily, elsewhere.mirrored());
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof DailyTemperatures course
        && daily.equals(course.daily)
        && elsewhere.equals(course.elsewhere);
  }

  @Override
  public int hashCode() {
    return 31 * daily.hashCode() + elsewhere.hashCode();
  }

  @Override
  public String toString() {
    return daily.size() + " daily temperatures, elsewhere " + elsewhere;
  }
}
