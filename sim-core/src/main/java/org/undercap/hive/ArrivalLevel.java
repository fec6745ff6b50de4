package org.undercap.hive;

import java.time.LocalDate;
import java.util.List;
import org.undercap.climate.Hemisphere;

/** How many mites come with bees from other colonies, in steps of calendar months. */
public record ArrivalLevel(
    String id, String description, List<Double> perMonth, List<String> sourceKeys) {

  private static final int MONTHS = 12;

  /**
   * Checks the arrivals.
   *
   * @param id name in files
   * @param description the neighbourhood that it stands for
   * @param perMonth arrivals in January to December of the north (mites per day), each at least 0
   * @param sourceKeys keys of its sources in the bibliography
   * @throws IllegalArgumentException if there are not twelve, or one is negative or not finite
   */
  public ArrivalLevel {
    perMonth = List.copyOf(perMonth);
    sourceKeys = List.copyOf(sourceKeys);
    if (perMonth.size() != MONTHS) {
      throw new IllegalArgumentException(
          "arrivals need " + MONTHS + " months, " + perMonth.size() + " were given");
    }
    for (double mites : perMonth) {
      if (!(mites >= 0 && Double.isFinite(mites))) {
        throw new IllegalArgumentException(
            "arrivals of " + mites + " mites per day must be finite and >= 0");
      }
    }
  }

  /**
   * Arrivals on a date.
   *
   * @param date the date
   * @param hemisphere where; the south has the months half a year away
   * @return mites that arrive on the bees (mites per day)
   */
  public double at(LocalDate date, Hemisphere hemisphere) {
    int shift = hemisphere == Hemisphere.SOUTH ? MONTHS / 2 : 0;
    return perMonth.get((date.getMonthValue() - 1 + shift) % MONTHS);
  }
}
