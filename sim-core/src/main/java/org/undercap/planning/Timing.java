package org.undercap.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import org.undercap.advice.RuledOut;
import org.undercap.ensemble.Ensemble;
import org.undercap.ensemble.EnsembleSettings;
import org.undercap.ensemble.OutcomeTable;
import org.undercap.ensemble.StartMites;
import org.undercap.ensemble.Trials;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.Course;
import org.undercap.treatment.Method;
import org.undercap.treatment.PlanStep;

/**
 * When to begin: the usual courses of some methods, each begun on one date after another, all on
 * the same members.
 *
 * @param scope the run, and how the mites left are told
 * @param settings members and seed
 * @param mites middle value of all mites on the first day (mites)
 * @param untreated outcomes without treatment
 * @param courses one for each method, or two where its course is longer while there is brood
 * @param broodless when untreated colonies have no brood
 * @param inTime which start date still counts as in time
 */
public record Timing(
    TrialScope scope,
    EnsembleSettings settings,
    double mites,
    OutcomeTable untreated,
    List<CourseTiming> courses,
    BroodlessTime broodless,
    InTime inTime) {
  /**
   * Copies the list.
   *
   * @param scope the run
   * @param settings members and seed
   * @param mites middle value of all mites on the first day (mites)
   * @param untreated outcomes without treatment
   * @param courses the courses
   * @param broodless when untreated colonies have no brood
   * @param inTime which start date still counts as in time
   */
  public Timing {
    courses = List.copyOf(courses);
  }

  /**
   * Tries start dates.
   *
   * @param scenario the scenario; its own plans are not looked at
   * @param mites the mites that it begins with
   * @param methods the methods, at least one
   * @param dates start dates, all within the trial run
   * @param settings members, seed and threads
   * @return the timing of each course
   * @throws IllegalArgumentException if there is no method, a start lies outside the run, or no
   *     colony of this season and place can be scaled to the facts
   */
  public static Timing of(
      Scenario scenario,
      StartMites mites,
      List<Method> methods,
      StartDates dates,
      EnsembleSettings settings) {
    return of(scenario, mites, methods, dates, settings, starts -> {});
  }

  /**
   * Tries start dates and tells how far it is.
   *
   * @param scenario the scenario
   * @param mites the mites that it begins with
   * @param methods the treatments, at least one
   * @param dates start dates
   * @param settings members, seed and threads
   * @param progress told the number of starts tried since it was told before
   * @return the timing of each course
   * @throws IllegalArgumentException if there is no method, a start lies outside the run, or no
   *     colony of this season and place can be scaled to the facts
   */
  public static Timing of(
      Scenario scenario,
      StartMites mites,
      List<Method> methods,
      StartDates dates,
      EnsembleSettings settings,
      IntConsumer progress) {
    TrialScope scope = TrialScope.of(scenario);
    if (methods.isEmpty()) {
      throw new IllegalArgumentException("timing needs at least one method");
    }
    check(scenario, dates);
    InTime inTime = InTime.of(scenario.parameters());
    Trials trials = new Trials(scope.scenario(), mites.belief(), settings);
    OutcomeTable untreated = trials.run(List.of(Plan.doNothing())).get(0);
    List<CourseTiming> courses = new ArrayList<>();
    for (Method method : methods) {
      for (Course course : method.usual().courses()) {
        List<StartOutcome> starts = starts(scope.scenario(), trials, method, course, dates);
        courses.add(CourseTiming.of(method, course, starts, untreated, inTime));
        progress.accept(starts.size());
      }
    }
    BroodlessTime broodless =
        BroodlessTime.of(scenario, new Ensemble(scenario, mites.belief(), settings));
    return new Timing(scope, settings, mites.median(), untreated, courses, broodless, inTime);
  }

  /**
   * Checks start dates.
   *
   * @param scenario the scenario
   * @param dates start dates
   * @throws IllegalArgumentException if one lies outside the trial run
   */
  public static void check(Scenario scenario, StartDates dates) {
    Scenario run = TrialScope.of(scenario).scenario();
    if (dates.from().isBefore(run.start()) || dates.until().isAfter(run.end())) {
      throw new IllegalArgumentException(
          "start dates "
              + dates.from()
              + " to "
              + dates.until()
              + " must lie in "
              + run.start()
              + " to "
              + run.end());
    }
  }

  private static List<StartOutcome> starts(
      Scenario scenario, Trials trials, Method method, Course course, StartDates dates) {
    RuledOut rules = new RuledOut(scenario);
    List<LocalDate> days = dates.all();
    List<Plan> plans =
        days.stream()
            .map(day -> new Plan(course.words(method) + " from " + day, course.of(method, day)))
            .toList();
    List<OutcomeTable> outcomes = trials.run(plans);
    List<StartOutcome> starts = new ArrayList<>();
    for (int i = 0; i < days.size(); i++) {
      Plan plan = plans.get(i);
      starts.add(
          new StartOutcome(
              days.get(i), plan, outcomes.get(i), shareInBand(rules, plan), rules.reasons(plan)));
    }
    return starts;
  }

  private static double shareInBand(RuledOut rules, Plan plan) {
    return plan.steps().stream()
        .mapToDouble(step -> rules.shareInBand((PlanStep.Application) step))
        .average()
        .orElse(1);
  }

  /**
   * The plans of all starts, for cautions.
   *
   * @return one for each course and date
   */
  public List<Plan> plans() {
    return courses.stream()
        .flatMap(course -> course.starts().stream())
        .map(StartOutcome::plan)
        .toList();
  }
}
