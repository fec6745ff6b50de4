package org.undercap.calibration;

import org.undercap.internal.Checks;
import org.undercap.parameter.ParameterCatalogue;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.Prior;

/**
 * A parameter that a fit may move. The fit sees a coordinate from 0 to 1, even in the value or in
 * its logarithm, between the bounds of the prior; a prior with tails ends where one in 10,000 lies
 * beyond on each side.
 *
 * @param name name in messages and tables
 * @param prior what is believed before the data
 * @param logarithmic whether the coordinate is even in the logarithm
 * @param low least value that the fit tries (unit of the value)
 * @param high largest value that the fit tries (unit of the value)
 */
public record FreeParameter(
    String name, Prior prior, boolean logarithmic, double low, double high) {
  private static final double TAIL = 1e-4;
  private static final double UNIFORM_VARIANCE = 1.0 / 12;

  /**
   * Checks the bounds.
   *
   * @param name name in messages and tables
   * @param prior what is believed before the data
   * @param logarithmic whether the coordinate is even in the logarithm
   * @param low finite, above 0 if logarithmic
   * @param high finite, above {@code low}
   * @throws IllegalArgumentException if the bounds do not fit
   */
  public FreeParameter {
    Checks.finite(low, "lower bound of " + name);
    Checks.finite(high, "upper bound of " + name);
    if (!(low < high) || (logarithmic && !(low > 0))) {
      throw new IllegalArgumentException(
          name + ": bounds " + low + " and " + high + " must rise, and be above 0 for a logarithm");
    }
  }

  /**
   * A parameter of the catalogue with its spread as prior.
   *
   * @param id a parameter that varies between the members of an ensemble
   * @return the free parameter, logarithmic where its spread is lognormal
   * @throws IllegalArgumentException if the catalogue gives it no spread
   */
  public static FreeParameter of(ParameterId id) {
    return of(id.id(), Prior.of(ParameterCatalogue.shipped().get(id)));
  }

  /**
   * A parameter with a prior.
   *
   * @param name name in messages and tables
   * @param prior what is believed before the data
   * @return the free parameter, logarithmic where the prior is lognormal
   */
  public static FreeParameter of(String name, Prior prior) {
    boolean tails = prior.spread() > 0;
    return new FreeParameter(
        name,
        prior,
        prior.shape() == Prior.Shape.LOGNORMAL,
        tails ? prior.quantile(TAIL) : prior.low(),
        tails ? prior.quantile(1 - TAIL) : prior.high());
  }

  /**
   * A positive parameter of which only the bounds are known: flat in the logarithm between them.
   *
   * @param name name in messages and tables
   * @param low lower bound, above 0
   * @param high upper bound, finite
   * @return the free parameter
   * @throws IllegalArgumentException if the bounds do not fit
   */
  public static FreeParameter flatInLogarithm(String name, double low, double high) {
    return new FreeParameter(name, Prior.uniform(low, high), true, low, high);
  }

  /** The value at a coordinate. */
  double value(double coordinate) {
    double x =
        logarithmic
            ? low * StrictMath.exp(coordinate * StrictMath.log(high / low))
            : low + coordinate * (high - low);
    return Math.max(low, Math.min(high, x));
  }

  /** The coordinate of a value, 0 to 1. */
  double coordinate(double value) {
    double x =
        logarithmic
            ? StrictMath.log(value / low) / StrictMath.log(high / low)
            : (value - low) / (high - low);
    return Math.max(0, Math.min(1, x));
  }

  /** Where a search begins: the centre of the prior, or the middle if nothing is believed. */
  double startCoordinate() {
    return prior.shape() == Prior.Shape.UNIFORM ? 0.5 : coordinate(prior.centre());
  }

  /** Standard deviation of the prior (coordinate). */
  double priorDeviation() {
    if (prior.shape() == Prior.Shape.UNIFORM) {
      return StrictMath.sqrt(UNIFORM_VARIANCE);
    }
    return prior.deviation() / (logarithmic ? StrictMath.log(high / low) : high - low);
  }
}
