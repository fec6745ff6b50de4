package org.undercap.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import org.undercap.advice.Refusal;
import org.undercap.advice.RuledOut;
import org.undercap.comparison.Ranking;
import org.undercap.ensemble.EnsembleSettings;
import org.undercap.ensemble.MiteBelief;
import org.undercap.ensemble.OutcomeTable;
import org.undercap.ensemble.Quantiles;
import org.undercap.ensemble.Trials;
import org.undercap.hive.ArrivalCatalogue;
import org.undercap.hive.ArrivalLevel;
import org.undercap.monitoring.MiteEstimate;
import org.undercap.monitoring.MitePosterior;
import org.undercap.scenario.ApiaryColony;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Problem;
import org.undercap.scenario.Scenario;

/**
 * All colonies of a yard: which to worry about, which one plan is best for all of them, and whether
 * to treat them on one day.
 *
 * @param site the scenario of the yard, with its plans
 * @param settings members for each colony, and seed
 * @param colonies the colonies, the most worrying first: by the upper end of the mites per 100
 *     bees, then by all mites; those without an estimate last
 * @param plans the plans of the scenario by mean harm, the least first; where it differs by less
 *     than anyone could see, by the mites left; empty if no colony has an estimate
 * @param together whether to treat all on one day; empty if no colony has an estimate
 */
