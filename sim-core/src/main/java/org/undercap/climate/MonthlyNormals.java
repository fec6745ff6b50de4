package org.undercap.climate;

/**
 * Temperatures from monthly means, taken as the temperature of mid-month.
 *
 * @param table monthly means (C)
 */
public record MonthlyNormals(MonthlyTable table) implements TemperatureCourse {

  @Override
  public double at(int doy) {
    return table.at(doy);
  }

  @Override
  public TemperatureCourse warmer(double degrees) {
    return new MonthlyNormals(
        new MonthlyTable(table.values().stream().map(t -> t + degrees).toList()));
  }

  @Override
  public MonthlyNormals mirrored() {
    return new MonthlyNormals(table.shiftedHalfAYear());
  }
}
