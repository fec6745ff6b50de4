package org.undercap.calibration;

import java.util.stream.IntStream;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Goes downhill from a point near the bottom, by Newton's method with the known curvature; one
 * coordinate may be held. Slopes and step lengths are tried in blocks.
 */
final class Descent {
  private static final int MOST_STEPS = 25;
  private static final double CLOSE_ENOUGH = 1e-4;
  private static final double SLOPE_STEP = 0.05;
  private static final double[] LENGTHS = {2, 1, 0.5, 0.25, 0.1, 0.02};

  /** Holds no coordinate. */
  static final int NONE = -1;

  private final Misfit misfit;
  private final Curvature curvature;
  private final int held;

  Descent(Misfit misfit, Curvature curvature, int held) {
    this.misfit = misfit;
    this.curvature = curvature;
    this.held = held;
  }

  /** The bottom, and how low it is. */
  static final class Bottom {
    private final double[] point;
    private final double misfit;

    private Bottom(double[] point, double misfit) {
      this.point = point;
      this.misfit = misfit;
    }

    double[] point() {
      return point.clone();
    }

    double misfit() {
      return misfit;
    }
  }

  Bottom from(double[] start) {
    double[] x = start.clone();
    double here = misfit.at(x);
    for (int step = 0; step < MOST_STEPS; step++) {
      double[] slope = slope(x);
      int[] free = free(x, slope);
      if (free.length == 0) {
        break;
      }
      double[] way = way(slope, free);
      if (gain(slope, way) < CLOSE_ENOUGH) {
        break;
      }
      double[][] trials = new double[LENGTHS.length][];
      for (int i = 0; i < trials.length; i++) {
        trials[i] = along(x, way, LENGTHS[i]);
      }
      double[] f = misfit.at(trials);
      int best = 0;
      for (int i = 1; i < f.length; i++) {
        best = f[i] < f[best] ? i : best;
      }
      if (!(f[best] < here)) {
        break;
      }
      x = trials[best];
      here = f[best];
    }
    return new Bottom(x, here);
  }

  private double[] slope(double[] x) {
    int[] asked = IntStream.range(0, x.length).filter(i -> i != held).toArray();
    double[][] probes = new double[2 * asked.length][];
    for (int i = 0; i < asked.length; i++) {
      double h = SLOPE_STEP * curvature.step(asked[i]);
      probes[2 * i] = x.clone();
      probes[2 * i + 1] = x.clone();
      probes[2 * i][asked[i]] = Math.max(0, x[asked[i]] - h);
      probes[2 * i + 1][asked[i]] = Math.min(1, x[asked[i]] + h);
    }
    double[] f = misfit.at(probes);
    double[] slope = new double[x.length];
    for (int i = 0; i < asked.length; i++) {
      double width = probes[2 * i + 1][asked[i]] - probes[2 * i][asked[i]];
      slope[asked[i]] = (f[2 * i + 1] - f[2 * i]) / width;
    }
    return slope;
  }

  /** Coordinates that are neither held nor pressed against a bound. */
  private int[] free(double[] x, double[] slope) {
    return IntStream.range(0, x.length)
        .filter(i -> i != held && !(x[i] <= 0 && slope[i] > 0) && !(x[i] >= 1 && slope[i] < 0))
        .toArray();
  }

  private double[] way(double[] slope, int[] free) {
    RealMatrix inverse = curvature.inverseOf(free);
    double[] way = new double[slope.length];
    for (int i = 0; i < free.length; i++) {
      for (int j = 0; j < free.length; j++) {
        way[free[i]] -= inverse.getEntry(i, j) * slope[free[j]];
      }
    }
    return way;
  }

  private static double gain(double[] slope, double[] way) {
    double sum = 0;
    for (int i = 0; i < slope.length; i++) {
      sum -= slope[i] * way[i] / 2;
    }
    return sum;
  }

  private static double[] along(double[] x, double[] way, double length) {
    double[] to = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      to[i] = Math.max(0, Math.min(1, x[i] + length * way[i]));
    }
    return to;
  }
}