public record Yard(
    Scenario site,
    EnsembleSettings settings,
    List<YardColony> colonies,
    List<YardPlan> plans,
    Optional<Together> together) {
  /**
   * Copies the lists.
   *
   * @param site the scenario of the yard
   * @param settings members for each colony, and seed
   * @param colonies the colonies, the most worrying first
   * @param plans the plans, the least harm first
   * @param together whether to treat all on one day
   */
  public Yard {
    colonies = List.copyOf(colonies);
    plans = List.copyOf(plans);
  }

  /**
   * Looks at a yard.
   *
   * @param site place, day, hive and plans
   * @param colonies its colonies
   * @param settings members for each colony, seed and threads
   * @return the yard
   */
  public static Yard of(Scenario site, List<ApiaryColony> colonies, EnsembleSettings settings) {
    return of(site, colonies, settings, done -> {});
  }

  /**
   * Judges the colonies of a yard and tells how far it has come.
   *
   * @param site place, day, hive and plans of the yard
   * @param colonies its colonies
   * @param settings runs of each plan for each colony
   * @param progress told 1 for each colony that was run
   * @return the yard
   */
  public static Yard of(
      Scenario site, List<ApiaryColony> colonies, EnsembleSettings settings, IntConsumer progress) {
    List<YardColony> judged = new ArrayList<>();
    List<Trial> trials = new ArrayList<>();
    for (ApiaryColony colony : colonies) {
      judged.add(judge(colony, trials, settings.seed()));
    }
    judged.sort(
        Comparator.comparingDouble(YardColony::upper)
            .thenComparingDouble(YardColony::mites)
            .reversed());
    if (trials.isEmpty()) {
      return new Yard(site, settings, judged, List.of(), Optional.empty());
    }
    List<YardPlan> plans = plans(site, trials, settings, progress);
    return new Yard(
        site,
        settings,
        judged,
        plans,
        Optional.of(together(site, judged, trials, plans, settings)));
  }

  /** A colony that can be run. */
  private record Trial(Scenario scenario, MiteBelief belief) {}

  private static YardColony judge(ApiaryColony colony, List<Trial> trials, long seed) {
    if (colony.scenario().isEmpty()) {
      return new YardColony(colony, Optional.empty());
    }
    Scenario scenario = colony.scenario().get();
    List<Problem> doubts = new ArrayList<>(colony.doubts());
    Optional<MiteEstimate> estimate = Optional.empty();
    Optional<Refusal> refusal = Refusal.of(scenario);
    if (refusal.isPresent()) {
      doubts.add(new Problem("", 0, 0, "", "left out: " + refusal.get().text(), ""));
      return new YardColony(
          new ApiaryColony(colony.name(), colony.scenario(), colony.note(), doubts), estimate);
    }
    try {
      MitePosterior posterior =
          MitePosterior.of(scenario.countedColony(), scenario.countsThatTell(), seed);
      estimate = Optional.of(posterior.estimate());
      trials.add(new Trial(scenario, MiteBelief.of(posterior)));
    } catch (IllegalArgumentException e) {
      doubts.add(new Problem("", 0, 0, "", e.getMessage(), ""));
    }
    return new YardColony(
        new ApiaryColony(colony.name(), colony.scenario(), colony.note(), doubts), estimate);
  }

  private static List<List<OutcomeTable>> run(
      List<Trial> trials, List<Plan> plans, EnsembleSettings settings, IntConsumer progress) {
    List<List<OutcomeTable>> outcomes = new ArrayList<>();
    for (Trial t : trials) {
      outcomes.add(new Trials(TrialScope.of(t.scenario).scenario(), t.belief, settings).run(plans));
      progress.accept(1);
    }
    return outcomes;
  }

  private static List<YardPlan> plans(
      Scenario site, List<Trial> trials, EnsembleSettings settings, IntConsumer progress) {
    List<Plan> plans = site.plans();
    List<List<OutcomeTable>> outcomes = run(trials, plans, settings, progress);
    RuledOut rules = new RuledOut(site);
    List<List<String>> ruledOut = plans.stream().map(rules::reasons).toList();
    TrialScope scope = TrialScope.of(site);
    List<YardPlan> result = new ArrayList<>();
    for (int plan = 0; plan < plans.size(); plan++) {
      int place = plan;
      double[] harm =
          outcomes.stream()
              .flatMapToDouble(tables -> Arrays.stream(tables.get(place).of(Ranking.HARM)))
              .toArray();
      double[] q = Quantiles.of(harm, 0.1, 0.9);
      int bestFor =
          (int) outcomes.stream().filter(tables -> isBest(tables, place, ruledOut)).count();
      double left =
          outcomes.stream()
              .mapToDouble(tables -> tables.get(place).mean(scope.mitesLeft()))
              .average()
              .orElse(0);
      double mean = Arrays.stream(harm).average().orElse(0);
      result.add(
          new YardPlan(plans.get(plan), mean, q[0], q[1], bestFor, left, ruledOut.get(plan)));
    }
    result.sort(
        Comparator.<YardPlan>comparingLong(p -> Math.round(p.meanHarm() / Ranking.STEP))
            .thenComparingDouble(YardPlan::meanMitesLeft));
    return result;
  }

  /** Whether a plan that nothing rules out is as good for a colony as the best of these. */
  private static boolean isBest(List<OutcomeTable> tables, int plan, List<List<String>> ruledOut) {
    double least =
        IntStream.range(0, tables.size())
            .filter(other -> ruledOut.get(other).isEmpty())
            .mapToDouble(other -> tables.get(other).mean(Ranking.HARM))
            .min()
            .orElse(0);
    return ruledOut.get(plan).isEmpty()
        && tables.get(plan).mean(Ranking.HARM) <= least + Ranking.STEP;
  }

  private static Together together(
      Scenario site,
      List<YardColony> judged,
      List<Trial> trials,
      List<YardPlan> plans,
      EnsembleSettings settings) {
    double limit = site.limit();
    List<YardColony> counted = judged.stream().filter(c -> c.estimate().isPresent()).toList();
    int sure = (int) counted.stream().filter(c -> c.lower() > limit).count();
    int reach = (int) counted.stream().filter(c -> c.upper() > limit).count();
    double byArrivals = harmByArrivals(trials, plans, settings);
    boolean calm = sure == 0 && reach < counted.size() && byArrivals < Ranking.STEP;
    Together.Advice advice =
        reach == 0
            ? Together.Advice.NONE_NOW
            : calm ? Together.Advice.LOW_ONES_MAY_WAIT : Together.Advice.ALL_ON_ONE_DAY;
    return new Together(advice, sure, reach - sure, limit, worstThird(counted), byArrivals);
  }

  /**
   * The plan to take.
   *
   * @return the first that nothing rules out; empty if no colony has an estimate
   */
  public Optional<YardPlan> best() {
    return plans.isEmpty() ? Optional.empty() : Optional.of(best(plans));
  }

  /** Doing nothing is never ruled out. */
  private static YardPlan best(List<YardPlan> plans) {
    return plans.stream().filter(p -> p.ruledOut().isEmpty()).findFirst().orElseThrow();
  }

  private static double worstThird(List<YardColony> counted) {
    double[] mites = counted.stream().mapToDouble(YardColony::mites).sorted().toArray();
    double all = Arrays.stream(mites).sum();
    int third = (mites.length + 2) / 3;
    double worst =
        IntStream.range(mites.length - third, mites.length).mapToDouble(i -> mites[i]).sum();
    return all > 0 ? worst / all : 0;
  }

  /** Under the best plan, or without treatment if that is more: colonies that wait have none. */
  private static double harmByArrivals(
      List<Trial> trials, List<YardPlan> plans, EnsembleSettings settings) {
    List<YardPlan> both =
        List.of(
            best(plans),
            plans.stream().filter(p -> p.plan().steps().isEmpty()).findFirst().orElseThrow());
    ArrivalLevel none = ArrivalCatalogue.shipped().get("none");
    List<Trial> alone =
        trials.stream().map(t -> new Trial(t.scenario.withArrivals(none), t.belief)).toList();
    List<List<OutcomeTable>> outcomes =
        run(alone, both.stream().map(YardPlan::plan).toList(), settings, done -> {});
    double most = 0;
    for (int plan = 0; plan < both.size(); plan++) {
      int place = plan;
      double mean =
          outcomes.stream()
              .mapToDouble(tables -> tables.get(place).mean(Ranking.HARM))
              .average()
              .orElse(0);
      most = Math.max(most, both.get(plan).meanHarm() - mean);
    }
    return most;
  }
}
