package org.undercap.ensemble;

import java.util.Optional;
import org.undercap.monitoring.MitePosterior;
import org.undercap.scenario.Scenario;

/**
 * The mites that a scenario begins with.
 *
 * @param median middle value of all mites on the first day (mites)
 * @param belief how they are spread
 * @param posterior the counts weighed; empty if the user gave the number itself
 */
public record StartMites(double median, MiteBelief belief, Optional<MitePosterior> posterior) {
  /**
   * The mites of a scenario with the usual seed.
   *
   * @param scenario the scenario
   * @return the mites
   * @throws IllegalArgumentException if the counts cannot tell how many there are
   */
  public static StartMites of(Scenario scenario) {
    return of(scenario, EnsembleSettings.USUAL_SEED);
  }

  /**
   * The mites of a scenario, from its counts unless the number is given.
   *
   * @param scenario the scenario
   * @param seed decides the draws by which counts are weighed
   * @return the mites
   * @throws IllegalArgumentException if the counts cannot tell how many there are
   */
  public static StartMites of(Scenario scenario, long seed) {
    if (scenario.mitesInColony().isPresent()) {
      double mites = scenario.mitesInColony().getAsDouble();
      return new StartMites(mites, MiteBelief.known(mites), Optional.empty());
    }
    MitePosterior posterior =
        MitePosterior.of(scenario.countedColony(), scenario.countsThatTell(), seed);
    return new StartMites(
        posterior.mites().median(), MiteBelief.of(posterior), Optional.of(posterior));
  }
}
