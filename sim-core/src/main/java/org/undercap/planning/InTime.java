package org.undercap.planning;

import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;

/**
 * Which start date still counts as in time.
 *
 * @param tolerance most harm above that of the best date (fraction)
 * @param kept least share of what the best date gains against no treatment (fraction)
 */
public record InTime(double tolerance, double kept) {
  /**
   * As the parameters say.
   *
   * @param parameters values of the parameters
   * @return the two bounds
   */
  static InTime of(ParameterSet parameters) {
    return new InTime(
        parameters.value(ParameterId.TIMING_TOLERANCE), parameters.value(ParameterId.TIMING_KEPT));
  }

  /** Most harm above that of the best date, both bounds together (fraction). */
  double above(double untreated, double best) {
    return Math.min(tolerance, (1 - kept) * Math.max(0, untreated - best));
  }
}
