package org.undercap.climate;

import java.time.LocalDate;

/** A course with a warmer or cooler time in it; the usual season stays as it is. */
public record Spell(TemperatureCourse usual, LocalDate from, LocalDate until, double degrees)
    implements TemperatureCourse {

  /**
   * Checks the days and the degrees.
   *
   * @param usual the course without the spell
   * @param from first day of the spell
   * @param until last day of the spell, not before the first
   * @param degrees how much warmer (C); negative is cooler
   * @throws IllegalArgumentException if the days are reversed or the degrees not finite
   */
  public Spell {
    if (until.isBefore(from) || !Double.isFinite(degrees)) {
      throw new IllegalArgumentException(
          "no spell of " + degrees + " C from " + from + " to " + until);
    }
  }

  @Override
  public double at(int doy) {
    return usual.at(doy);
  }

  @Override
  public double at(LocalDate date) {
    boolean inside = !date.isBefore(from) && !date.isAfter(until);
    return usual.at(date) + (inside ? degrees : 0);
  }

  @Override
  public boolean measured(LocalDate date) {
    return usual.measured(date);
  }

  @Override
  public TemperatureCourse warmer(double more) {
    return new Spell(usual.warmer(more), from, until, degrees);
  }

  @Override
  public TemperatureCourse mirrored() {
    return new Spell(usual.mirrored(), from, until, degrees);
  }
}
