package org.undercap.ensemble;

/** How many members are drawn, from which seed, and how many threads work on them. */
public record EnsembleSettings(int members, long seed, int threads) {
  /** Members that a comparison draws unless told otherwise. */
  public static final int USUAL_MEMBERS = 1000;

  /** Seed of a comparison unless told otherwise. */
  public static final long USUAL_SEED = 1;

  private static final int MOST_MEMBERS = 1_000_000;

  /**
   * Checks the numbers.
   *
   * @param members members, 1 to 1,000,000
   * @param seed any number; the same seed gives the same results
   * @param threads threads, at least 1; results do not depend on it
   * @throws IllegalArgumentException if a number is out of range
   */
  public EnsembleSettings {
    if (members < 1 || members > MOST_MEMBERS) {
      throw new IllegalArgumentException("members " + members + " must be in 1 to " + MOST_MEMBERS);
    }
    if (threads < 1) {
      throw new IllegalArgumentException("threads " + threads + " must be at least 1");
    }
  }

  /**
   * The usual settings with a number of threads.
   *
   * @param threads threads, at least 1
   * @return settings
   */
  public static EnsembleSettings usual(int threads) {
    return new EnsembleSettings(USUAL_MEMBERS, USUAL_SEED, threads);
  }

  /**
   * The same settings with another number of members.
   *
   * @param other members, 1 to 1,000,000
   * @return settings
   */
  public EnsembleSettings withMembers(int other) {
    return new EnsembleSettings(other, seed, threads);
  }
}
