package org.undercap.monitoring;

import java.util.ArrayList;
import java.util.List;
import org.undercap.internal.Checks;
import org.undercap.parameter.Draw;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;

/**
 * What a wash would show later, if a treatment works as the model says; so that a keeper knows
 * beforehand which count is good news and which is not.
 *
 * @param bees bees in the sample (bees)
 * @param expected mean count (mites)
 * @param range where the count lies in 8 of 10 colonies (mites)
 * @param alarm the smallest count that is alarming: so many or more mites are found in at most 1 of
 *     20 colonies in which the treatment worked (mites)
 * @param falseAlarm how often a colony in which it worked still gives that alarm (fraction)
 */
public record Recheck(int bees, double expected, Interval range, int alarm, double falseAlarm) {
  private static final double MOST = 0.8;
  private static final double RARE = 0.05;
  private static final double GOLDEN = 0.6180339887498949;

  /**
   * The counts to expect.
   *
   * @param mitesPerBee mites on bees for each bee in each member of an ensemble, at the day of the
   *     wash (mites per bee), each at least 0
   * @param bees bees in the sample (bees, at least 1)
   * @param method how the mites are taken off
   * @param parameters tell the share that is found
   * @return the counts to expect
   * @throws IllegalArgumentException if there is no member or a number is out of range
   */
  public static Recheck of(
      double[] mitesPerBee, int bees, WashMethod method, ParameterSet parameters) {
    CountMixture counts = counts(mitesPerBee, bees, method, parameters);
    double tail = (1 - MOST) / 2;
    int alarm = counts.quantile(1 - RARE) + 1;
    return new Recheck(
        bees,
        counts.mean(),
        new Interval(counts.quantile(tail), counts.quantile(1 - tail)),
        alarm,
        1 - counts.cumulative(alarm - 1.0));
  }

  /**
   * The mean count.
   *
   * @param mitesPerBee mites on bees for each bee in each member of an ensemble (mites per bee),
   *     each at least 0
   * @param bees bees in the sample (bees, at least 1)
   * @param method how the mites are taken off
   * @param parameters tell the share that is found
   * @return the mean (mites)
   * @throws IllegalArgumentException if there is no member or a number is out of range
   */
  public static double mean(
      double[] mitesPerBee, int bees, WashMethod method, ParameterSet parameters) {
    return counts(mitesPerBee, bees, method, parameters).mean();
  }

  /**
   * How often the alarm sounds in colonies in which the treatment failed, so that a reader sees
   * whether one wash can tell.
   *
   * @param failed mites on bees for each bee in each member of an ensemble in which the treatment
   *     failed (mites per bee)
   * @param method how the mites are taken off
   * @param parameters tell the share that is found
   * @return share of the failures that are noticed (fraction)
   * @throws IllegalArgumentException if there is no member or a number is out of range
   */
  public double noticed(double[] failed, WashMethod method, ParameterSet parameters) {
    return 1 - counts(failed, bees, method, parameters).cumulative(alarm - 1.0);
  }

  private static CountMixture counts(
      double[] mitesPerBee, int bees, WashMethod method, ParameterSet parameters) {
    Checks.positive(bees, "bees of a wash");
    double spread = parameters.value(ParameterId.COUNT_SPREAD_WASH);
    List<CountLaw> laws = new ArrayList<>();
    Draw recovery = Draw.of(method.recovery(), parameters);
    double place = GOLDEN / 2;
    for (double perBee : mitesPerBee) {
      Checks.notNegative(perBee, "mites per bee");
      place = (place + GOLDEN) % 1;
      double found = recovery.at(place) * Math.min(1, perBee);
      laws.add(CountLaw.among(bees, found, spread));
    }
    return new CountMixture(laws);
  }
}
