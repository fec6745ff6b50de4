package org.undercap.calibration;

import java.time.LocalDate;
import org.undercap.monitoring.CountLaw;

/**
 * A count against what a fit expects.
 *
 * @param colony name of the colony
 * @param date last day of the observation
 * @param kind kind of count, in words
 * @param found what was found (mites, or infested cells)
 * @param expected what the fit expects (same unit)
 * @param standardised difference in standard deviations of the count
 * @param place share of the outcomes that lie below, with half of those that are the same (0 to 1)
 */
public record Residual(
    String colony,
    LocalDate date,
    String kind,
    double found,
    double expected,
    double standardised,
    double place) {

  static Residual of(String colony, Observation observation, CountLaw expected) {
    double found = observation.found();
    double deviation = StrictMath.sqrt(expected.variance());
    return new Residual(
        colony,
        observation.date(),
        observation.kind(),
        found,
        expected.mean(),
        deviation > 0 ? (found - expected.mean()) / deviation : 0,
        expected.place(found));
  }
}
