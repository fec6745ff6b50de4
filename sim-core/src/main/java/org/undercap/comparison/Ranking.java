package org.undercap.comparison;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.undercap.ensemble.Outcome;
import org.undercap.ensemble.PlanResult;

/**
 * The order of plans: the least harm to winter bees first. Each place goes to one of the plans
 * whose harm nobody could tell in a hive from the least that is left: of these to one with few
 * weakened bees at midwinter, and among equals in that too to the one that leaves the fewest mites
 * at the end.
 */
public final class Ranking {
  /** What harm to winter bees means. */
  public static final Outcome HARM = Outcome.WINTER_BROOD_PARASITISED;

  /** Differences of less than half a percentage point cannot be seen in a hive (fraction). */
  public static final double STEP = 0.005;

  private Ranking() {}

  /**
   * Orders plans.
   *
   * @param results the plans
   * @return their places, the best first
   */
  public static List<Integer> of(List<PlanResult> results) {
    List<Integer> left =
        IntStream.range(0, results.size()).boxed().collect(Collectors.toCollection(ArrayList::new));
    List<Integer> order = new ArrayList<>();
    while (!left.isEmpty()) {
      List<Integer> alike =
          least(results, least(results, left, HARM), Outcome.WEAKENED_AT_MIDWINTER);
      Integer next =
          alike.stream()
              .min(Comparator.comparingDouble(p -> median(results.get(p), Outcome.MITES_AT_END)))
              .orElseThrow();
      order.add(next);
      left.remove(next);
    }
    return List.copyOf(order);
  }

  /** The plans that cannot be told from the one with the least of an outcome. */
  private static List<Integer> least(
      List<PlanResult> results, List<Integer> plans, Outcome outcome) {
    double least =
        plans.stream().mapToDouble(p -> median(results.get(p), outcome)).min().orElseThrow();
    return plans.stream().filter(p -> median(results.get(p), outcome) < least + STEP).toList();
  }

  private static double median(PlanResult result, Outcome outcome) {
    return result.outcomes().median(outcome);
  }
}
