package org.undercap.comparison;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.undercap.ensemble.Outcome;
import org.undercap.ensemble.PlanResult;

/**
 * The order of plans: the least harm to winter bees first. Plans whose harm differs by less than
 * anyone could see in a hive are ordered by the bees that are weakened at midwinter, then by the
 * mites left at the end.
 */
public final class Ranking {
  /** What harm to winter bees means. */
  public static final Outcome HARM = Outcome.WINTER_BROOD_PARASITISED;

  /** Harm is told apart in steps of half a percentage point (fraction). */
  public static final double STEP = 0.005;

  private Ranking() {}

  /**
   * Orders plans.
   *
   * @param results the plans
   * @return their places, the best first
   */
  public static List<Integer> of(List<PlanResult> results) {
    Comparator<Integer> byHarm = Comparator.comparingLong(plan -> steps(results.get(plan), HARM));
    return IntStream.range(0, results.size())
        .boxed()
        .sorted(
            byHarm
                .thenComparingLong(plan -> steps(results.get(plan), Outcome.WEAKENED_AT_MIDWINTER))
                .thenComparingDouble(
                    plan -> results.get(plan).outcomes().median(Outcome.MITES_AT_END)))
        .toList();
  }

  private static long steps(PlanResult result, Outcome outcome) {
    return Math.round(result.outcomes().median(outcome) / STEP);
  }
}
