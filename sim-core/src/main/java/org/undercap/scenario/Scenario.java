package org.undercap.scenario;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.undercap.climate.Climate;
import org.undercap.hive.ArrivalLevel;
import org.undercap.internal.Checks;
import org.undercap.monitoring.Count;
import org.undercap.monitoring.CountedColony;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.treatment.Circumstances;
import org.undercap.treatment.Method;
import org.undercap.treatment.PlanStep;
import org.undercap.treatment.Work;

/**
 * A colony, its place, what was counted and what may be done, all on dates. Made from a file by
 * {@link org.undercap.scenario.io.ScenarioReader}.
 */
public record Scenario(
    String name,
    String about,
    Climate climate,
    boolean humid,
    LocalDate start,
    LocalDate end,
    HiveFacts hive,
    OptionalDouble mitesInColony,
    List<Count> counts,
    ArrivalLevel arrivals,
    List<PlanStep.LateFeeding> feeding,
    History done,
    Optional<ChosenThreshold> threshold,
    Map<String, Double> resistance,
    ParameterSet parameters,
    List<Method> ownMethods,
    List<Plan> plans,
    boolean study,
    List<Method> allowed,
    boolean organic,
    KeeperFacts keeper,
    List<Assumption> assumptions) {

  /**
   * Checks the days and copies the collections.
   *
   * @param name what it is called
   * @param about remarks of the user, possibly empty
   * @param climate the place, in its own months
   * @param humid whether the place is humid, which weakens some strips
   * @param start day of the facts, first day of the run
   * @param end last day of the run
   * @param hive bees, brood and hive on the first day
   * @param mitesInColony all mites on the first day, if the user said so (mites)
   * @param counts counts on or shortly before the first day and later ones; empty if all mites are
   *     known
   * @param arrivals mites from other colonies, to be asked with the hemisphere of the climate
   * @param feeding late feeding, whatever the plan
   * @param done what was done before any plan
   * @param threshold infestation at which the user wants to act
   * @param resistance share of resistant mites by class of substances (fraction)
   * @param parameters values of the parameters
   * @param ownMethods methods that the user described
   * @param plans the plans; the first is to do nothing
   * @param study whether this is a study run, which may go beyond labels
   * @param allowed methods that the user may use; all if empty
   * @param organic whether the user keeps to organic schemes
   * @param keeper what else bears on a decision
   * @param assumptions what the results rest on beside the plain facts
   * @throws IllegalArgumentException if the run ends before it begins, the number of mites is out
   *     of range, or neither counts nor the number of mites are given
   */
  public Scenario {
    counts = List.copyOf(counts);
    feeding = List.copyOf(feeding);
    resistance = Map.copyOf(resistance);
    ownMethods = List.copyOf(ownMethods);
    plans = List.copyOf(plans);
    allowed = List.copyOf(allowed);
    assumptions = List.copyOf(assumptions);
    if (!end.isAfter(start)) {
      throw new IllegalArgumentException("last day " + end + " must lie after first day " + start);
    }
    if (mitesInColony.isPresent()) {
      Checks.notNegative(mitesInColony.getAsDouble(), "mites in the colony");
    } else if (counts.isEmpty()) {
      throw new IllegalArgumentException("needs counts or the number of mites in the colony");
    }
  }

  /**
   * Length of the run, first and last day included.
   *
   * @return number of days (days, at least 2)
   */
  public int days() {
    return (int) ChronoUnit.DAYS.between(start, end) + 1;
  }

  /**
   * Mites that arrive on a date.
   *
   * @param date the date
   * @return mites from other colonies (mites per day)
   */
  public double arrivalsOn(LocalDate date) {
    return arrivals.at(date, climate.hemisphere());
  }

  /**
   * What treatments meet in this hive and place.
   *
   * @return floor, humidity, resistance, laying and parameters
   */
  public Circumstances circumstances() {
    return new Circumstances(hive.openFloor(), humid, resistance, climate.eggs().max(), parameters);
  }

  /**
   * All that is done under a plan: what goes with every plan and its own steps.
   *
   * @param plan one of the plans
   * @return the steps, those of every plan first
   */
  public List<PlanStep> stepsUnder(Plan plan) {
    List<PlanStep> steps = new ArrayList<>(stepsOfEveryPlan());
    steps.addAll(plan.steps());
    return List.copyOf(steps);
  }

  /**
   * What goes with every plan.
   *
   * @return the feeding, then what was done already
   */
  public List<PlanStep> stepsOfEveryPlan() {
    List<PlanStep> steps = new ArrayList<>(feeding);
    steps.addAll(done.steps());
    return List.copyOf(steps);
  }

  /**
   * Keeper's time for what a plan asks for.
   *
   * @param plan a plan
   * @return time for one colony (minutes)
   */
  public double minutes(Plan plan) {
    return plan.steps().stream().mapToDouble(step -> Work.minutes(step, parameters)).sum();
  }

  /**
   * Money for the treatments of a plan.
   *
   * @param plan a plan
   * @return cost for one colony (in the user's money); empty if that of a method is not known
   */
  public OptionalDouble cost(Plan plan) {
    return withoutPrice(plan).isEmpty()
        ? OptionalDouble.of(leastCost(plan))
        : OptionalDouble.empty();
  }

  /**
   * Money for those treatments of a plan whose price is known.
   *
   * @param plan a plan
   * @return least cost for one colony (in the user's money)
   */
  public double leastCost(Plan plan) {
    return methods(plan).mapToDouble(method -> keeper.costs().getOrDefault(method.id(), 0.0)).sum();
  }

  /**
   * Treatments of a plan whose price is not known.
   *
   * @param plan a plan
   * @return methods, each once
   */
  public List<Method> withoutPrice(Plan plan) {
    return methods(plan)
        .filter(method -> !keeper.costs().containsKey(method.id()))
        .distinct()
        .toList();
  }

  private static Stream<Method> methods(Plan plan) {
    return plan.steps().stream()
        .filter(PlanStep.Application.class::isInstance)
        .map(step -> ((PlanStep.Application) step).method());
  }

  /**
   * When honey supers are taken off under a plan.
   *
   * @param plan a plan
   * @return the last day on which they are on; empty if there are none, or nothing is known
   */
  public Optional<LocalDate> supersUntil(Plan plan) {
    return plan.supersUntil().or(() -> keeper.supersUntil());
  }

  /**
   * The limit that the keeper wants to stay below.
   *
   * @return the threshold of the scenario, or the usual one (mites per 100 bees)
   */
  public double limit() {
    return threshold
        .map(ChosenThreshold::mitesPer100Bees)
        .orElse(parameters.value(ParameterId.THRESHOLD_USUAL));
  }

  /**
   * Counts up to the first day.
   *
   * @return the counts that are not after it
   */
  public List<Count> countsAtStart() {
    return counts.stream().filter(count -> !count.date().isAfter(start)).toList();
  }

  /**
   * Counts by which the mites of the first day are told: all of them if the user said what was
   * done, since the model then runs through that; else those up to the first day.
   *
   * @return the counts, in the order of their dates
   */
  public List<Count> countsThatTell() {
    return done.told() ? counts : countsAtStart();
  }

  /**
   * Later counts that do not tell the mites of the first day: they show whether the run comes true.
   *
   * @return the other counts
   */
  public List<Count> laterCounts() {
    return done.told()
        ? List.of()
        : counts.stream().filter(count -> count.date().isAfter(start)).toList();
  }

  /**
   * The colony as those counts met it: before any plan.
   *
   * @return the colony of the first day, with arrivals, feeding and what was done
   */
  public CountedColony countedColony() {
    return CountedColony.of(climate, start, hive.bees(), hive.broodCells())
        .withQueenQuality(hive.queenQuality())
        .withArrivals(this::arrivalsOn)
        .withSteps(stepsOfEveryPlan(), circumstances());
  }

  /**
   * This scenario with other plans.
   *
   * @param other the plans, without that of doing nothing, which comes first by itself
   * @return the changed copy
   */
  public Scenario withPlans(List<Plan> other) {
    List<Plan> all = new ArrayList<>();
    all.add(Plan.doNothing());
    all.addAll(other);
    return changed(parts -> parts.plans = all);
  }

  /**
   * This scenario with a known number of mites in place of the counts.
   *
   * @param mites all mites on the first day (mites, at least 0)
   * @return the changed copy
   */
  public Scenario withMites(double mites) {
    return changed(parts -> parts.mitesInColony = OptionalDouble.of(mites));
  }

  /**
   * This scenario with another climate.
   *
   * @param other place, in its own months
   * @return the changed copy
   */
  public Scenario withClimate(Climate other) {
    return changed(parts -> parts.climate = other);
  }

  /**
   * This scenario with another last day.
   *
   * @param other last day of the run, after the first
   * @return the changed copy; its plans may have steps beyond that day
   * @throws IllegalArgumentException if the run ends before it begins
   */
  public Scenario withEnd(LocalDate other) {
    return changed(parts -> parts.end = other);
  }

  /**
   * This scenario with other facts about the hive.
   *
   * @param other bees, brood and hive
   * @return the changed copy
   */
  public Scenario withHive(HiveFacts other) {
    return changed(parts -> parts.hive = other);
  }

  /**
   * This scenario in a place that is humid or is not.
   *
   * @param other whether the place is humid, which weakens some strips
   * @return the changed copy
   */
  public Scenario withHumid(boolean other) {
    return changed(parts -> parts.humid = other);
  }

  /**
   * This scenario with other arrivals.
   *
   * @param other mites from other colonies
   * @return the changed copy
   */
  public Scenario withArrivals(ArrivalLevel other) {
    return changed(parts -> parts.arrivals = other);
  }

  /**
   * This scenario for another colony of the same place and day.
   *
   * @param colony name of the colony
   * @param facts bees, brood and hive
   * @param counted counts of its mites, at least one
   * @return the changed copy
   */
  public Scenario withColony(String colony, HiveFacts facts, List<Count> counted) {
    return changed(
        parts -> {
          parts.name = colony;
          parts.hive = facts;
          parts.mitesInColony = OptionalDouble.empty();
          parts.counts = counted;
        });
  }

  private Scenario changed(Consumer<Parts> change) {
    Parts parts = new Parts();
    change.accept(parts);
    return new Scenario(
        parts.name,
        about,
        parts.climate,
        parts.humid,
        start,
        parts.end,
        parts.hive,
        parts.mitesInColony,
        parts.counts,
        parts.arrivals,
        feeding,
        done,
        threshold,
        resistance,
        parameters,
        ownMethods,
        parts.plans,
        study,
        allowed,
        organic,
        keeper,
        assumptions);
  }

  /** What copies may change, as it is in this scenario. */
  private final class Parts {
    private String name = Scenario.this.name;
    private Climate climate = Scenario.this.climate;
    private boolean humid = Scenario.this.humid;
    private LocalDate end = Scenario.this.end;
    private HiveFacts hive = Scenario.this.hive;
    private OptionalDouble mitesInColony = Scenario.this.mitesInColony;
    private List<Count> counts = Scenario.this.counts;
    private ArrivalLevel arrivals = Scenario.this.arrivals;
    private List<Plan> plans = Scenario.this.plans;
  }
}
