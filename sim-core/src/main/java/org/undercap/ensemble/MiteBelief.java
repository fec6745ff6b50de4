package org.undercap.ensemble;

/** What is believed about the mites in a colony on the first day. */
@FunctionalInterface
public interface MiteBelief {
  /**
   * All mites of a member.
   *
   * @param probability place in the distribution, in (0, 1)
   * @param bees the member's adult workers (bees)
   * @param broodCells the member's brood (cells)
   * @return all mites (mites), at least 0
   */
  double mites(double probability, double bees, double broodCells);

  /**
   * The number is known.
   *
   * @param mites all mites (mites), at least 0
   * @return the belief
   */
  static MiteBelief known(double mites) {
    return (probability, bees, broodCells) -> mites;
  }
}
