package org.undercap.comparison;

import java.util.List;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import org.undercap.ensemble.Ensemble;
import org.undercap.ensemble.EnsembleSettings;
import org.undercap.ensemble.MiteBelief;
import org.undercap.ensemble.Outcome;
import org.undercap.ensemble.PlanResult;
import org.undercap.ensemble.SeasonDates;
import org.undercap.scenario.Scenario;

/**
 * All plans of a scenario held against each other. Plans are ranked by harm to winter bees, never
 * by the mites left in winter alone: a late treatment leaves few mites and ruined bees.
 *
 * @param scenario what was asked
 * @param mites middle value of all mites on the first day (mites)
 * @param settings members and seed
 * @param dates the days that outcomes look at
 * @param runs each plan run once with the middle values, in the order of the scenario
 * @param results each plan over the ensemble, in the order of the scenario
 * @param ranked places of the plans in the scenario, the best first
 */
public record Comparison(
    Scenario scenario,
    double mites,
    EnsembleSettings settings,
    SeasonDates dates,
    List<CentralRun> runs,
    List<PlanResult> results,
    Ranking ranked) {
  /**
   * Copies the lists.
   *
   * @param scenario what was asked
   * @param mites middle value of all mites on the first day, at least 0 (mites)
   * @param settings members and seed
   * @param dates the days that outcomes look at
   * @param runs one for each plan
   * @param results one for each plan
   * @param ranked a permutation of the places of the plans
   * @throws IllegalArgumentException if the lists differ in length
   */
  public Comparison {
    runs = List.copyOf(runs);
    results = List.copyOf(results);
    if (runs.size() != results.size() || ranked.order().size() != results.size()) {
      throw new IllegalArgumentException(
          runs.size()
              + " runs, "
              + results.size()
              + " results and "
              + ranked.order().size()
              + " ranks differ");
    }
  }

  /**
   * Compares the plans of a scenario.
   *
   * @param scenario what is asked
   * @param mites middle value of all mites on the first day (mites), at least 0
   * @param belief what is believed about them
   * @param settings members, seed and threads
   * @param progress told the number of members done, from any thread, in any order
   * @return the comparison
   * @throws IllegalArgumentException if no colony of this season and place can be scaled to the
   *     facts
   */
  public static Comparison of(
      Scenario scenario,
      double mites,
      MiteBelief belief,
      EnsembleSettings settings,
      IntConsumer progress) {
    List<CentralRun> runs = CentralRun.of(scenario, mites, scenario.plans());
    Ensemble ensemble = new Ensemble(scenario, belief, settings);
    List<PlanResult> results = ensemble.run(scenario.plans(), RecountDay.all(scenario), progress);
    return new Comparison(
        scenario,
        mites,
        settings,
        ensemble.dates(),
        runs,
        results,
        Ranking.of(results.stream().map(PlanResult::outcomes).toList(), ensemble.dates().judged()));
  }

  /**
   * The order of the plans.
   *
   * @return their places in the scenario, the best first
   */
  public List<Integer> ranking() {
    return ranked.order();
  }

  /**
   * How often a plan harms winter bees less than another. Both met the same draws in each member; a
   * tie counts half.
   *
   * @param plan place of a plan in the scenario
   * @param other place of another
   * @return share of the members (fraction)
   */
  public double betterIn(int plan, int other) {
    double[] mine = results.get(plan).outcomes().of(Ranking.HARM);
    double[] theirs = results.get(other).outcomes().of(Ranking.HARM);
    return IntStream.range(0, mine.length)
            .mapToDouble(m -> mine[m] < theirs[m] ? 1 : mine[m] == theirs[m] ? 0.5 : 0)
            .sum()
        / mine.length;
  }

  /**
   * The plan that harms winter bees least.
   *
   * @return its place in the scenario
   */
  public int best() {
    return ranking().get(0);
  }

  /**
   * Whether an outcome can be told: some need midwinter or the end of winter to lie in the run.
   *
   * @param outcome the outcome
   * @return true if it can be told
   */
  public boolean tells(Outcome outcome) {
    return dates.tells(outcome);
  }
}
