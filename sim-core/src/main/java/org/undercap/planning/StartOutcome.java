package org.undercap.planning;

import java.time.LocalDate;
import java.util.List;
import org.undercap.ensemble.OutcomeTable;
import org.undercap.scenario.Plan;

/**
 * What comes of a course that begins on one date.
 *
 * @param date day of the first application
 * @param plan the course as a plan
 * @param outcomes outcomes by member
 * @param shareInBand share of the days on which it acts that lie within the temperatures of the
 *     method, over all weather that the climate may bring (fraction)
 * @param ruledOut what speaks against it whatever the mites do, in words; empty if nothing does
 */
public record StartOutcome(
    LocalDate date, Plan plan, OutcomeTable outcomes, double shareInBand, List<String> ruledOut) {
  /**
   * Copies the list.
   *
   * @param date day of the first application
   * @param plan the course as a plan
   * @param outcomes outcomes by member
   * @param shareInBand share of its days within the temperatures of the method (fraction)
   * @param ruledOut what speaks against it
   */
  public StartOutcome {
    ruledOut = List.copyOf(ruledOut);
  }
}
