package org.undercap.planning;

import java.util.Optional;
import org.undercap.monitoring.MiteEstimate;
import org.undercap.scenario.ApiaryColony;

/**
 * A colony of a yard and what its counts say.
 *
 * @param colony the colony
 * @param estimate its mites; empty if nothing was counted or the counts fit no such colony
 */
public record YardColony(ApiaryColony colony, Optional<MiteEstimate> estimate) {
  /** Share of the distribution that an estimate shows as its range (fraction). */
  public static final double RANGE = 0.8;

  /** Upper end of the range (mites per 100 bees); below all others if there is no estimate. */
  double upper() {
    return estimate.map(e -> e.mitesPer100Bees().interval(RANGE).high()).orElse(-1.0);
  }

  double lower() {
    return estimate.map(e -> e.mitesPer100Bees().interval(RANGE).low()).orElse(-1.0);
  }

  double mites() {
    return estimate.map(e -> e.mites().median()).orElse(-1.0);
  }
}
