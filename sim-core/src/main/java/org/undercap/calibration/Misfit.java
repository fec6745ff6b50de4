package org.undercap.calibration;

import java.util.List;

/**
 * What a search makes small: minus the logarithm of likelihood times priors, on coordinates from 0
 * to 1. Remembers the best point ever asked for.
 */
final class Misfit {
  /** Stands for data that cannot be; finite, so that searches can leave it. */
  private static final double IMPOSSIBLE = 1e9;

  private final List<FreeParameter> parameters;
  private final LogLikelihood data;
  private int evaluations;
  private double best = Double.POSITIVE_INFINITY;
  private double[] bestPoint = {};

  Misfit(List<FreeParameter> parameters, LogLikelihood data) {
    this.parameters = parameters;
    this.data = data;
  }

  int dimensions() {
    return parameters.size();
  }

  int evaluations() {
    return evaluations;
  }

  double best() {
    return best;
  }

  double[] bestPoint() {
    return bestPoint.clone();
  }

  void forgetBest() {
    best = Double.POSITIVE_INFINITY;
  }

  double at(double[] coordinates) {
    return at(new double[][] {coordinates})[0];
  }

  double[] at(double[][] coordinates) {
    double[][] points = new double[coordinates.length][];
    for (int row = 0; row < points.length; row++) {
      points[row] = values(coordinates[row]);
    }
    double[] likelihoods = data.at(points);
    if (likelihoods.length != points.length) {
      throw new IllegalStateException(
          likelihoods.length + " likelihoods for " + points.length + " points");
    }
    evaluations += points.length;
    double[] misfits = new double[points.length];
    for (int row = 0; row < points.length; row++) {
      double posterior = likelihoods[row] + logPrior(points[row]);
      misfits[row] = posterior > -IMPOSSIBLE ? -posterior : IMPOSSIBLE;
      if (misfits[row] < best) {
        best = misfits[row];
        bestPoint = coordinates[row].clone();
      }
    }
    return misfits;
  }

  double[] values(double[] coordinates) {
    double[] values = new double[coordinates.length];
    for (int i = 0; i < values.length; i++) {
      values[i] = parameters.get(i).value(coordinates[i]);
    }
    return values;
  }

  double logPrior(double[] values) {
    double sum = 0;
    for (int i = 0; i < values.length; i++) {
      sum += parameters.get(i).prior().logDensity(values[i]);
    }
    return sum;
  }

  boolean isPossible(double misfit) {
    return misfit < IMPOSSIBLE;
  }
}
