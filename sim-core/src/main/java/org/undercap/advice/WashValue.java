package org.undercap.advice;

import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.apache.commons.math3.util.CombinatoricsUtils;
import org.undercap.comparison.Comparison;
import org.undercap.comparison.Ranking;
import org.undercap.comparison.Ranking.By;
import org.undercap.ensemble.Averages;
import org.undercap.ensemble.Outcome;
import org.undercap.ensemble.WeighableOutcomes;
import org.undercap.parameter.ParameterId;

/**
 * Whether another wash is worth it: what it finds makes some members more likely than others, and
 * the plan that comes first today may then fall behind by what plans are ranked by.
 *
 * @param bees bees washed (bees)
 * @param changes how often the result would change the choice (fraction)
 */
public record WashValue(int bees, double changes) {
  /** Bees in the wash that is considered. */
  private static final int BEES = 300;

  /** Results that are rarer are left out; all 301 together weigh less than can be told. */
  private static final double NEVER = 1e-7;

  static WashValue of(Comparison comparison, Choice choice) {
    double[] per100 = comparison.results().get(0).outcomes().of(Outcome.MITES_PER_100_START);
    double found = comparison.scenario().parameters().value(ParameterId.COUNT_RECOVERY_WASH);
    double[] shares = Arrays.stream(per100).map(x -> found * Math.min(1, x / 100)).toArray();
    double[] weights = new double[shares.length];
    boolean ranked = choice.behind().get(choice.order().get(0)).isEmpty(); // Else it waits.
    List<Averages> candidates =
        choice.order().stream()
            .map(plan -> new WeighableOutcomes(comparison.results().get(plan).outcomes()))
            .map(plan -> plan.with(weights))
            .toList();
    return new WashValue(
        BEES,
        changes(
            shares,
            weights,
            () ->
                Ranking.of(candidates, comparison.dates().judged())
                    .behind()
                    .get(0)
                    .filter(by -> ranked || by != By.MITES_LEFT)
                    .isPresent()));
  }

  /**
   * How often a wash changes the choice.
   *
   * @param shares probability that a bee has a mite that is found, by member
   * @param weights where the members' weights under a result are put
   * @param reversed whether with these weights the choice of today falls behind
   */
  static double changes(double[] shares, double[] weights, BooleanSupplier reversed) {
    double[] with = Arrays.stream(shares).map(StrictMath::log).toArray();
    double[] without = Arrays.stream(shares).map(share -> StrictMath.log1p(-share)).toArray();
    double changes = 0;
    for (int mites = 0; mites <= BEES; mites++) {
      weigh(weights, mites, with, without);
      double chance = Arrays.stream(weights).sum() / shares.length;
      if (chance > NEVER && reversed.getAsBoolean()) {
        changes += chance;
      }
    }
    return changes;
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
