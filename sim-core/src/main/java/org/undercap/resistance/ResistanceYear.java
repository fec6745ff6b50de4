package org.undercap.resistance;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;

/** One year of a study. */
public record ResistanceYear(
    int number,
    LocalDate from,
    String plan,
    Map<String, Double> resistant,
    double mites,
    double highestPer100Bees,
    Optional<LocalDate> lostOn) {

  /**
   * Copies the map.
   *
   * @param number the year of the study, from 1
   * @param from its first day
   * @param plan what the keeper did
   * @param resistant share of resistant mites at its end by class of substances (fraction)
   * @param mites all mites at its end (mites)
   * @param highestPer100Bees most mites on bees for each 100 bees on a day (mites per 100 bees)
   * @param lostOn day on which the colony was lost, with which the study ends
   */
  public ResistanceYear {
    resistant = Map.copyOf(resistant);
  }
}
