package org.undercap.planning;

import java.util.List;
import java.util.OptionalDouble;
import org.undercap.comparison.Ranking;
import org.undercap.ensemble.Outcome;
import org.undercap.ensemble.OutcomeTable;

/**
 * A schedule and what came of it.
 *
 * @param schedule the schedule
 * @param outcomes outcomes by member
 * @param cost cost for one colony (in the user's money), if it is known
 */
public record TriedSchedule(Schedule schedule, OutcomeTable outcomes, OptionalDouble cost) {
  double harm() {
    return outcomes.median(Ranking.HARM);
  }

  /**
   * What schedules are weighed by, each the smaller the better. Differences that no keeper could
   * see do not count.
   *
   * @param left which outcome tells the mites left
   * @param mitesStep ratio of numbers of mites that counts as equal
   * @param withCost whether cost counts
   * @return harm and mites in steps, cost, and minutes
   */
  List<Double> aims(Outcome left, double mitesStep, boolean withCost) {
    double harm = Ranking.harmSteps(harm());
    double mites =
        StrictMath.rint(StrictMath.log1p(outcomes.median(left)) / StrictMath.log(mitesStep));
    double money = withCost ? cost.orElseThrow() : 0;
    return List.of(harm, mites, money, schedule.minutes());
  }
}
