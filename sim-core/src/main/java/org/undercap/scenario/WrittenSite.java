package org.undercap.scenario;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import org.undercap.climate.Climate;
import org.undercap.climate.Hemisphere;

/** The place of a scenario as it was written. */
public record WrittenSite(
    Place place,
    Optional<Written<Climate>> climate,
    Optional<Written<Double>> latitude,
    Optional<Written<Hemisphere>> hemisphere,
    List<Written<Double>> monthlyTemperatures,
    Optional<Written<SortedMap<LocalDate, Double>>> dailyTemperatures,
    List<Written<Double>> eggsPerDay,
    List<Written<Double>> droneShare,
    Optional<Written<Boolean>> humid) {

  /**
   * Copies the lists.
   *
   * @param place where it begins
   * @param climate a climate that ships with the library
   * @param latitude latitude (degrees, north positive)
   * @param hemisphere where it lies
   * @param monthlyTemperatures twelve daily means, January first (C), or none
   * @param dailyTemperatures daily means by date (C)
   * @param eggsPerDay twelve numbers of potential eggs, January first (eggs per day), or none
   * @param droneShare twelve shares of drone eggs, January first (fraction), or none
   * @param humid whether the place is humid, which weakens some strips
   */
  public WrittenSite {
    monthlyTemperatures = List.copyOf(monthlyTemperatures);
    eggsPerDay = List.copyOf(eggsPerDay);
    droneShare = List.copyOf(droneShare);
  }
}
