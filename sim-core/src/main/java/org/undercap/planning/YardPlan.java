package org.undercap.planning;

import java.util.List;
import org.undercap.scenario.Plan;

/**
 * What comes of one plan on all counted colonies of a yard.
 *
 * @param plan the plan
 * @param meanHarm parasitised share of the winter brood, mean of all colonies and runs (fraction)
 * @param low harm that 1 in 10 runs of all colonies stays below (fraction)
 * @param high harm that 9 in 10 runs of all colonies stay below (fraction)
 * @param bestFor colonies for which no other plan of this yard is better by more than anyone could
 *     see (colonies)
 * @param meanMitesLeft mites left at midwinter or on the last day, mean of all (mites)
 * @param ruledOut what speaks against the plan whatever the mites do; empty if nothing does
 */
public record YardPlan(
    Plan plan,
    double meanHarm,
    double low,
    double high,
    int bestFor,
    double meanMitesLeft,
    List<String> ruledOut) {
  /**
   * Copies the list.
   *
   * @param plan the plan
   * @param meanHarm mean harm (fraction)
   * @param low lower end of the range (fraction)
   * @param high upper end of the range (fraction)
   * @param bestFor colonies for which it is the best (colonies)
   * @param meanMitesLeft mean of the mites left (mites)
   * @param ruledOut what speaks against the plan
   */
  public YardPlan {
    ruledOut = List.copyOf(ruledOut);
  }
}
