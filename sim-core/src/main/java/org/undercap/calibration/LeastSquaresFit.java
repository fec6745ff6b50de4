package org.undercap.calibration;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DiagonalMatrix;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularMatrixException;
import org.apache.commons.math3.util.Pair;

/**
 * Fits a curve by least squares: Levenberg and Marquardt's method with a slope by central
 * differences, on parameters measured in units of their start values so that large and small ones
 * count alike. Where it stops it is started anew, until that gains nothing.
 */
public final class LeastSquaresFit {
  private static final int MOST_EVALUATIONS = 5000;
  private static final int MOST_RESTARTS = 20;
  private static final double NO_GAIN = 1e-12;
  private static final double DIFFERENCE = 1e-5;
  private static final double SINGULAR = 1e-14;

  private final VectorModel model;
  private final double[] observed;
  private final double[] weights;

  private LeastSquaresFit(VectorModel model, double[] observed, double[] weights) {
    this.model = model;
    this.observed = observed;
    this.weights = weights;
  }

  /**
   * A fit in which all observations count alike.
   *
   * @param model the curve
   * @param observed the observations
   * @return the fit, to be begun by {@link #from}
   */
  public static LeastSquaresFit of(VectorModel model, double[] observed) {
    double[] alike = new double[observed.length];
    Arrays.fill(alike, 1);
    return new LeastSquaresFit(model, observed.clone(), alike);
  }

  /**
   * A fit with weights.
   *
   * @param model the curve
   * @param observed the observations
   * @param weights one weight an observation, above 0: 1 / variance up to a factor
   * @return the fit, to be begun by {@link #from}
   * @throws IllegalArgumentException if weights are missing or not above 0
   */
  public static LeastSquaresFit of(VectorModel model, double[] observed, double[] weights) {
    if (weights.length != observed.length
        || !Arrays.stream(weights).allMatch(w -> w > 0 && Double.isFinite(w))) {
      throw new IllegalArgumentException("each observation needs a finite weight above 0");
    }
    return new LeastSquaresFit(model, observed.clone(), weights.clone());
  }

  /**
   * Finds the best parameters.
   *
   * @param starts one or more starts, each with all parameters; the best end is taken
   * @return the fit
   * @throws IllegalArgumentException if there is no start, or fewer observations than parameters
   * @throws FitException if no start leads to an end, or the parameters cannot be told apart
   */
  public LeastSquaresResult from(double[]... starts) {
    if (starts.length == 0 || starts[0].length > observed.length) {
      throw new IllegalArgumentException(
          "a fit needs a start, and at least as many observations as parameters");
    }
    LeastSquaresResult best = null;
    String lastTrouble = "";
    for (double[] start : starts) {
      try {
        LeastSquaresResult end = fit(start);
        if (best == null || end.residualSumOfSquares() < best.residualSumOfSquares()) {
          best = end;
        }
      } catch (MathIllegalStateException | SingularMatrixException e) {
        lastTrouble = String.valueOf(e.getMessage());
      }
    }
    if (best == null) {
      throw new FitException(
          "no start led to a fit; try other starts or fewer parameters: " + lastTrouble);
    }
    return best;
  }

  private LeastSquaresResult fit(double[] start) {
    double[] scale = Arrays.stream(start).map(x -> x == 0 ? 1 : Math.abs(x)).toArray();
    double[] at = new double[start.length];
    for (int i = 0; i < at.length; i++) {
      at[i] = start[i] / scale[i];
    }
    Optimum end = optimum(at, scale);
    int evaluations = end.getEvaluations();
    for (int restart = 0; restart < MOST_RESTARTS; restart++) {
      Optimum again = optimum(end.getPoint().toArray(), scale);
      evaluations += again.getEvaluations();
      boolean gained = again.getCost() < end.getCost() * (1 - NO_GAIN);
      end = again.getCost() <= end.getCost() ? again : end;
      if (!gained) {
        break;
      }
    }
    return result(end, scale, evaluations);
  }

  private Optimum optimum(double[] start, double[] scale) {
    return new LevenbergMarquardtOptimizer()
        .withCostRelativeTolerance(1e-14)
        .withParameterRelativeTolerance(1e-14)
        .withOrthoTolerance(1e-14)
        .optimize(
            new LeastSquaresBuilder()
                .model(scaled(scale))
                .target(observed)
                .weight(new DiagonalMatrix(weights))
                .start(start)
                .maxEvaluations(MOST_EVALUATIONS)
                .maxIterations(MOST_EVALUATIONS)
                .build());
  }

  private MultivariateJacobianFunction scaled(double[] scale) {
    return point -> {
      double[] at = point.toArray();
      RealMatrix slopes = new Array2DRowRealMatrix(observed.length, at.length);
      for (int i = 0; i < at.length; i++) {
        double step = DIFFERENCE * Math.max(Math.abs(at[i]), DIFFERENCE);
        double[] above = values(moved(at, i, step), scale);
        double[] below = values(moved(at, i, -step), scale);
        double width = (at[i] + step) - (at[i] - step);
        for (int row = 0; row < observed.length; row++) {
          slopes.setEntry(row, i, (above[row] - below[row]) / width);
        }
      }
      RealVector values = new ArrayRealVector(values(at, scale), false);
      return new Pair<>(values, slopes);
    };
  }

  private static double[] moved(double[] at, int i, double step) {
    double[] moved = at.clone();
    moved[i] += step;
    return moved;
  }

  private double[] values(double[] at, double[] scale) {
    double[] parameters = new double[at.length];
    for (int i = 0; i < at.length; i++) {
      parameters[i] = at[i] * scale[i];
    }
    return model.values(parameters);
  }

  private LeastSquaresResult result(Optimum end, double[] scale, int evaluations) {
    int n = scale.length;
    RealMatrix inverse = end.getCovariances(SINGULAR);
    double sum = end.getCost() * end.getCost();
    double variance = observed.length > n ? sum / (observed.length - n) : 0;
    Double[] values = new Double[n];
    Double[] deviations = new Double[n];
    for (int i = 0; i < n; i++) {
      values[i] = end.getPoint().getEntry(i) * scale[i];
      deviations[i] = scale[i] * StrictMath.sqrt(variance * inverse.getEntry(i, i));
    }
    return new LeastSquaresResult(
        List.of(values),
        List.of(deviations),
        Correlations.of(inverse),
        sum,
        StrictMath.sqrt(variance),
        evaluations);
  }
}
