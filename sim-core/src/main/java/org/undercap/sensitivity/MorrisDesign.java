package org.undercap.sensitivity;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.PermutationSampler;
import org.undercap.internal.Randoms;

/**
 * Random walks through a grid of the unit cube that change one coordinate at a time, each once [1].
 *
 * <p>Each axis is cut into an even number of equal slices and the grid takes their middles, not
 * their edges, so that no coordinate is 0 or 1, where a quantile may be infinite. A step goes over
 * half of the slices, that is 1/2, as every value of the grid then is met equally often.
 *
 * <p>[1] M. D. Morris, Factorial sampling plans for preliminary computational experiments,
 * Technometrics 33 (1991) 161-174, doi 10.1080/00401706.1991.10484804.
 */
public final class MorrisDesign implements Design {
  private static final double STEP = 0.5;

  private final int dimensions;
  private final double[][] points;
  private final int[] movedAxis;
  private final int[] direction;

  private MorrisDesign(int dimensions, int walks) {
    this.dimensions = dimensions;
    points = new double[walks * (dimensions + 1)][];
    movedAxis = new int[points.length];
    direction = new int[points.length];
  }

  /**
   * Lays out walks.
   *
   * @param dimensions coordinates a point, at least 1
   * @param walks number of walks, at least 2; each costs {@code dimensions + 1} points
   * @param slices slices of an axis, even, at least 2; 4 is usual
   * @param seed decides the walks
   * @return the design
   * @throws IllegalArgumentException if a number is out of range
   */
  public static MorrisDesign of(int dimensions, int walks, int slices, long seed) {
    if (!(dimensions >= 1) || !(walks >= 2) || !(slices >= 2 && slices % 2 == 0)) {
      throw new IllegalArgumentException(
          "walks need 1 dimension, 2 walks and an even number of slices at least, not "
              + dimensions
              + ", "
              + walks
              + " and "
              + slices);
    }
    MorrisDesign design = new MorrisDesign(dimensions, walks);
    UniformRandomProvider random = Randoms.of(seed, "walks through the cube");
    for (int walk = 0; walk < walks; walk++) {
      design.layWalk(walk * (dimensions + 1), slices, random);
    }
    return design;
  }

  private void layWalk(int first, int slices, UniformRandomProvider random) {
    double[] at = new double[dimensions];
    for (int axis = 0; axis < dimensions; axis++) {
      at[axis] = (random.nextInt(slices) + 0.5) / slices;
    }
    int[] order = PermutationSampler.natural(dimensions);
    PermutationSampler.shuffle(random, order);
    points[first] = at.clone();
    for (int step = 0; step < dimensions; step++) {
      int axis = order[step];
      int way = at[axis] < STEP ? 1 : -1;
      at[axis] += way * STEP;
      int index = first + step + 1;
      points[index] = at.clone();
      movedAxis[index] = axis;
      direction[index] = way;
    }
  }

  @Override
  public int size() {
    return points.length;
  }

  @Override
  public double[] point(int index) {
    return points[index].clone();
  }

  /**
   * The elementary effects of an outcome.
   *
   * @param values the outcome at all points
   * @return one effect a coordinate
   * @throws IllegalArgumentException if there are too few values or one is not finite
   */
  public ElementaryEffects effects(double[] values) {
    check(values);
    double[][] slopes = new double[dimensions][points.length / (dimensions + 1)];
    for (int index = 0; index < points.length; index++) {
      if (direction[index] != 0) {
        slopes[movedAxis[index]][index / (dimensions + 1)] =
            direction[index] * (values[index] - values[index - 1]) / STEP;
      }
    }
    List<ElementaryEffects.Effect> effects = new ArrayList<>();
    for (double[] slope : slopes) {
      effects.add(ElementaryEffects.Effect.of(slope));
    }
    return new ElementaryEffects(effects);
  }
}
