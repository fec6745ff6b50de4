package org.undercap.advice;

import java.util.List;
import org.apache.commons.math3.util.CombinatoricsUtils;
import org.undercap.comparison.Ranking;
import org.undercap.ensemble.Outcome;
import org.undercap.ensemble.PlanResult;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;

/**
 * Whether another wash would change the choice.
 *
 * @param bees bees in that wash (bees)
 * @param changes how often its count would bring another plan to the front (fraction)
 */
public record WashValue(int bees, double changes) {
  /** Bees in the wash that is considered. */
  private static final int BEES = 300;

  private static final int MOST_MITES = 150;

  /**
   * Weighs the members of an ensemble by each count that the wash may give, and looks which plan
   * then harms winter bees least.
   *
   * @param results the plans
   * @param candidates places of the plans that are not ruled out, the best first
   * @param parameters tell the share that a wash finds
   * @return how often the choice would change
   */
  static WashValue of(List<PlanResult> results, List<Integer> candidates, ParameterSet parameters) {
    double found = parameters.value(ParameterId.COUNT_RECOVERY_WASH);
    double[] perBee = results.get(0).outcomes().of(Outcome.MITES_PER_100_START);
    double changes = 0;
    for (int mites = 0; mites <= MOST_MITES; mites++) {
      double[] weights = new double[perBee.length];
      double sum = 0;
      for (int member = 0; member < perBee.length; member++) {
        weights[member] = probability(mites, found * Math.min(1, perBee[member] / 100));
        sum += weights[member];
      }
      if (sum > 0 && best(results, candidates, weights) != candidates.get(0)) {
        changes += sum / perBee.length;
      }
    }
    return new WashValue(BEES, changes);
  }

  private static int best(List<PlanResult> results, List<Integer> candidates, double[] weights) {
    int best = candidates.get(0);
    double least = Double.POSITIVE_INFINITY;
    for (int plan : candidates) {
      double[] harm = results.get(plan).outcomes().of(Ranking.HARM);
      double sum = 0;
      double all = 0;
      for (int member = 0; member < weights.length; member++) {
        sum += weights[member] * harm[member];
        all += weights[member];
      }
      if (sum / all < least - Ranking.STEP) {
        least = sum / all;
        best = plan;
      }
    }
    return best;
  }

  private static double probability(int mites, double share) {
    if (share <= 0) {
      return mites == 0 ? 1 : 0;
    }
    double log =
        CombinatoricsUtils.binomialCoefficientLog(BEES, mites)
            + mites * StrictMath.log(share)
            + (BEES - mites) * StrictMath.log1p(-Math.min(share, 1 - 1e-12));
    return StrictMath.exp(log);
  }
}
