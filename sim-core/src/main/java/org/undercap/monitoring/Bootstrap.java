package org.undercap.monitoring;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apache.commons.rng.UniformRandomProvider;
import org.undercap.internal.Randoms;

/**
 * Interval of a figure of a group of colonies by drawing the colonies again, with replacement, and
 * taking percentiles of the figure.
 */
final class Bootstrap {
  private static final int DRAWS = 4_000;

  private final UniformRandomProvider random;

  Bootstrap(long seed) {
    random = Randoms.of(seed, "colonies drawn again");
  }

  /** A group of the same size, drawn from a group with replacement. */
  <T> List<T> again(List<T> group) {
    List<T> drawn = new ArrayList<>(group.size());
    for (int i = 0; i < group.size(); i++) {
      drawn.add(group.get(random.nextInt(group.size())));
    }
    return drawn;
  }

  /** Percentiles of a figure; draws for which it has no value are left out. */
  Interval interval(ToDoubleFunction<Bootstrap> figure, double level) {
    double[] figures = new double[DRAWS];
    for (int i = 0; i < DRAWS; i++) {
      figures[i] = figure.applyAsDouble(this);
    }
    double[] values = Arrays.stream(figures).filter(x -> !Double.isNaN(x)).sorted().toArray();
    if (values.length == 0) {
      throw new IllegalArgumentException("too few mites to reckon an efficacy");
    }
    double tail = (1 - level) / 2;
    int last = values.length - 1;
    int low = (int) Math.floor(tail * last);
    return new Interval(values[low], values[last - low]);
  }
}
