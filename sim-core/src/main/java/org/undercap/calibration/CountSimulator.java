package org.undercap.calibration;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.undercap.internal.Checks;
import org.undercap.internal.Randoms;
import org.undercap.monitoring.Count;
import org.undercap.parameter.ParameterSet;

/**
 * Makes counts as a study would find them if the model and its parameters were true: to test a fit,
 * or to see beforehand whether a study can tell what it wants to know.
 */
public final class CountSimulator {
  private CountSimulator() {}

  /**
   * A colony with simulated counts in the place of its own, on the same dates and of the same
   * sizes.
   *
   * @param colony the colony; what its counts found does not matter
   * @param parameters values of the parameters
   * @param mites all mites at its start (mites), at least 0
   * @param errors how counts scatter
   * @param seed decides the scatter
   * @return the colony with simulated counts
   * @throws IllegalArgumentException if the number of mites is out of range, or a total is asked
   *     for and the colony has no mites
   */
  public static ObservedColony simulate(
      ObservedColony colony, ParameterSet parameters, double mites, CountErrors errors, long seed) {
    Checks.notNegative(mites, "all mites of a colony");
    ColonyCourse course = new ColonyCourse(colony);
    double[] sums = course.sums(new StartShapes(List.of(parameters)), new double[] {mites})[0];
    UniformRandomProvider random = Randoms.of(seed, "counts of " + colony.name());
    List<Count> counts = new ArrayList<>();
    List<TotalMites> totals = new ArrayList<>();
    for (int i = 0; i < sums.length; i++) {
      Observation observation = course.observations().get(i);
      double found = observation.law(sums[i], parameters, errors).draw(random);
      if (observation instanceof Observation.OfTotal total) {
        totals.add(new TotalMites(total.date(), found));
      } else {
        counts.add(observation.asCount(found));
      }
    }
    return colony.withCounts(counts, totals);
  }
}
