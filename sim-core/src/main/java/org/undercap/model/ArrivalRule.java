package org.undercap.model;

/**
 * How many of the mites that neighbours send come in. Asked once a day for all colonies side by
 * side; to be given to {@link ModelParameters#with(Submodels)}. A course over dates alone needs no
 * rule: it is given to {@code DailyDrivers}.
 */
@FunctionalInterface
public interface ArrivalRule {
  /**
   * Arrivals of one day. Arrays hold one value a colony.
   *
   * @param sent mites that the drivers of the day bring (mites), at least 0
   * @param adults adult workers at the start of the day (bees), 0 in a lost colony
   * @param broodIndex open brood against a full brood nest (0 to 1)
   * @param arrived to be filled: mites that come in (mites), finite, at least 0; 0 where there are
   *     no bees
   */
  void arrivals(double[] sent, double[] adults, double[] broodIndex, double[] arrived);

  /**
   * The rule that ships: all come in wherever bees live.
   *
   * @return the rule
   */
  static ArrivalRule whereBeesLive() {
    return (sent, adults, broodIndex, arrived) -> {
      for (int lane = 0; lane < arrived.length; lane++) {
        arrived[lane] = adults[lane] > 0 ? sent[lane] : 0.0;
      }
    };
  }
}
