package org.undercap.calibration;

/**
 * How hard a fit searches.
 *
 * @param seed decides starts and random steps
 * @param starts searches from different starts
 * @param maxEvaluations most evaluations of one search
 * @param search kind of search
 */
public record FitSettings(long seed, int starts, int maxEvaluations, Search search) {
  private static final int USUAL_STARTS = 4;
  private static final int USUAL_EVALUATIONS = 2000;

  /** Kind of search. */
  public enum Search {
    /** By quadratic models in a trust region (BOBYQA): fast, for smooth likelihoods. */
    LOCAL,
    /** By an evolution strategy (CMA-ES), then as {@link #LOCAL}: slow, for rough likelihoods. */
    GLOBAL
  }

  /**
   * Checks the numbers.
   *
   * @param seed any
   * @param starts at least 1
   * @param maxEvaluations at least 50
   * @param search kind of search
   * @throws IllegalArgumentException if a number is too small
   */
  public FitSettings {
    if (!(starts >= 1) || !(maxEvaluations >= 50)) {
      throw new IllegalArgumentException(
          starts + " starts of " + maxEvaluations + " evaluations: at least 1 of 50 are needed");
    }
  }

  /**
   * Local searches from 4 starts, each of at most 2,000 evaluations.
   *
   * @param seed decides starts and random steps
   * @return the settings
   */
  public static FitSettings usual(long seed) {
    return new FitSettings(seed, USUAL_STARTS, USUAL_EVALUATIONS, Search.LOCAL);
  }

  /**
   * These settings with another number of starts.
   *
   * @param other number of starts, at least 1
   * @return the changed copy
   */
  public FitSettings withStarts(int other) {
    return new FitSettings(seed, other, maxEvaluations, search);
  }

  /**
   * These settings with another kind of search.
   *
   * @param other kind of search
   * @return the changed copy
   */
  public FitSettings withSearch(Search other) {
    return new FitSettings(seed, starts, maxEvaluations, other);
  }
}
