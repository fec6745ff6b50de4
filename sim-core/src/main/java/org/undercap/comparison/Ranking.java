package org.undercap.comparison;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.undercap.ensemble.Averages;
import org.undercap.ensemble.Outcome;
import org.undercap.ensemble.SeasonDates.JudgedBrood;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;

/**
 * The order of plans. Plans that lose clearly more colonies come last, whatever they do for the
 * rest; then the least harm to winter bees comes first: the share of their brood that is
 * parasitised, then the share of the bees at midwinter that is weakened. Among plans that no keeper
 * could tell apart by that, the fewest mites left come first. Where the brood of the winter bees is
 * out already, weakened bees and mites left decide before the brood that still emerges.
 *
 * @param order places of the plans, the best first
 * @param behind by what each plan fell behind the first, by place of the plan; empty for the first
 *     and for plans that nothing tells from it
 */
public record Ranking(List<Integer> order, List<Optional<By>> behind) {
  /** What harm to winter bees means. */
  public static final Outcome HARM = Outcome.WINTER_BROOD_PARASITISED;

  /** Smaller differences in harm cannot be seen (fraction; parameter {@code ranking.harmStep}). */
  public static final double STEP = value(ParameterId.RANKING_HARM_STEP);

  /** What plans are told apart by. */
  public enum By {
    /** Share of the colonies that are lost. */
    LOSSES(value(ParameterId.RANKING_LOSS_STEP)),
    /** Share of the judged brood that is parasitised. */
    HARM_TO_BROOD(STEP),
    /** Share of the bees at midwinter that are weakened. */
    WEAKENED_BEES(STEP),
    /** All mites on the last day. */
    MITES_LEFT(StrictMath.log(value(ParameterId.PLANNING_MITES_STEP)));

    private static final List<By> WINTER = List.of(values());
    private static final List<By> LATE = List.of(LOSSES, WEAKENED_BEES, MITES_LEFT, HARM_TO_BROOD);
    private final double step;

    By(double step) {
      this.step = step;
    }

    /** What no member has comes last. */
    private double of(Averages plan) {
      double x =
          switch (this) {
            case LOSSES -> plan.mean(Outcome.LOST);
            case HARM_TO_BROOD -> plan.median(HARM);
            case WEAKENED_BEES -> plan.median(Outcome.WEAKENED_AT_MIDWINTER);
            case MITES_LEFT -> StrictMath.log1p(plan.median(Outcome.MITES_AT_END));
          };
      return Double.isNaN(x) ? Double.POSITIVE_INFINITY : x;
    }
  }

  /**
   * Copies the lists.
   *
   * @param order places of the plans, the best first
   * @param behind by what each plan fell behind the first
   */
  public Ranking {
    order = List.copyOf(order);
    behind = List.copyOf(behind);
  }

  private static double value(ParameterId id) {
    return ParameterSet.shipped().value(id);
  }

  /**
   * Harm in steps.
   *
   * @param harm share of the winter brood that is parasitised (fraction)
   * @return number of steps; equal for what cannot be told apart
   */
  public static double harmSteps(double harm) {
    return StrictMath.rint(harm / STEP);
  }

  /**
   * Orders plans.
   *
   * @param outcomes what came of each plan
   * @param judged which brood the harm is that of
   * @return the order
   */
  public static Ranking of(List<? extends Averages> outcomes, JudgedBrood judged) {
    List<By> criteria = judged == JudgedBrood.LATE ? By.LATE : By.WINTER;
    double[][] values =
        outcomes.stream()
            .map(plan -> criteria.stream().mapToDouble(by -> by.of(plan)).toArray())
            .toArray(double[][]::new);
    List<Integer> left = new ArrayList<>(IntStream.range(0, values.length).boxed().toList());
    List<Optional<By>> behind = new ArrayList<>(Collections.nCopies(left.size(), Optional.empty()));
    List<Integer> order = new ArrayList<>();
    while (!left.isEmpty()) {
      Map<Integer, By> worse = worse(left, criteria, values);
      if (order.isEmpty()) {
        worse.forEach((plan, by) -> behind.set(plan, Optional.of(by)));
      }
      Integer best = left.stream().filter(p -> !worse.containsKey(p)).findFirst().orElseThrow();
      order.add(best);
      left.remove(best);
    }
    return new Ranking(order, behind);
  }

  /** Plans that one criterion after the other tells from the best. */
  private static Map<Integer, By> worse(List<Integer> plans, List<By> criteria, double[][] values) {
    Map<Integer, By> worse = new TreeMap<>();
    for (int i = 0; i < criteria.size(); i++) {
      int criterion = i;
      By by = criteria.get(i);
      List<Integer> equal = plans.stream().filter(plan -> !worse.containsKey(plan)).toList();
      double least =
          equal.stream().mapToDouble(plan -> values[plan][criterion]).min().orElseThrow();
      equal.stream()
          .filter(plan -> values[plan][criterion] > least + by.step)
          .forEach(plan -> worse.put(plan, by));
    }
    return worse;
  }
}
