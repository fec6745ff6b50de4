package org.undercap.ensemble;

/**
 * Counts of values at 32 steps for each doubling, so that quantiles are known to 2 % without
 * keeping the values. Counts can be added in any order with the same result.
 */
final class LogHistogram {
  private static final int STEP_BITS = 5;
  private static final int SHIFT = 23 - STEP_BITS;

  /** Everything below counts as zero. */
  private static final float LEAST = 1e-3f;

  private static final int FIRST = Float.floatToIntBits(LEAST) >>> SHIFT;
  private static final int BINS = (Float.floatToIntBits(1e7f) >>> SHIFT) - FIRST + 2;
  private final int[] counts = new int[BINS];
  private int total;

  void add(double value) {
    int bin =
        value < LEAST
            ? 0
            : Math.min(BINS - 1, (Float.floatToIntBits((float) value) >>> SHIFT) - FIRST + 1);
    counts[bin]++;
    total++;
  }

  void add(LogHistogram other) {
    for (int bin = 0; bin < BINS; bin++) {
      counts[bin] += other.counts[bin];
    }
    total += other.total;
  }

  double quantile(double share) {
    double wanted = share * total;
    int seen = 0;
    for (int bin = 0; bin < BINS; bin++) {
      if (seen + counts[bin] >= wanted && counts[bin] > 0) {
        if (bin == 0) {
          return 0;
        }
        double within = (wanted - seen) / counts[bin];
        return lower(bin) + within * (lower(bin + 1) - lower(bin));
      }
      seen += counts[bin];
    }
    return 0;
  }

  private static double lower(int bin) {
    return Float.intBitsToFloat((bin - 1 + FIRST) << SHIFT);
  }
}
