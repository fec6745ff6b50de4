package org.undercap.calibration;

import java.util.List;

/**
 * A curve fitted by least squares.
 *
 * @param values best values of the parameters
 * @param standardDeviations their standard deviations, from the curvature at the best values; 0
 *     where there are no more observations than parameters
 * @param correlations their correlations (-1 to 1), row by row
 * @param residualSumOfSquares weighted sum of squared residuals
 * @param residualDeviation standard deviation of a residual of weight 1
 * @param evaluations how often the curve and its slope were asked for
 */
public record LeastSquaresResult(
    List<Double> values,
    List<Double> standardDeviations,
    List<List<Double>> correlations,
    double residualSumOfSquares,
    double residualDeviation,
    int evaluations) {

  /**
   * Keeps copies.
   *
   * @param values best values
   * @param standardDeviations their standard deviations
   * @param correlations their correlations
   * @param residualSumOfSquares weighted sum of squared residuals
   * @param residualDeviation standard deviation of a residual of weight 1
   * @param evaluations how often the curve was asked for
   */
  public LeastSquaresResult {
    values = List.copyOf(values);
    standardDeviations = List.copyOf(standardDeviations);
    correlations = List.copyOf(correlations);
  }
}
