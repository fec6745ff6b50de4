package org.undercap.climate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A course through the year given at the middle of each month, linear in between and periodic over
 * 365 days. The middles of the months are the season days 15, 45, 74, 105, 135, 166, 196, 227, 258,
 * 288, 319 and 349.
 */
public record MonthlyTable(List<Double> values) {

  private static final int MONTHS = 12;
  private static final int[] MID_MONTH = {15, 45, 74, 105, 135, 166, 196, 227, 258, 288, 319, 349};

  /**
   * Checks the values.
   *
   * @param values values at mid-month, January to December (unit of the quantity)
   * @throws IllegalArgumentException if there are not twelve values or one is not finite
   */
  public MonthlyTable {
    values = List.copyOf(values);
    if (values.size() != MONTHS) {
      throw new IllegalArgumentException(
          "a monthly table needs " + MONTHS + " values, " + values.size() + " were given");
    }
    for (int month = 0; month < MONTHS; month++) {
      if (!Double.isFinite(values.get(month))) {
        throw new IllegalArgumentException(
            "value of month " + (month + 1) + " is " + values.get(month) + ", must be finite");
      }
    }
  }

  /**
   * The value on a day.
   *
   * @param doy season day (1 to 365)
   * @return the value (unit of the table)
   * @throws IllegalArgumentException if the day is not in 1 to 365
   */
  public double at(int doy) {
    SeasonDay.check(doy);
    int next = 0;
    while (next < MONTHS && MID_MONTH[next] <= doy) {
      next++;
    }
    int before = (next + MONTHS - 1) % MONTHS;
    int after = next % MONTHS;
    int span = Math.floorMod(MID_MONTH[after] - MID_MONTH[before], SeasonDay.DAYS);
    int passed = Math.floorMod(doy - MID_MONTH[before], SeasonDay.DAYS);
    double from = values.get(before);
    return from + (values.get(after) - from) * passed / span;
  }

  /**
   * The same course half a year later: the January value becomes that of July.
   *
   * @return the shifted table
   */
  public MonthlyTable shiftedHalfAYear() {
    List<Double> shifted = new ArrayList<>(values);
    Collections.rotate(shifted, MONTHS / 2);
    return new MonthlyTable(shifted);
  }

  /**
   * The greatest value of the year.
   *
   * @return the maximum (unit of the table)
   */
  public double max() {
    return Collections.max(values);
  }
}
