package org.undercap.monitoring;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What a count would find in a colony that is not known exactly: many laws, equally likely. For one
 * thread.
 */
final class CountMixture {
  private final List<CountLaw> laws;
  private final Map<Double, Double> cumulative = new HashMap<>();

  CountMixture(List<? extends CountLaw> laws) {
    this.laws = List.copyOf(laws);
    if (laws.isEmpty()) {
      throw new IllegalArgumentException("a mixture of no laws");
    }
  }

  double mean() {
    return laws.stream().mapToDouble(CountLaw::mean).sum() / laws.size();
  }

  /** Probability of a count of at most x. */
  double cumulative(double x) {
    return cumulative.computeIfAbsent(
        x, count -> laws.stream().mapToDouble(law -> law.cumulative(count)).sum() / laws.size());
  }

  /** Probability of a count at least as far out as this one, on either side. */
  double asFarOut(double found) {
    double below = cumulative(found);
    double above = found >= 1 ? 1 - cumulative(found - 1) : 1;
    return Math.max(0, Math.min(1, 2 * Math.min(below, above)));
  }

  /** The smallest count that is not exceeded with at least the given probability. */
  int quantile(double u) {
    int high = 1;
    while (cumulative(high) < u) {
      high *= 2;
    }
    int low = -1;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (cumulative(middle) < u) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }
}
