package org.undercap.ensemble;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The outcomes of a plan, to be averaged with one set of weights of the members after another, as
 * when an observation makes some members likelier than others. Not for several threads at once.
 */
public final class WeighableOutcomes {
  private final OutcomeTable table;
  private final Map<Outcome, int[]> ascending = new EnumMap<>(Outcome.class);

  /**
   * Prepares to weigh.
   *
   * @param table the outcomes
   */
  public WeighableOutcomes(OutcomeTable table) {
    this.table = table;
  }

  /**
   * Averages with weights.
   *
   * @param weights one a member, not negative; read again at each call
   * @return means and medians
   */
  public Averages with(double[] weights) {
    return new Averages() {
      @Override
      public double median(Outcome outcome) {
        return weightedMedian(outcome, weights);
      }

      @Override
      public double mean(Outcome outcome) {
        return weightedMean(outcome, weights);
      }
    };
  }

  private double weightedMean(Outcome outcome, double[] weights) {
    double[] values = table.values(outcome);
    double sum = 0;
    double all = 0;
    for (int member : known(outcome)) {
      sum += weights[member] * values[member];
      all += weights[member];
    }
    return all > 0 ? sum / all : Double.NaN;
  }

  private double weightedMedian(Outcome outcome, double[] weights) {
    int[] members = known(outcome);
    double all = 0;
    for (int member : members) {
      all += weights[member];
    }
    double below = 0;
    for (int member : members) {
      below += weights[member];
      if (below >= all / 2 && all > 0) {
        return table.values(outcome)[member];
      }
    }
    return Double.NaN;
  }

  /** The members that have an outcome, from the least to the greatest. */
  private int[] known(Outcome outcome) {
    return ascending.computeIfAbsent(
        outcome,
        o -> {
          double[] values = table.values(o);
          return IntStream.range(0, values.length)
              .filter(member -> !Double.isNaN(values[member]))
              .boxed()
              .sorted(Comparator.comparingDouble(member -> values[member]))
              .mapToInt(Integer::intValue)
              .toArray();
        });
  }
}
