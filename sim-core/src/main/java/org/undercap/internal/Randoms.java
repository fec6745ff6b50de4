package org.undercap.internal;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/** Random streams: one a cause, so that more draws of one cause do not disturb another. */
public final class Randoms {
  private static final long MIX = 0x9E3779B97F4A7C15L;

  private Randoms() {}

  /**
   * A stream.
   *
   * @param seed seed of the whole study
   * @param cause what the draws are for; other causes get unrelated streams
   * @return a generator that gives the same numbers for the same seed and cause
   */
  public static UniformRandomProvider of(long seed, String cause) {
    long mixed = seed;
    for (int i = 0; i < cause.length(); i++) {
      mixed = (mixed ^ cause.charAt(i)) * MIX;
      mixed ^= mixed >>> 32;
    }
    return RandomSource.XO_SHI_RO_256_PP.create(mixed);
  }
}
