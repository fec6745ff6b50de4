package org.undercap.sensitivity;

import java.util.List;

/**
 * Which share of the variance of an outcome each coordinate explains: alone (first order), and with
 * all its interactions (total).
 *
 * <p>First order by [1], table 2 (b); total by [2], table 2 (f) of [1]; both on values less their
 * mean. Intervals are percentiles of bootstrap resamples of the rows; as Sobol points are more even
 * than random ones, the intervals are wider than need be. An outcome without variance has indices
 * of 0. Estimates may lie a little below 0 or above 1.
 *
 * <p>[1] A. Saltelli, P. Annoni, I. Azzini, F. Campolongo, M. Ratto, S. Tarantola, Variance based
 * sensitivity analysis of model output, Computer Physics Communications 181 (2010) 259-270, doi
 * 10.1016/j.cpc.2009.09.018. [2] M. J. W. Jansen, Analysis of variance designs for model output,
 * Computer Physics Communications 117 (1999) 35-43, doi 10.1016/S0010-4655(98)00154-4.
 *
 * @param mean mean of the outcome
 * @param variance variance of the outcome
 * @param first first-order index of each coordinate (fraction of the variance)
 * @param total total index of each coordinate (fraction of the variance)
 */
public record SobolIndices(double mean, double variance, List<Index> first, List<Index> total) {
  private static final int USUAL_RESAMPLES = 500;

  /**
   * Keeps copies.
   *
   * @param mean mean of the outcome
   * @param variance variance of the outcome
   * @param first first-order index of each coordinate
   * @param total total index of each coordinate
   */
  public SobolIndices {
    first = List.copyOf(first);
    total = List.copyOf(total);
  }

  /**
   * Runs an outcome at the points of a design and estimates its indices with intervals from 500
   * resamples.
   *
   * @param dimensions number of coordinates, 1 to 500
   * @param rows a power of two; costs {@code rows * (dimensions + 2)} points
   * @param seed decides points and resamples
   * @param function the outcome
   * @return the indices
   * @throws IllegalArgumentException if a number is out of range
   */
  public static SobolIndices estimate(
      int dimensions, int rows, long seed, UnitCubeFunction function) {
    SobolDesign design = SobolDesign.of(dimensions, rows, seed);
    return design.indices(design.evaluate(function), USUAL_RESAMPLES, seed);
  }

  /**
   * An index with its 95 % interval.
   *
   * @param value the estimate (fraction of the variance)
   * @param low 2.5 % of the resamples lie below
   * @param high 2.5 % of the resamples lie above
   */
  public record Index(double value, double low, double high) {}
}
