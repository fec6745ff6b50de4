package org.undercap.monitoring;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.special.Gamma;

/**
 * Exact intervals of ratios of Poisson means. The sums of the counts are held fixed, which leaves
 * the ratio as the only unknown: of two counts one is then binomial of their sum, and of a table of
 * two times two counts one is distributed as Fisher's noncentral hypergeometric (cornfield-1956).
 */
final class ExactRatios {
  private static final double LARGEST_LOG = 60;
  private static final int HALVINGS = 80;

  private ExactRatios() {}

  /** Interval of the mean of {@code a} against that of {@code b}; not both counts may be 0. */
  static Interval ratio(long a, long b, double level) {
    Interval share =
        ExactIntervals.clopperPearson(Math.toIntExact(a), Math.toIntExact(a + b), level);
    return new Interval(odds(share.low()), odds(share.high()));
  }

  private static double odds(double share) {
    return share < 1 ? share / (1 - share) : Double.POSITIVE_INFINITY;
  }

  /** Interval of the ratio {@code (a / b) / (c / d)} of means. */
  static Interval ratioOfRatios(long a, long b, long c, long d, double level) {
    Table table = new Table(a, a + b, c + d, a + c);
    double tail = (1 - level) / 2;
    double low = a == table.least() ? 0 : rise(log -> table.atLeast(StrictMath.exp(log)) - tail);
    double high =
        a == table.most()
            ? Double.POSITIVE_INFINITY
            : rise(log -> tail - table.atMost(StrictMath.exp(log)));
    return new Interval(low, high);
  }

  /** Where a rising function of the logarithm passes through 0. */
  private static double rise(DoubleUnaryOperator function) {
    double low = -LARGEST_LOG;
    double high = LARGEST_LOG;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (function.applyAsDouble(middle) < 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return StrictMath.exp((low + high) / 2);
  }

  /** A count {@code x} of one cell, given the sums of its row, the other row and its column. */
  private record Table(long x, long row, long otherRow, long column) {
    long least() {
      return Math.max(0, column - otherRow);
    }

    long most() {
      return Math.min(row, column);
    }

    double atLeast(double ratio) {
      return share(ratio, x, most());
    }

    double atMost(double ratio) {
      return share(ratio, least(), x);
    }

    private double share(double ratio, long from, long to) {
      double largest = Double.NEGATIVE_INFINITY;
      for (long i = least(); i <= most(); i++) {
        largest = Math.max(largest, logWeight(ratio, i));
      }
      double all = 0;
      double some = 0;
      for (long i = least(); i <= most(); i++) {
        double weight = StrictMath.exp(logWeight(ratio, i) - largest);
        all += weight;
        some += i >= from && i <= to ? weight : 0;
      }
      return some / all;
    }

    private double logWeight(double ratio, long i) {
      return logChoose(row, i) + logChoose(otherRow, column - i) + i * StrictMath.log(ratio);
    }

    private static double logChoose(long n, long k) {
      return Gamma.logGamma(n + 1.0) - Gamma.logGamma(k + 1.0) - Gamma.logGamma(n - k + 1.0);
    }
  }
}
