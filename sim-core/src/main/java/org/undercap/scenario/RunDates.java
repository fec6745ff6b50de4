package org.undercap.scenario;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.undercap.climate.Climate;
import org.undercap.climate.Hemisphere;
import org.undercap.scenario.Assumption.Basis;

/** Works out the days of a run and checks the dates of a scenario against them. */
final class RunDates {

  private final WrittenScenario written;
  private final Problems problems;
  private final Assumptions assumptions;

  RunDates(WrittenScenario written, Problems problems, Assumptions assumptions) {
    this.written = written;
    this.problems = problems;
    this.assumptions = assumptions;
  }

  /** The days of the run, unless they cannot be told. */
  Optional<RunDays> days(Written<LocalDate> start, Optional<Climate> climate) {
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

  /** Checks every date against the days of the run. */
  void check(RunDays run) {
    for (WrittenPlan plan : written.plans()) {
      for (WrittenStep step : plan.steps()) {
        if (checkDate(run, "plans.steps.date", step.first())) {
          checkDate(run, "plans.steps", step.last());
        }
      }
    }
    checkDone(run);
    for (WrittenPeriod period : written.feeding()) {
      checkDate(run.withWeeksBefore(), "feeding.from", period.from());
      checkDate(run.withWeeksBefore(), "feeding.until", period.until());
    }
    written.mites().ifPresent(mites -> checkCounts(run, mites));
  }

  /** What was done may lie before the run. */
  private void checkDone(RunDays run) {
    List<WrittenStep> done = written.done().orElse(List.of());
    InputLimit before = InputLimits.shipped().get("done.before");
    RunDays accepted = new RunDays(run.start().minusDays((long) before.high()), run.end());
    Set<LocalDate> dates = new TreeSet<>();
    for (WrittenStep step : done) {
      if (checkDate(accepted, "done.date", step.first())) {
        checkDate(accepted, "done", step.last());
      }
      step.steps().forEach(each -> dates.add(each.date()));
    }
    if (!dates.isEmpty()) {
      assumptions.add(
          "done",
          Basis.DERIVED,
          "what was done on "
              + String.join(", ", dates.stream().map(LocalDate::toString).toList())
              + " acts in the counts after it and under every plan, and counts as used before");
    }
  }

  private boolean checkDate(RunDays run, String field, Written<LocalDate> date) {
    if (run.contains(date.value())) {
      return true;
    }
    problems.add(
        date.place(),
        field,
        date.text() + " lies outside what is accepted: " + run.start() + " to " + run.end(),
        "the run begins on colony.date and ends on horizon");
    return false;
  }

  private void checkCounts(RunDays run, WrittenMites mites) {
    boolean told = written.done().isPresent();
    String limit = told ? "mites.counts.age.done" : "mites.counts.age";
    int age = (int) InputLimits.shipped().get(limit).high();
    RunDays accepted = new RunDays(run.start().minusDays(age), run.end());
    boolean atStart = told || mites.counts().isEmpty();
    for (WrittenCount count : mites.counts()) {
      LocalDate date = count.date().value();
      if (!accepted.contains(date)) {
        problems.add(
            count.date().place(),
            "mites.counts",
            date + " is outside what is accepted: " + accepted.start() + " to " + accepted.end(),
            told || date.isAfter(run.end())
                ? "the mites of " + run.start() + " cannot be told from a count of another season"
                : "an older count tells something only if the file says what was done since, in"
                    + " done: (as in plans; [] for nothing)");
      }
      if (!date.isAfter(run.start())) {
        atStart = true;
        addAge(date, run.start());
      } else {
        addLater(date, run.start(), told);
      }
    }
    if (!atStart) {
      problems.add(
          mites.counts().get(0).date().place(),
          "mites.counts",
          "no count tells the mites of the first day, " + run.start(),
          "give a count of that day or of the "
              + age
              + " days before, or set colony.date to "
              + mites.counts().get(0).date().value());
    }
  }

  private void addLater(LocalDate date, LocalDate start, boolean told) {
    assumptions.add(
        "mites.counts",
        Basis.DERIVED,
        told
            ? "the count of "
                + date
                + " helps to tell the mites of "
                + start
                + ": the model runs on to it through what was done"
            : "the count of "
                + date
                + " is not used to tell the mites of "
                + start
                + ", since the file does not say what was done until then (done: [] for nothing)");
  }

  private void addAge(LocalDate date, LocalDate start) {
    if (date.isBefore(start)) {
      assumptions.add(
          "mites.counts",
          Basis.DERIVED,
          "the count of "
              + date
              + " is carried on to "
              + start
              + " by the model, "
              + (written.done().isPresent() ? "through what was done" : "without treatment"));
    }
  }
}
