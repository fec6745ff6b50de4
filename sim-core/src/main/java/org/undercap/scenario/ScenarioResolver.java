package org.undercap.scenario;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.undercap.climate.Climate;
import org.undercap.climate.SeasonDay;
import org.undercap.hive.ArrivalCatalogue;
import org.undercap.hive.ArrivalLevel;
import org.undercap.model.ModelParameters;
import org.undercap.monitoring.Count;
import org.undercap.monitoring.Wash;
import org.undercap.parameter.ParameterId;
import org.undercap.scenario.Assumption.Basis;
import org.undercap.simulation.StartShape;
import org.undercap.treatment.Method;
import org.undercap.treatment.PlanStep;

/**
 * Makes a scenario of what a user wrote: places become climates, frames become bees, and every date
 * is checked against the run. What had to be assumed is listed.
 */
public final class ScenarioResolver {

  private static final String USUAL_ARRIVALS = "low";

  private final WrittenScenario written;
  private final Problems problems;
  private final Assumptions assumptions = new Assumptions();

  private ScenarioResolver(WrittenScenario written, Problems problems) {
    this.written = written;
    this.problems = problems;
  }

  /**
   * Works out what a written scenario means.
   *
   * @param written what the user wrote, as far as it could be read
   * @param problems what was found so far; new problems are added
   * @return the scenario, or all problems, old and new
   */
  public static Reading<Scenario> resolve(WrittenScenario written, Problems problems) {
    return new ScenarioResolver(written, problems).resolve();
  }

  private Reading<Scenario> resolve() {
    Optional<SiteResolver> site =
        written.site().map(place -> new SiteResolver(place, problems, assumptions));
    Optional<Climate> climate = site.flatMap(SiteResolver::climate);
    Optional<HiveFacts> hive =
        written
            .colony()
            .map(it -> new ColonyResolver(it, written.parameters(), problems, assumptions))
            .flatMap(ColonyResolver::facts);
    Optional<Written<LocalDate>> date = written.colony().flatMap(WrittenColony::date);
    RunDates dates = new RunDates(written, problems, assumptions);
    Optional<RunDays> days = date.flatMap(start -> dates.days(start, climate));
    days.ifPresent(run -> site.ifPresent(place -> place.checkDays(run.start(), run.end())));
    days.ifPresent(dates::check);
    climate.ifPresent(place -> hive.ifPresent(facts -> checkSeason(place, facts)));
    boolean humid = site.isPresent() && site.get().humid();
    ArrivalLevel arrivals = arrivals();
    addRemaining();
    if (!problems.isEmpty()) {
      return Reading.failed(problems);
    }
    RunDays run = days.orElseThrow();
    checkLife(climate.orElseThrow(), run.start());
    if (!problems.isEmpty()) {
      return Reading.failed(problems);
    }
    return Reading.of(
        new Scenario(
            written.name().orElseThrow().value(),
            written.about().map(Written::value).orElse(""),
            climate.orElseThrow(),
            humid,
            run.start(),
            run.end(),
            hive.orElseThrow(),
            mitesInColony(),
            counts(),
            arrivals,
            feeding(),
            done(),
            written.threshold(),
            written.resistance(),
            written.parameters(),
            methods(written.methods()),
            plans(),
            written.study(),
            methods(written.allowed()),
            written.organic(),
            keeper(hive.orElseThrow()),
            assumptions.all()));
  }

  /** A colony of this place and season must have brood if the user saw some. */
  private void checkSeason(Climate climate, HiveFacts hive) {
    WrittenColony colony = written.colony().orElseThrow();
    if (hive.broodCells() == 0 || colony.date().isEmpty()) {
      return;
    }
    LocalDate date = colony.date().get().value();
    double[] ages = written.parameters().values(ParameterId.BROOD_DRONE_DAYS);
    int oldest = (int) Arrays.stream(ages).sum();
    for (int age = 0; age <= oldest; age++) {
      if (climate.potentialEggs(SeasonDay.of(date.minusDays(age))) > 0) {
        return;
      }
    }
    problems.add(
        colony.brood().orElseThrow().place(),
        "colony.brood",
        "in climate " + climate.id() + " queens do not lay in the weeks before " + date,
        "choose another climate, or give your own site.eggs-per-day");
  }

  /** Every run begins with a healthy colony of the place, so it must be able to live there. */
  private void checkLife(Climate climate, LocalDate start) {
    try {
      StartShape.at(climate, SeasonDay.of(start), ModelParameters.of(written.parameters()));
    } catch (IllegalArgumentException e) {
      problems.add(
          written.site().orElseThrow().place(),
          "site",
          e.getMessage(),
          "raise site.eggs-per-day, choose another climate, or look at parameters");
    }
  }

  private ArrivalLevel arrivals() {
    if (written.arrivals().isPresent()) {
      return written.arrivals().get().value();
    }
    ArrivalLevel usual = ArrivalCatalogue.shipped().get(USUAL_ARRIVALS);
    assumptions.add(
        "arrivals", Basis.DEFAULT, "mites arrive as where there are " + usual.description());
    return usual;
  }

