package org.undercap.ensemble;

import java.util.Arrays;
import org.undercap.monitoring.MitePosterior;

/** What is believed about the mites in a colony on the first day. */
@FunctionalInterface
public interface MiteBelief {
  /**
   * All mites of some members.
   *
   * @param places place of each member in the distribution, in (0, 1)
   * @param bees adult workers of each member (bees)
   * @param broodCells brood of each member (cells)
   * @return all mites of each member (mites), at least 0
   */
  double[] mites(double[] places, double[] bees, double[] broodCells);

  /**
   * The number is known.
   *
   * @param mites all mites (mites), at least 0
   * @return the belief
   */
  static MiteBelief known(double mites) {
    return (places, bees, broodCells) -> {
      double[] all = new double[places.length];
      Arrays.fill(all, mites);
      return all;
    };
  }

  /**
   * What counts say.
   *
   * @param posterior the counts weighed
   * @return the belief
   */
  static MiteBelief of(MitePosterior posterior) {
    return posterior::sample;
  }

  /**
   * This belief with all numbers changed by a factor.
   *
   * @param factor factor on the mites (ratio), at least 0
   * @return the belief
   */
  default MiteBelief times(double factor) {
    return (places, bees, broodCells) ->
        Arrays.stream(mites(places, bees, broodCells)).map(mites -> mites * factor).toArray();
  }

  /**
   * This belief, which works out the mites of the same members only once.
   *
   * @return the same belief, faster for ensembles that differ in other things
   */
  default MiteBelief remembered() {
    return new RememberedBelief(this);
  }
}
