package org.undercap.ensemble;

import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/**
 * Points that fill the unit cube evenly: the Sobol sequence, each coordinate moved by a random
 * amount of its own (modulo 1), so that another seed gives another, equally even set.
 */
final class UnitPoints {
  /** Keeps coordinates off the borders, where quantiles are infinite. */
  private static final double BORDER = 1e-9;

  private final int dimensions;
  private final double[] shift;

  UnitPoints(int dimensions, long seed) {
    this.dimensions = dimensions;
    shift = new double[dimensions];
    for (int d = 0; d < dimensions; d++) {
      shift[d] = Streams.of(seed, "points", d).nextDouble();
    }
  }

  /** Some consecutive points. */
  double[][] points(int first, int count) {
    SobolSequenceGenerator sobol = new SobolSequenceGenerator(dimensions);
    double[][] points = new double[count][];
    for (int i = 0; i < count; i++) {
      points[i] = i == 0 ? sobol.skipTo(first) : sobol.nextVector();
      for (int d = 0; d < dimensions; d++) {
        double u = points[i][d] + shift[d];
        points[i][d] = Math.max(BORDER, Math.min(1 - BORDER, u - Math.floor(u)));
      }
    }
    return points;
  }

  /** Random streams that are told apart by what they are for. */
  static final class Streams {
    private Streams() {}

    static UniformRandomProvider of(long seed, String purpose, long number) {
      UniformRandomProvider mixer =
          RandomSource.SPLIT_MIX_64.create(
              seed * 0x9E3779B97F4A7C15L + purpose.hashCode() * 0xBF58476D1CE4E5B9L + number);
      long[] state = {mixer.nextLong(), mixer.nextLong(), mixer.nextLong(), mixer.nextLong()};
      return RandomSource.XO_SHI_RO_256_PP.create(state);
    }
  }
}
