package org.undercap.model;

import static org.undercap.parameter.ParameterId.MITE_DEATH_BROODLESS;
import static org.undercap.parameter.ParameterId.MITE_DEATH_BROOD_NEST;

/**
 * Step 5: mites return from the cells and arrive from neighbours, unless the hive is empty; then
 * those on the bees die, by themselves or by a treatment.
 */
final class PhoreticMites {
  private final double[] deathBroodless;
  private final double[] deathBroodNest;
  private final ArrivalRule rule;

  PhoreticMites(ModelParameters p) {
    deathBroodless = p.perLane(MITE_DEATH_BROODLESS);
    deathBroodNest = p.perLane(MITE_DEATH_BROOD_NEST);
    rule = p.submodels().arrivals().apply(p);
  }

  void liveOn(
      ColonyLanes colony,
      double[] returned,
      DayDrivers season,
      DayEffects effects,
      DayFlows flows) {
    double[] broodIndex = flows.of(Flow.BROOD_INDEX);
    double[] arrived = flows.of(Flow.ARRIVED);
    double[] natural = flows.of(Flow.DIED_NATURALLY);
    double[] killed = flows.of(Flow.KILLED_ON_BEES);
    double[] kill = effects.hazardOnBees;
    double[] phoretic = colony.phoretic;
    double[] broodless = deathBroodless;
    double[] broodNest = deathBroodNest;
    for (int lane = 0; lane < phoretic.length; lane++) {
      double mu = broodless[lane] + (broodNest[lane] - broodless[lane]) * broodIndex[lane];
      double hazard = mu + kill[lane];
      natural[lane] = mu / Math.max(hazard, Double.MIN_NORMAL);
      killed[lane] = hazard;
    }
    for (int lane = 0; lane < phoretic.length; lane++) {
      killed[lane] = Hazard.fraction(killed[lane]);
    }
    rule.arrivals(season.arriving, flows.of(Flow.ADULTS), broodIndex, arrived);
    for (int lane = 0; lane < phoretic.length; lane++) {
      double mites = phoretic[lane] + returned[lane] + arrived[lane];
      double dead = mites * killed[lane];
      natural[lane] *= dead;
      killed[lane] = dead - natural[lane];
      phoretic[lane] = mites - dead;
    }
  }
}