  private void addRemaining() {
    written
        .mites()
        .ifPresent(
            mites ->
                mites.counts().stream()
                    .flatMap(count -> CountDoubts.of(count.count()).stream())
                    .forEach(words -> assumptions.add("mites.counts", Basis.DERIVED, words)));
    if (written.threshold().isEmpty()) {
      double usual = written.parameters().value(ParameterId.THRESHOLD_USUAL);
      assumptions.add(
          "threshold",
          Basis.DEFAULT,
          "the limit at which to act is " + Quantities.format(usual) + " mites on 100 bees");
    }
    if (written.limits().cost().isPresent()) {
      plans().stream()
          .flatMap(plan -> plan.steps().stream())
          .filter(PlanStep.Application.class::isInstance)
          .map(step -> ((PlanStep.Application) step).method().id())
          .filter(id -> !written.costs().containsKey(id))
          .distinct()
          .forEach(
              id ->
                  assumptions.add(
                      "limits.cost",
                      Basis.DEFAULT,
                      "the cost of " + id + " is not known, so plans with it keep to the limit"));
    }
    if (written.resistance().isEmpty()) {
      assumptions.add("resistance", Basis.DEFAULT, "no mites resist the treatments");
    }
    for (Written<Method> method : written.methods()) {
      assumptions.add(
          "methods",
          Basis.CHANGED,
          "treatment " + method.value().id() + " works as this file says, not as published");
    }
    for (ParameterId id : written.parameters().changed().keySet()) {
      assumptions.add(
          "parameters",
          Basis.CHANGED,
          "parameter " + id.id() + " has a value of the user, not that of its source");
    }
  }

  private OptionalDouble mitesInColony() {
    Optional<Written<Double>> known = written.mites().orElseThrow().inColony();
    return known.isPresent() ? OptionalDouble.of(known.get().value()) : OptionalDouble.empty();
  }

  private KeeperFacts keeper(HiveFacts hive) {
    Optional<LocalDate> supers = written.colony().orElseThrow().supersUntil().map(Written::value);
    return new KeeperFacts(
        supers, written.treatedBefore(), written.costs(), written.limits(), untested(hive));
  }

  /** What lies outside the range in which the model was tested. */
  private List<String> untested(HiveFacts hive) {
    List<String> untested = new ArrayList<>();
    double tropics = InputLimits.shipped().get("site.latitude.tropics").high();
    written
        .site()
        .flatMap(WrittenSite::latitude)
        .map(Written::value)
        .filter(degrees -> Math.abs(degrees) < tropics)
        .ifPresent(
            degrees ->
                untested.add(
                    "colonies in the tropics (latitude "
                        + Quantities.format(degrees)
                        + " degrees)"));
    if (written.colony().flatMap(WrittenColony::africanized).map(Written::value).orElse(false)) {
      untested.add("Africanized bees");
    }
    double fewest = InputLimits.shipped().get("colony.bees.tested").low();
    if (hive.bees() < fewest) {
      untested.add("colonies of fewer than " + Quantities.format(fewest) + " bees");
    }
    untested.addAll(smallSamples());
    return untested;
  }

  private List<String> smallSamples() {
    double least = InputLimits.shipped().get("mites.counts.wash.bees.tested").low();
    List<Count> counts = counts();
    boolean onlySmall =
        !counts.isEmpty()
            && counts.stream().allMatch(count -> count instanceof Wash wash && wash.bees() < least);
    return onlySmall
        ? List.of("samples of fewer than " + Quantities.format(least) + " bees and no other count")
        : List.of();
  }

  private List<Count> counts() {
    return written.mites().orElseThrow().counts().stream()
        .map(WrittenCount::count)
        .sorted(Comparator.comparing(Count::date))
        .toList();
  }

  private List<PlanStep.LateFeeding> feeding() {
    return written.feeding().stream()
        .map(it -> new PlanStep.LateFeeding(it.from().value(), it.until().value()))
        .toList();
  }

  private History done() {
    return written.done().map(steps -> new History(true, inOrder(steps))).orElse(History.UNKNOWN);
  }

  private static List<PlanStep> inOrder(List<WrittenStep> written) {
    Stream<PlanStep> steps = written.stream().flatMap(step -> step.steps().stream());
    return steps.sorted(Comparator.comparing(PlanStep::date)).toList();
  }

  private static List<Method> methods(List<Written<Method>> methods) {
    return methods.stream().map(Written::value).toList();
  }

  private List<Plan> plans() {
    List<Plan> plans = new ArrayList<>();
    plans.add(Plan.doNothing());
    for (WrittenPlan plan : written.plans()) {
      plans.add(
          new Plan(
              plan.name().value(), inOrder(plan.steps()), plan.supersUntil().map(Written::value)));
    }
    return plans;
  }
}
