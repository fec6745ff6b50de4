package org.undercap.scenario;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.undercap.climate.Climate;
import org.undercap.climate.Hemisphere;
import org.undercap.hive.ArrivalCatalogue;
import org.undercap.hive.ArrivalLevel;
import org.undercap.monitoring.Count;
import org.undercap.parameter.ParameterId;
import org.undercap.scenario.Assumption.Basis;
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
    Optional<RunDays> days = date.flatMap(start -> days(start, climate));
    days.ifPresent(run -> site.ifPresent(place -> place.checkDays(run.start, run.end)));
    days.ifPresent(this::checkDates);
    boolean humid = site.isPresent() && site.get().humid();
    ArrivalLevel arrivals = arrivals();
    addRemaining();
    if (!problems.isEmpty()) {
      return Reading.failed(problems);
    }
    RunDays run = days.orElseThrow();
    return Reading.of(
        new Scenario(
            written.name().orElseThrow().value(),
            written.about().map(Written::value).orElse(""),
            climate.orElseThrow(),
            humid,
            run.start,
            run.end,
            hive.orElseThrow(),
            mitesInColony(),
            counts(),
            arrivals,
            feeding(),
            written.threshold(),
            written.resistance(),
            written.parameters(),
            methods(written.methods()),
            plans(),
            written.study(),
            methods(written.allowed()),
            written.organic(),
            assumptions.all()));
  }

  private record RunDays(LocalDate start, LocalDate end) {
    /** Syrup that was fed shortly before the run still acts in it. */
    RunDays withWeeksBefore() {
      InputLimit before = InputLimits.shipped().get("feeding.before");
      return new RunDays(start.minusDays((long) before.high()), end);
    }

    boolean contains(LocalDate date) {
      return !date.isBefore(start) && !date.isAfter(end);
    }
  }

  private Optional<RunDays> days(Written<LocalDate> start, Optional<Climate> climate) {
    if (written.horizon().isPresent()) {
      return checkedEnd(start.value(), written.horizon().get());
    }
    return climate.map(
        place -> {
          LocalDate end = springAfter(start.value(), place.hemisphere());
          assumptions.add("horizon", Basis.DEFAULT, "the run ends in spring, on " + end);
          return new RunDays(start.value(), end);
        });
  }

  private static LocalDate springAfter(LocalDate start, Hemisphere hemisphere) {
    Month month = hemisphere == Hemisphere.NORTH ? Month.APRIL : Month.OCTOBER;
    LocalDate spring = LocalDate.of(start.getYear(), month, 1);
    return spring.isAfter(start) ? spring : spring.plusYears(1);
  }

  private Optional<RunDays> checkedEnd(LocalDate start, Written<Horizon> horizon) {
    LocalDate end = horizon.value().end(start);
    long days = end.toEpochDay() - start.toEpochDay();
    InputLimit limit = InputLimits.shipped().get("horizon");
    if (!(days >= limit.low() && days <= limit.high())) {
      problems.add(
          horizon.place(),
          "horizon",
          end
              + " is outside what is accepted: "
              + start.plusDays((long) limit.low())
              + " to "
              + start.plusDays((long) limit.high()),
          "the run begins on colony.date, " + start);
      return Optional.empty();
    }
    return Optional.of(new RunDays(start, end));
  }

  private void checkDates(RunDays run) {
    for (WrittenPlan plan : written.plans()) {
      for (WrittenStep step : plan.steps()) {
        if (checkDate(run, "plans.steps.date", step.first())) {
          checkDate(run, "plans.steps", step.last());
        }
      }
    }
    for (WrittenPeriod period : written.feeding()) {
      checkDate(run.withWeeksBefore(), "feeding.from", period.from());
      checkDate(run.withWeeksBefore(), "feeding.until", period.until());
    }
    written.mites().ifPresent(mites -> checkCounts(run, mites));
  }

  private boolean checkDate(RunDays run, String field, Written<LocalDate> date) {
    if (run.contains(date.value())) {
      return true;
    }
    problems.add(
        date.place(),
        field,
        date.text() + " lies outside what is accepted: " + run.start + " to " + run.end,
        "the run begins on colony.date and ends on horizon");
    return false;
  }

  private void checkCounts(RunDays run, WrittenMites mites) {
    int age = (int) InputLimits.shipped().get("mites.counts.age").high();
    RunDays accepted = new RunDays(run.start.minusDays(age), run.end);
    boolean atStart = mites.counts().isEmpty();
    for (WrittenCount count : mites.counts()) {
      LocalDate date = count.date().value();
      if (!accepted.contains(date)) {
        problems.add(
            count.date().place(),
            "mites.counts",
            date + " is outside what is accepted: " + accepted.start + " to " + accepted.end,
            "the mites of " + run.start + " cannot be told from a count of another season");
      }
      if (!date.isAfter(run.start)) {
        atStart = true;
        addAge(date, run.start);
      } else {
        assumptions.add(
            "mites.counts",
            Basis.DERIVED,
            "the count of " + date + " is not used to tell the mites of " + run.start);
      }
    }
    if (!atStart) {
      problems.add(
          mites.counts().get(0).date().place(),
          "mites.counts",
          "no count tells the mites of the first day, " + run.start,
          "give a count of that day or of the "
              + age
              + " days before, or set colony.date to "
              + mites.counts().get(0).date().value());
    }
  }

  private void addAge(LocalDate date, LocalDate start) {
    if (date.isBefore(start)) {
      assumptions.add(
          "mites.counts", Basis.DERIVED, "the count of " + date + " is taken as one of " + start);
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
    if (written.threshold().isEmpty()) {
      assumptions.add("threshold", Basis.DEFAULT, "no limit of infestation was chosen");
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
          "parameter " + id.id() + " has the value of this file, not that of its source");
    }
  }

  private OptionalDouble mitesInColony() {
    Optional<Written<Double>> known = written.mites().orElseThrow().inColony();
    return known.isPresent() ? OptionalDouble.of(known.get().value()) : OptionalDouble.empty();
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

  private static List<Method> methods(List<Written<Method>> methods) {
    return methods.stream().map(Written::value).toList();
  }

  private List<Plan> plans() {
    List<Plan> plans = new ArrayList<>();
    plans.add(Plan.doNothing());
    for (WrittenPlan plan : written.plans()) {
      Stream<PlanStep> steps = plan.steps().stream().flatMap(step -> step.steps().stream());
      plans.add(
          new Plan(
              plan.name().value(), steps.sorted(Comparator.comparing(PlanStep::date)).toList()));
    }
    return plans;
  }
}
