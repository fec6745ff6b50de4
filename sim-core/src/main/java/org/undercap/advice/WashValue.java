package org.undercap.advice;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.util.CombinatoricsUtils;
import org.undercap.comparison.Ranking;
import org.undercap.ensemble.Outcome;
import org.undercap.ensemble.PlanResult;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;

/**
 * Whether another wash is worth it: what it finds makes some members more likely than others, and
 * another plan may then come first by harm to winter bees.
 *
 * @param bees bees washed (bees)
 * @param changes how often the result would change the choice (fraction)
 */
public record WashValue(int bees, double changes) {
  /** Bees in the wash that is considered. */
  private static final int BEES = 300;

  static WashValue of(List<PlanResult> results, List<Integer> candidates, ParameterSet parameters) {
    double[][] harm =
        candidates.stream()
            .map(plan -> results.get(plan).outcomes().of(Ranking.HARM))
            .toArray(double[][]::new);
    double[] per100 = results.get(0).outcomes().of(Outcome.MITES_PER_100_START);
    double found = parameters.value(ParameterId.COUNT_RECOVERY_WASH);
    double[] shares = Arrays.stream(per100).map(x -> found * Math.min(1, x / 100)).toArray();
    return new WashValue(BEES, changes(shares, harm));
  }

  /**
   * How often a wash changes the choice.
   *
   * @param shares probability that a bee has a mite that is found, by member
   * @param harm harm by plan and member; the first plan is the choice of today
   */
  static double changes(double[] shares, double[][] harm) {
    int[][] order = Arrays.stream(harm).map(WashValue::ascending).toArray(int[][]::new);
    double[] with = Arrays.stream(shares).map(StrictMath::log).toArray();
    double[] without = Arrays.stream(shares).map(share -> StrictMath.log1p(-share)).toArray();
    double[] weights = new double[shares.length];
    double changes = 0;
    for (int mites = 0; mites <= BEES; mites++) {
      weigh(weights, mites, with, without);
      double sum = Arrays.stream(weights).sum();
      if (sum > 0 && !firstIsBest(harm, order, weights, sum)) {
        changes += sum / shares.length;
      }
    }
    return changes;
  }

  private static int[] ascending(double[] values) {
    return IntStream.range(0, values.length)
        .boxed()
        .sorted(Comparator.comparingDouble(i -> values[i]))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  private static boolean firstIsBest(double[][] harm, int[][] order, double[] weights, double sum) {
    double first = Ranking.harmSteps(median(harm[0], order[0], weights, sum));
    for (int plan = 1; plan < harm.length; plan++) {
      if (Ranking.harmSteps(median(harm[plan], order[plan], weights, sum)) < first) {
        return false;
      }
    }
    return true;
  }

  private static double median(double[] values, int[] ascending, double[] weights, double sum) {
    double below = 0;
    for (int member : ascending) {
      below += weights[member];
      if (below >= sum / 2) {
        return values[member];
      }
    }
    return values[ascending[ascending.length - 1]];
  }

  /**
   * The probability of a result for each member; the members' bees may all have a mite, or none.
   */
  private static void weigh(double[] weights, int mites, double[] with, double[] without) {
    double ways = CombinatoricsUtils.binomialCoefficientLog(BEES, mites);
    for (int member = 0; member < weights.length; member++) {
      weights[member] =
          StrictMath.exp(ways + times(mites, with[member]) + times(BEES - mites, without[member]));
    }
  }

  /** What happens zero times has probability 1, also if it cannot happen. */
  private static double times(int count, double logarithm) {
    return count == 0 ? 0 : count * logarithm;
  }
}
