package org.undercap.monitoring;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.undercap.hive.ArrivalCatalogue;
import org.undercap.hive.ArrivalLevel;
import org.undercap.treatment.Circumstances;
import org.undercap.treatment.PlanStep;

/**
 * Why did a treatment leave so many mites? Runs the colony under each {@link FailureCause} and asks
 * how likely the count after the treatment is, given the counts before it.
 *
 * <p>The order says which cause fits best, not which one is proved: the size of each cause is an
 * example, causes act together (colder days also slow the bees), and causes of nearly equal weight
 * are told apart only by the next observation that each of them names.
 */
public final class PoorResult {
  private static final int ROWS = 32;
  private static final int PICKS = 256;
  private static final double MOST = 0.8;

  private PoorResult() {}

  /**
   * Ranks the causes that could have made a difference.
   *
   * @param colony the colony and what was done, with treatments among its steps
   * @param before counts before the treatment, at least one
   * @param after a count after or during it
   * @param seed decides the draws
   * @return the causes, best fit first
   * @throws IllegalArgumentException if there was no treatment, or a count cannot tell anything
   */
  public static List<RankedCause> rank(
      CountedColony colony, List<Count> before, Count after, long seed) {
    if (applications(colony).isEmpty() || before.isEmpty()) {
      throw new IllegalArgumentException(
          "a poor result needs a treatment among the steps and a count before it");
    }
    List<Outcome> outcomes = new ArrayList<>();
    for (FailureCause cause : FailureCause.all()) {
      if (applications(colony).stream().anyMatch(a -> cause.concerns(a.method()))) {
        outcomes.add(outcome(cause, under(cause, colony), before, after, seed));
      }
    }
    double best = outcomes.stream().mapToDouble(Outcome::logLikelihood).max().orElseThrow();
    double sum = outcomes.stream().mapToDouble(o -> StrictMath.exp(o.logLikelihood() - best)).sum();
    return outcomes.stream()
        .map(o -> o.ranked(StrictMath.exp(o.logLikelihood() - best) / sum))
        .sorted(Comparator.comparingDouble(RankedCause::weight).reversed())
        .toList();
  }

  private static List<PlanStep.Application> applications(CountedColony colony) {
    return colony.steps().stream()
        .filter(PlanStep.Application.class::isInstance)
        .map(PlanStep.Application.class::cast)
        .toList();
  }

  private record Outcome(
      FailureCause cause, double logLikelihood, CountMixture predicted, double found) {
    RankedCause ranked(double weight) {
      double tail = (1 - MOST) / 2;
      Interval range = new Interval(predicted.quantile(tail), predicted.quantile(1 - tail));
      return new RankedCause(cause, weight, predicted.mean(), range, predicted.asFarOut(found));
    }
  }

  private static Outcome outcome(
      FailureCause cause, CountedColony colony, List<Count> before, Count after, long seed) {
    List<Count> all = new ArrayList<>(before);
    all.add(after);
    Unknowns unknowns = Unknowns.draw(colony, ROWS, seed, Set.of());
    Signals signals = new CountModel(colony, all).signals(unknowns);
    Likelihood earlier = new Likelihood(before, colony.parameters());
    Likelihood both = new Likelihood(all, colony.parameters());
    int last = before.size();
    if (!signals.tells(last)) {
      throw new IllegalArgumentException(
          "the count after the treatment tells nothing: the model has no such brood then");
    }
    Posterior given = Posterior.of(earlier, signals, unknowns);
    double logLikelihood =
        Posterior.of(both, signals, unknowns).logEvidence() - given.logEvidence();
    return new Outcome(
        cause, logLikelihood, given.predicted(both, after, last, PICKS), Likelihood.found(after));
  }

  private static CountedColony under(FailureCause cause, CountedColony colony) {
    return switch (cause.change()) {
      case NONE -> colony;
      case WARMER -> colony.withWarmerDays(colony.warmer() + cause.number());
      case ARRIVALS -> colony.withArrivals(atLeast(cause.amount(), colony));
      case DOSE -> colony.withSteps(dosed(colony, cause.number()), colony.circumstances());
      case RESISTANCE -> colony.withSteps(colony.steps(), resistant(colony, cause.number()));
    };
  }

  private static ToDoubleFunction<LocalDate> atLeast(String levelId, CountedColony colony) {
    ArrivalLevel level = ArrivalCatalogue.shipped().get(levelId);
    return date ->
        Math.max(
            colony.arrivals().applyAsDouble(date), level.at(date, colony.climate().hemisphere()));
  }

  private static List<PlanStep> dosed(CountedColony colony, double ratio) {
    List<PlanStep> steps = new ArrayList<>();
    for (PlanStep step : colony.steps()) {
      steps.add(
          step instanceof PlanStep.Application a
              ? new PlanStep.Application(a.date(), a.method(), a.dose() * ratio)
              : step);
    }
    return steps;
  }

  private static Circumstances resistant(CountedColony colony, double share) {
    Circumstances met = colony.circumstances();
    Map<String, Double> shares = new HashMap<>(met.resistantShares());
    applications(colony).stream()
        .filter(a -> !a.method().organic())
        .forEach(a -> shares.merge(a.method().substanceClass(), share, Math::max));
    return new Circumstances(
        met.openFloor(), met.humid(), shares, met.peakEggs(), met.parameters());
  }
}
