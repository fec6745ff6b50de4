package org.undercap.analysis;

import java.util.ArrayList;
import java.util.List;
import org.undercap.model.ColonyLanes;
import org.undercap.parameter.Domain;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;

/**
 * By how many per cent the growth rate of the mites changes when a parameter changes by one per
 * cent, while bees and brood stay as they are.
 *
 * <p>With the growth rate {@code r = ln lambda} of the day matrix {@code A}, its stable mites
 * {@code w} and their reproductive values {@code v}, the slope is {@code dr/dp = v' (dA/dp) w /
 * (lambda v' w)} [1], and the elasticity {@code (p/r) dr/dp}. The slopes of the entries are taken
 * by central differences of the matrix, so that one pair of vectors serves all parameters.
 *
 * <p>[1] H. Caswell, Matrix Population Models, 2nd edition, 2001, chapter 9.
 */
public final class GrowthElasticities {
  private static final double DIFFERENCE = 1e-4;
  private static final double CLOSE_ENOUGH = 1e-14;

  private GrowthElasticities() {}

  /**
   * The elasticity of the growth rate to one parameter.
   *
   * @param parameter the parameter
   * @param slope change of the growth rate with the parameter (per day and unit of the parameter)
   * @param elasticity relative change of the growth rate for the same relative change of the
   *     parameter (ratio)
   */
  public record Elasticity(ParameterId parameter, double slope, double elasticity) {}

  /**
   * Elasticities of the growth rate in a colony.
   *
   * @param colony bees and brood; its mites do not matter; the first lane is taken
   * @param parameters values of the parameters
   * @param ids parameters with one value above 0
   * @return one elasticity a parameter
   * @throws IllegalArgumentException if a parameter has several values or is not above 0
   * @throws IllegalStateException if the mites neither grow nor shrink, so that there is no
   *     relative change
   */
  public static List<Elasticity> of(
      ColonyLanes colony, ParameterSet parameters, List<ParameterId> ids) {
    MiteDayMatrix day = MiteDayMatrix.of(colony, parameters);
    double[][] matrix = day.rows();
    double[] stable = day.stableMites();
    double[] values = day.reproductiveValues();
    double lambda = product(values, matrix, stable) / dot(values, stable);
    double rate = StrictMath.log(lambda);
    if (!(Math.abs(rate) > CLOSE_ENOUGH)) {
      throw new IllegalStateException("the growth rate is 0, so it has no relative change");
    }
    List<Elasticity> all = new ArrayList<>();
    for (ParameterId id : ids) {
      double value = parameters.value(id);
      double step = step(id, value);
      double[][] above = MiteDayMatrix.of(colony, parameters.with(id, value + step)).rows();
      double[][] below = MiteDayMatrix.of(colony, parameters.with(id, value - step)).rows();
      double change = product(values, above, stable) - product(values, below, stable);
      double slope = change / (2 * step) / (lambda * dot(values, stable));
      all.add(new Elasticity(id, slope, slope * value / rate));
    }
    return List.copyOf(all);
  }

  private static double step(ParameterId id, double value) {
    double room = id.domain() == Domain.FRACTION ? Math.min(value, 1 - value) : value;
    if (!(room > 0)) {
      throw new IllegalArgumentException(
          id.id() + " is " + value + "; an elasticity needs a value inside its domain, above 0");
    }
    return DIFFERENCE * room;
  }

  private static double[] times(double[][] matrix, double[] vector) {
    double[] product = new double[vector.length];
    for (int i = 0; i < vector.length; i++) {
      product[i] = dot(matrix[i], vector);
    }
    return product;
  }

  private static double product(double[] left, double[][] matrix, double[] right) {
    return dot(left, times(matrix, right));
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
