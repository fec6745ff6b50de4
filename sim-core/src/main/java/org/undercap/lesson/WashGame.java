package org.undercap.lesson;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.undercap.internal.Checks;
import org.undercap.monitoring.WashMethod;
import org.undercap.parameter.ParameterSet;

/**
 * Sampling luck on the table: slips and throws of three dice that hold each count of a wash as
 * often as chance does.
 *
 * @param bees bees in the wash
 * @param truth mites on 100 bees of the colony
 * @param share chance that a bee of the wash has a mite that is found (fraction)
 */
public record WashGame(int bees, double truth, double share) {
  private static final int SLIPS = 100;
  private static final int FACES = 6;
  private static final int THROWS = FACES * FACES * FACES;

  /**
   * Checks the numbers.
   *
   * @param bees at least 1
   * @param truth at least 0 (mites per 100 bees)
   * @param share 0 to 1
   * @throws IllegalArgumentException if a number is out of range
   */
  public WashGame {
    Checks.positive(bees, "bees of a wash");
    Checks.notNegative(truth, "mites on 100 bees");
    Checks.share(share, "chance of a mite that is found");
  }

  /**
   * The colony of the lesson about washes.
   *
   * @return the game
   */
  public static WashGame usual() {
    double truth = SetUps.number("wash.share");
    double found = truth * ParameterSet.shipped().value(WashMethod.ALCOHOL.recovery());
    return new WashGame(SetUps.whole("wash.bees"), 100 * truth, found);
  }

  /**
   * A count and the throws that mean it.
   *
   * @param from first throw, three figures from 1 to 6
   * @param to last throw
   * @param mites the count
   */
  public record Throw(String from, String to, int mites) {}

  /**
   * The slips, mixed in the same way each time.
   *
   * @return the counts on a hundred slips
   */
  public List<Integer> slips() {
    BinomialDistribution counts = counts();
    List<Integer> slips = new ArrayList<>();
    for (int i = 0; i < SLIPS; i++) {
      // The step has no factor in common with a hundred, so each rank comes once.
      int rank = i * 37 % SLIPS;
      slips.add(counts.inverseCumulativeProbability((rank + 0.5) / SLIPS));
    }
    return slips;
  }

  /**
   * What the throws of three dice mean.
   *
   * @return counts in order, with the throws from 111 to 666 that mean them
   */
  public List<Throw> dice() {
    BinomialDistribution counts = counts();
    List<Throw> table = new ArrayList<>();
    int begin = 0;
    for (int i = 1; i <= THROWS; i++) {
      int before = counts.inverseCumulativeProbability((i - 0.5) / THROWS);
      int next = i == THROWS ? -1 : counts.inverseCumulativeProbability((i + 0.5) / THROWS);
      if (next != before) {
        table.add(new Throw(figures(begin), figures(i - 1), before));
        begin = i;
      }
    }
    return table;
  }

  private BinomialDistribution counts() {
    return new BinomialDistribution(null, bees, share);
  }

  private static String figures(int number) {
    return ""
        + (number / (FACES * FACES) + 1)
        + (number / FACES % FACES + 1)
        + (number % FACES + 1);
  }
}
