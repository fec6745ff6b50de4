package org.undercap.parameter;

import java.util.List;
import org.apache.commons.math3.distribution.BetaDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.undercap.internal.Checks;

/**
 * What is believed of a value before any data of one's own: a distribution between two bounds.
 *
 * <ul>
 *   <li>uniform: any value between the bounds is as good as another;
 *   <li>normal: around the centre, cut off at the bounds;
 *   <li>lognormal: its logarithm is normal, the centre is the median, cut off at the bounds;
 *   <li>beta: the beta distribution between the bounds with the centre as its mode and the weight
 *       that project planners give it: {@code a = 1 + 4 (centre - low) / (high - low)}, {@code b =
 *       6 - a}.
 * </ul>
 *
 * @param shape form of the distribution
 * @param centre the value believed in most (unit of the value)
 * @param spread standard deviation of a normal (unit of the value) or of the logarithm of a
 *     lognormal (ratio); else 0
 * @param low lower bound (unit of the value; may be minus infinity for a normal)
 * @param high upper bound (unit of the value; may be infinite for a normal or lognormal)
 */
public record Prior(Shape shape, double centre, double spread, double low, double high) {
  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);
  private static final double BETA_WEIGHT = 4;

  /** Form of a distribution. */
  public enum Shape {
    /** Flat between the bounds. */
    UNIFORM,
    /** Normal, cut off at the bounds. */
    NORMAL,
    /** Normal in the logarithm, cut off at the bounds. */
    LOGNORMAL,
    /** Beta between the bounds. */
    BETA
  }

  /**
   * Checks the numbers.
   *
   * @param shape form of the distribution
   * @param centre the value believed in most, between the bounds
   * @param spread above 0 for normal and lognormal, else 0
   * @param low lower bound, below {@code high}, finite unless the shape is normal, at least 0 for a
   *     lognormal
   * @param high upper bound, finite unless the shape is normal or lognormal
   * @throws IllegalArgumentException if a number does not fit
   */
  public Prior {
    boolean tails = shape == Shape.NORMAL || shape == Shape.LOGNORMAL;
    if (!(low < high) || !(centre >= low && centre <= high)) {
      throw new IllegalArgumentException(
          "a prior needs low < high with its centre between them, not "
              + low
              + ", "
              + high
              + " and "
              + centre);
    }
    if (tails) {
      Checks.positive(spread, "spread of a prior");
    } else {
      Checks.finite(low, "lower bound of a prior");
      Checks.finite(high, "upper bound of a prior");
    }
    if (shape == Shape.LOGNORMAL) {
      Checks.notNegative(low, "lower bound of a lognormal prior");
      Checks.positive(centre, "median of a lognormal prior");
    }
  }

  /**
   * The spread that the catalogue gives a parameter. A normal or lognormal is cut off only where
   * the domain of the parameter ends, a beta ends at the bounds of the catalogue.
   *
   * @param parameter a parameter with one value
   * @return its prior
   * @throws IllegalArgumentException if the parameter has several values or whole numbers, or does
   *     not vary between the members of an ensemble
   */
  public static Prior of(Parameter parameter) {
    requireOneNumber(parameter);
    Spread spread = parameter.spread();
    double value = parameter.value();
    return switch (spread.shape()) {
      case NORMAL ->
          new Prior(
              Shape.NORMAL,
              value,
              spread.amount(),
              lowest(parameter.id()),
              highest(parameter.id()));
      case LOGNORMAL ->
          new Prior(Shape.LOGNORMAL, value, spread.amount(), 0, highest(parameter.id()));
      case BETA -> new Prior(Shape.BETA, value, 0, low(parameter), high(parameter));
      case FIXED ->
          throw new IllegalArgumentException(
              parameter.id().id()
                  + " is the same in all members of an ensemble; give it bounds to vary it");
    };
  }

  /**
   * A flat prior over the range in which the catalogue believes a parameter.
   *
   * @param parameter a parameter with one value and finite bounds
   * @return its prior
   * @throws IllegalArgumentException if the parameter has several values or whole numbers, or lacks
   *     a finite bound
   */
  public static Prior overRange(Parameter parameter) {
    requireOneNumber(parameter);
    return uniform(low(parameter), high(parameter));
  }

  /**
   * A flat prior of a parameter between bounds of one's own.
   *
   * @param parameter a parameter with one value
   * @param low lower bound, finite, inside the domain of the parameter
   * @param high upper bound, finite, above {@code low}, inside the domain
   * @return its prior
   * @throws IllegalArgumentException if the parameter has several values or whole numbers, or a
   *     bound does not fit
   */
  public static Prior between(Parameter parameter, double low, double high) {
    requireOneNumber(parameter);
    parameter.id().check(List.of(low, high));
    return uniform(low, high);
  }

  /**
   * A flat prior.
   *
   * @param low lower bound, finite
   * @param high upper bound, finite, above {@code low}
   * @return the prior; its centre is the middle
   * @throws IllegalArgumentException if the bounds do not fit
   */
  public static Prior uniform(double low, double high) {
    return new Prior(Shape.UNIFORM, low + (high - low) / 2, 0, low, high);
  }

  /**
   * The value below which a share of the distribution lies.
   *
   * @param share the share, strictly between 0 and 1
   * @return the quantile (unit of the value)
   * @throws IllegalArgumentException if the share is not between 0 and 1
   */
  public double quantile(double share) {
    if (!(share > 0 && share < 1)) {
      throw new IllegalArgumentException("share " + share + " must lie between 0 and 1");
    }
    double x =
        switch (shape) {
          case UNIFORM -> low + share * (high - low);
          case NORMAL -> centre + spread * cutQuantile(share);
          case LOGNORMAL -> centre * StrictMath.exp(spread * cutQuantile(share));
          case BETA -> low + (high - low) * beta().inverseCumulativeProbability(share);
        };
    return Math.max(low, Math.min(high, x));
  }

  /**
   * Logarithm of the density against that at the centre. For a lognormal it is the density of the
   * logarithm, so that a fit without data returns the centre for every shape.
   *
   * @param value the value (unit of the value)
   * @return at most 0; minus infinity outside the bounds
   */
  public double logDensity(double value) {
    if (!(value >= low && value <= high)) {
      return Double.NEGATIVE_INFINITY;
    }
    return switch (shape) {
      case UNIFORM -> 0;
      case NORMAL, LOGNORMAL -> 0 - 0.5 * standard(value) * standard(value);
      case BETA -> betaKernel(value) - betaKernel(centre);
    };
  }

  /**
   * Standard deviation, of the logarithm for a lognormal; for normal and lognormal before they are
   * cut off.
   *
   * @return above 0 (unit of the value, or ratio)
   */
  public double deviation() {
    double range = high - low;
    double a = 1 + rise();
    double b = 1 + BETA_WEIGHT - rise();
    return switch (shape) {
      case UNIFORM -> range / StrictMath.sqrt(12);
      case NORMAL, LOGNORMAL -> spread;
      case BETA -> range * StrictMath.sqrt(a * b / ((a + b) * (a + b) * (a + b + 1)));
    };
  }

  private double standard(double value) {
    return shape == Shape.NORMAL
        ? (value - centre) / spread
        : StrictMath.log(value / centre) / spread;
  }

  private double cutQuantile(double share) {
    double below = NORMAL.cumulativeProbability(standard(low));
    double above = NORMAL.cumulativeProbability(standard(high));
    return NORMAL.inverseCumulativeProbability(below + share * (above - below));
  }

  private double betaKernel(double value) {
    double x = (value - low) / (high - low);
    double a = rise();
    return weighted(a, x) + weighted(BETA_WEIGHT - a, 1 - x);
  }

  private static double weighted(double weight, double x) {
    return weight == 0 ? 0 : weight * StrictMath.log(x);
  }

  private BetaDistribution beta() {
    return new BetaDistribution(null, 1 + rise(), 1 + BETA_WEIGHT - rise());
  }

  private double rise() {
    return BETA_WEIGHT * (centre - low) / (high - low);
  }

  private static void requireOneNumber(Parameter parameter) {
    Domain domain = parameter.id().domain();
    if (parameter.values().size() != 1 || domain == Domain.WHOLE || domain == Domain.COUNT) {
      throw new IllegalArgumentException(
          parameter.id().id() + " cannot vary: it is not a single number of any size");
    }
  }

  private static double low(Parameter parameter) {
    return bound(parameter, parameter.low().isEmpty() ? Double.NaN : parameter.low().get(0));
  }

  private static double high(Parameter parameter) {
    return bound(parameter, parameter.high().isEmpty() ? Double.NaN : parameter.high().get(0));
  }

  private static double bound(Parameter parameter, double bound) {
    if (!Double.isFinite(bound)) {
      throw new IllegalArgumentException(
          parameter.id().id() + " has no finite range in the catalogue; give it bounds");
    }
    return bound;
  }

  private static double lowest(ParameterId id) {
    return id.domain() == Domain.ANY ? Double.NEGATIVE_INFINITY : 0;
  }

  private static double highest(ParameterId id) {
    return id.domain() == Domain.FRACTION ? 1 : Double.POSITIVE_INFINITY;
  }
}
