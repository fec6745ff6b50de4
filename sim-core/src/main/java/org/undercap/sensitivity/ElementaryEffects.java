package org.undercap.sensitivity;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.stat.StatUtils;

/**
 * How much an outcome changes when one coordinate is moved alone: a cheap way to tell parameters
 * that matter from those that do not [1], [2].
 *
 * <p>[1] See {@link MorrisDesign}. [2] F. Campolongo, J. Cariboni, A. Saltelli, An effective
 * screening design for sensitivity analysis of large models, Environmental Modelling and Software
 * 22 (2007) 1509-1518, doi 10.1016/j.envsoft.2006.10.004.
 *
 * @param effects one effect a coordinate
 */
public record ElementaryEffects(List<Effect> effects) {
  private static final int USUAL_SLICES = 4;

  /**
   * Keeps a copy.
   *
   * @param effects one effect a coordinate
   */
  public ElementaryEffects {
    effects = List.copyOf(effects);
  }

  /**
   * Runs an outcome at the points of a design of four slices and sorts its coordinates.
   *
   * @param dimensions number of coordinates, at least 1
   * @param walks number of walks, at least 2; costs {@code walks * (dimensions + 1)} points
   * @param seed decides the walks
   * @param function the outcome
   * @return the effects
   * @throws IllegalArgumentException if a number is out of range
   */
  public static ElementaryEffects estimate(
      int dimensions, int walks, long seed, UnitCubeFunction function) {
    MorrisDesign design = MorrisDesign.of(dimensions, walks, USUAL_SLICES, seed);
    return design.effects(design.evaluate(function));
  }

  /**
   * The effect of one coordinate: slopes over half of its axis, in the unit of the outcome for the
   * whole axis.
   *
   * @param mean mean of the slopes (mu)
   * @param meanAbsolute mean of the sizes of the slopes (mu*): importance
   * @param deviation standard deviation of the slopes (sigma): how far the effect depends on where
   *     it is measured, by curvature or by the other coordinates
   * @param standardError standard error of {@code meanAbsolute}
   */
  public record Effect(double mean, double meanAbsolute, double deviation, double standardError) {
    static Effect of(double[] slopes) {
      double[] sizes = Arrays.stream(slopes).map(Math::abs).toArray();
      return new Effect(
          StatUtils.mean(slopes),
          StatUtils.mean(sizes),
          StrictMath.sqrt(StatUtils.variance(slopes)),
          StrictMath.sqrt(StatUtils.variance(sizes) / sizes.length));
    }
  }
}
