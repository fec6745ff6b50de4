package org.undercap.ensemble;

/**
 * Counts of values at 32 steps for each doubling, so that quantiles are known to 2 % without
 * keeping the values. Counts can be added in any order with the same result. Only doublings that
 * were met take room.
 */
final class LogHistogram {
  private static final int STEP_BITS = 5;
  private static final int STEPS = 1 << STEP_BITS;
  private static final int SHIFT = 23 - STEP_BITS;

  /** Everything below counts as zero. */
  private static final float LEAST = 0x1p-10f;

  private static final float MOST = 0x1p24f;
  private static final int FIRST = Float.floatToIntBits(LEAST) >>> SHIFT;
  private static final int BINS = (Float.floatToIntBits(MOST) >>> SHIFT) - FIRST;
  private final int[][] doublings = new int[BINS >> STEP_BITS][];
  private int zeros;
  private int total;

  void add(double value) {
    total++;
    if (value < LEAST) {
      zeros++;
      return;
    }
    int bin = Math.min(BINS - 1, (Float.floatToRawIntBits((float) value) >>> SHIFT) - FIRST);
    steps(bin >> STEP_BITS)[bin & (STEPS - 1)]++;
  }

  private int[] steps(int doubling) {
    int[] steps = doublings[doubling];
    if (steps == null) {
      steps = new int[STEPS];
      doublings[doubling] = steps;
    }
    return steps;
  }

  void add(LogHistogram other) {
    zeros += other.zeros;
    total += other.total;
    for (int doubling = 0; doubling < doublings.length; doubling++) {
      int[] theirs = other.doublings[doubling];
      if (theirs != null) {
        int[] mine = steps(doubling);
        for (int step = 0; step < STEPS; step++) {
          mine[step] += theirs[step];
        }
      }
    }
  }

  /** NaN if nothing was counted. */
  double quantile(double share) {
    if (total == 0) {
      return Double.NaN;
    }
    double wanted = share * total;
    int seen = zeros;
    if (seen >= wanted) {
      return 0;
    }
    for (int doubling = 0; doubling < doublings.length; doubling++) {
      int[] steps = doublings[doubling];
      for (int step = 0; steps != null && step < STEPS; step++) {
        if (seen + steps[step] >= wanted) {
          int bin = (doubling << STEP_BITS) + step;
          double within = (wanted - seen) / steps[step];
          return lower(bin) + within * (lower(bin + 1) - lower(bin));
        }
        seen += steps[step];
      }
    }
    return 0;
  }

  private static double lower(int bin) {
    return Float.intBitsToFloat((bin + FIRST) << SHIFT);
  }
}
