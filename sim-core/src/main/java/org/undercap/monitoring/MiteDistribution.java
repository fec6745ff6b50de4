package org.undercap.monitoring;

import java.util.Arrays;

/**
 * How likely each number is, on cells of a logarithmic scale. Within a cell the probability is
 * spread evenly over the logarithm.
 */
public final class MiteDistribution {
  private static final int CELLS = 192;

  private final double[] edges;
  private final double[] cumulative;

  private MiteDistribution(double[] logEdges, double[] masses) {
    edges = logEdges;
    cumulative = new double[masses.length + 1];
    for (int cell = 0; cell < masses.length; cell++) {
      cumulative[cell + 1] = cumulative[cell] + masses[cell];
    }
    double total = cumulative[masses.length];
    for (int cell = 0; cell < cumulative.length; cell++) {
      cumulative[cell] /= total;
    }
  }

  /**
   * Gathers weighted values.
   *
   * @param values values above 0, ordered so that value {@code point * rows + row} belongs to a row
   *     in which it changes from point to point; NaN has no weight
   * @param weights as many weights, not all 0
   * @param rows number of rows
   */
  static MiteDistribution of(double[] values, double[] weights, int rows) {
    double[][] spans = spans(values, weights, rows);
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < values.length; i++) {
      if (weights[i] > 0) {
        low = Math.min(low, spans[0][i]);
        high = Math.max(high, spans[1][i]);
      }
    }
    double[] edges = new double[CELLS + 1];
    double width = (high - low) / CELLS;
    for (int cell = 0; cell <= CELLS; cell++) {
      edges[cell] = low + cell * width;
    }
    double[] masses = new double[CELLS];
    for (int i = 0; i < values.length; i++) {
      if (weights[i] > 0) {
        spread(masses, weights[i], (spans[0][i] - low) / width, (spans[1][i] - low) / width);
      }
    }
    return new MiteDistribution(edges, masses);
  }

  /**
   * The stretch of the logarithmic scale for which each value stands: half way to its neighbours.
   */
  private static double[][] spans(double[] values, double[] weights, int rows) {
    double[][] spans = new double[2][values.length];
    for (int i = 0; i < values.length; i++) {
      if (weights[i] > 0) {
        double here = StrictMath.log(values[i]);
        double before = neighbour(values, i - rows, here);
        double after = neighbour(values, i + rows, here);
        double down = Double.isNaN(before) ? after - here : here - before;
        double up = Double.isNaN(after) ? here - before : after - here;
        double a = here - down / 2;
        double b = here + up / 2;
        spans[0][i] = Math.min(a, b);
        spans[1][i] = Math.max(a, b);
      }
    }
    return spans;
  }

  private static double neighbour(double[] values, int i, double here) {
    if (i < 0 || i >= values.length) {
      return Double.NaN;
    }
    return values[i] > 0 ? StrictMath.log(values[i]) : here;
  }

  private static void spread(double[] masses, double weight, double from, double to) {
    int first = cell(from);
    int last = cell(to);
    if (first == last) {
      masses[first] += weight;
      return;
    }
    double density = weight / (to - from);
    masses[first] += density * (first + 1 - from);
    for (int cell = first + 1; cell < last; cell++) {
      masses[cell] += density;
    }
    masses[last] += density * (to - last);
  }

  private static int cell(double x) {
    return Math.max(0, Math.min(CELLS - 1, (int) x));
  }

  /**
   * The value below which the true one lies with a given probability.
   *
   * @param u probability (fraction, 0 to 1)
   * @return the quantile
   * @throws IllegalArgumentException if the probability is out of range
   */
  public double quantile(double u) {
    if (!(u >= 0 && u <= 1)) {
      throw new IllegalArgumentException("probability " + u + " must be in [0, 1]");
    }
    int found = Arrays.binarySearch(cumulative, u);
    int cell = found >= 0 ? found : -found - 2;
    if (cell >= edges.length - 1) {
      return StrictMath.exp(edges[edges.length - 1]);
    }
    double mass = cumulative[cell + 1] - cumulative[cell];
    double part = mass > 0 ? (u - cumulative[cell]) / mass : 0;
    return StrictMath.exp(edges[cell] + part * (edges[cell + 1] - edges[cell]));
  }

  /**
   * The middle value.
   *
   * @return the median
   */
  public double median() {
    return quantile(0.5);
  }

  /**
   * The interval that leaves out equal probabilities at both ends.
   *
   * @param level probability that the true value lies in it (fraction, 0 to 1)
   * @return the interval
   * @throws IllegalArgumentException if the level is out of range
   */
  public Interval interval(double level) {
    double tail = (1 - level) / 2;
    return new Interval(quantile(tail), quantile(1 - tail));
  }

  /**
   * Probability that the true value is at most a given one.
   *
   * @param x the value, above 0
   * @return probability (fraction)
   */
  public double cumulative(double x) {
    double at = StrictMath.log(x);
    int found = Arrays.binarySearch(edges, at);
    if (found >= 0) {
      return cumulative[found];
    }
    int cell = -found - 2;
    if (cell < 0) {
      return 0;
    }
    if (cell >= edges.length - 1) {
      return 1;
    }
    double part = (at - edges[cell]) / (edges[cell + 1] - edges[cell]);
    return cumulative[cell] + part * (cumulative[cell + 1] - cumulative[cell]);
  }

  /**
   * The ends of the cells.
   *
   * @return one more than there are cells, rising
   */
  public double[] edges() {
    return Arrays.stream(edges).map(StrictMath::exp).toArray();
  }

  /**
   * Probability of each cell.
   *
   * @return fractions that add up to 1
   */
  public double[] masses() {
    double[] masses = new double[edges.length - 1];
    for (int cell = 0; cell < masses.length; cell++) {
      masses[cell] = cumulative[cell + 1] - cumulative[cell];
    }
    return masses;
  }

  /** Width of the 95 % interval in natural logarithms. */
  double logWidth() {
    Interval interval = interval(0.95);
    return StrictMath.log(interval.high() / interval.low());
  }
}
