package org.undercap.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.undercap.internal.Randoms;

/** The end of a fit. */
public final class FitResult {
  private static final double SAME_END = 0.1;

  private final List<FreeParameter> free;
  private final List<FittedParameter> parameters;
  private final RealMatrix covariance;
  private final double[] point;
  private final double logLikelihood;
  private final double logPosterior;
  private final int evaluations;
  private final List<Double> ends;
  private final boolean exhausted;

  FitResult(
      List<FreeParameter> free,
      List<FittedParameter> parameters,
      Curvature curvature,
      double[] point,
      Misfit misfit,
      double lowest,
      List<Double> ends,
      boolean exhausted) {
    this.free = List.copyOf(free);
    this.parameters = List.copyOf(parameters);
    covariance = curvature.covariance();
    this.point = point.clone();
    logPosterior = -lowest;
    logLikelihood = -lowest - misfit.logPrior(misfit.values(point));
    evaluations = misfit.evaluations();
    this.ends = List.copyOf(ends);
    this.exhausted = exhausted;
  }

  /**
   * The parameters with value and interval.
   *
   * @return in the order in which they were given
   */
  public List<FittedParameter> parameters() {
    return parameters;
  }

  /**
   * One parameter.
   *
   * @param name its name
   * @return value and interval
   * @throws NoSuchElementException if there is none of this name
   */
  public FittedParameter parameter(String name) {
    return parameters.stream()
        .filter(p -> p.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new NoSuchElementException("no parameter " + name + " was fitted"));
  }

  /**
   * The best values.
   *
   * @return a copy, in the order of the parameters (each in its unit)
   */
  public double[] values() {
    return parameters.stream().mapToDouble(FittedParameter::value).toArray();
  }

  /**
   * Names of the parameters that the data leave open.
   *
   * @return possibly empty
   */
  public List<String> unidentified() {
    return parameters.stream()
        .filter(FittedParameter::unidentified)
        .map(FittedParameter::name)
        .toList();
  }

  /**
   * Correlations of the estimates, from the curvature at the best point.
   *
   * @return rows and columns in the order of the parameters (-1 to 1)
   */
  public List<List<Double>> correlations() {
    return Correlations.of(covariance);
  }

  /**
   * Logarithm of the likelihood at the best point, without the priors.
   *
   * @return natural logarithm
   */
  public double logLikelihood() {
    return logLikelihood;
  }

  /**
   * Logarithm of likelihood times priors at the best point; the priors are 1 at their centres.
   *
   * @return natural logarithm
   */
  public double logPosterior() {
    return logPosterior;
  }

  /**
   * How often the likelihood was asked for.
   *
   * @return number of points
   */
  public int evaluations() {
    return evaluations;
  }

  /**
   * Number of searches.
   *
   * @return searches from different starts
   */
  public int starts() {
    return ends.size();
  }

  /**
   * Searches that ended as well as the best one, to 0.1 in the logarithm: one of many is a warning.
   *
   * @return 1 to {@link #starts()}
   */
  public int startsAgreeing() {
    double best = -logPosterior;
    return Math.max(1, (int) ends.stream().filter(end -> end < best + SAME_END).count());
  }

  /**
   * Whether the search that won was cut off by its limit of evaluations: the best point then may
   * not be the best there is.
   *
   * @return true if more evaluations are needed
   */
  public boolean exhausted() {
    return exhausted;
  }

  /**
   * Draws of the parameters from the normal distribution around the best point that the curvature
   * gives, in the coordinates of the fit and cut off at the bounds.
   *
   * @param count number of draws, at least 1
   * @param seed decides the draws
   * @return one row a draw (values in their units)
   */
  public double[][] draws(int count, long seed) {
    RealMatrix root = new CholeskyDecomposition(covariance, 1e-9, 1e-300).getL();
    UniformRandomProvider random = Randoms.of(seed, "draws of a fit");
    ZigguratSampler.NormalizedGaussian normal = ZigguratSampler.NormalizedGaussian.of(random);
    List<double[]> draws = new ArrayList<>();
    for (int draw = 0; draw < count; draw++) {
      double[] z = new double[point.length];
      for (int i = 0; i < z.length; i++) {
        z[i] = normal.sample();
      }
      double[] moved = root.operate(z);
      double[] values = new double[z.length];
      for (int i = 0; i < z.length; i++) {
        values[i] = free.get(i).value(Math.max(0, Math.min(1, point[i] + moved[i])));
      }
      draws.add(values);
    }
    return draws.toArray(double[][]::new);
  }
}
