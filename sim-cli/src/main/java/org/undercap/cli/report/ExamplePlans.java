package org.undercap.cli.report;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.undercap.advice.RuledOut;
import org.undercap.climate.SeasonDay;
import org.undercap.ensemble.SeasonDates;
import org.undercap.parameter.ParameterId;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.Course;
import org.undercap.treatment.Method;
import org.undercap.treatment.MethodCatalogue;
import org.undercap.treatment.PlanStep;

/**
 * Plans to begin with in a new scenario file: methods in their usual course with a treatment in
 * winter after it, as far as season, place and honey supers let them be used.
 */
final class ExamplePlans {
  private static final List<String> METHODS =
      List.of("formic-pads", "thymol-gel", "oxalic-sublimation", "amitraz-strips");

  private static final String WINTER = "oxalic-dribble";

  /** More would be much to read. */
  private static final int MOST = 3;

  /** The same where the user named what can be got. */
  private static final int MOST_NAMED = 5;

  /** Days from the egg to the worker bee, 3 as egg, 6 as larva and 12 sealed (days). */
  private static final int WORKER_GROWS = 21;

  /** Days after the honey is off on which treatment begins (days). */
  private static final int DAYS_AFTER_HONEY = 2;

  /** Days before midwinter from which a date for winter is looked for, and how far back (days). */
  private static final List<Integer> BEFORE_MIDWINTER = List.of(10, 20, 30, 40, 50, 60);

  private final Scenario scenario;
  private final LocalDate first;
  private final RuledOut rules;

  /**
   * Prepares to look for plans.
   *
   * @param scenario the facts
   * @param first first day on which a treatment may begin; later where honey supers are on
   */
  ExamplePlans(Scenario scenario, LocalDate first) {
    this.scenario = scenario;
    this.first = first;
    rules = new RuledOut(scenario);
  }

  /** The plans as they stand in a file, at least one line each; empty if nothing can be used. */
  String yaml() {
    LocalDate start =
        scenario
            .supersUntil(Plan.doNothing())
            .map(day -> day.plusDays(DAYS_AFTER_HONEY))
            .filter(day -> day.isAfter(first))
            .orElse(first);
    Optional<Treatment> winter = winter(start);
    Set<Example> examples = new LinkedHashSet<>();
    methods().stream()
        .map(id -> new Treatment(MethodCatalogue.shipped().get(id), course(id, start), start))
        .flatMap(treatment -> example(treatment, winter).stream())
        .limit(scenario.allowed().isEmpty() ? MOST : MOST_NAMED)
        .forEach(examples::add);
    winter.map(treatment -> new Example(List.of(treatment))).ifPresent(examples::add);
    StringBuilder lines = new StringBuilder();
    examples.forEach(example -> lines.append(example.yaml()));
    return lines.toString();
  }

  /** With a treatment in winter after it, where both can be used; else alone. */
  private Optional<Example> example(Treatment autumn, Optional<Treatment> winter) {
    long gap = (long) scenario.parameters().value(ParameterId.ADVICE_COURSE_GAP);
    return Stream.concat(
            winter.stream()
                .filter(later -> later.start().isAfter(autumn.until().plusDays(gap)))
                .map(later -> new Example(List.of(autumn, later))),
            Stream.of(new Example(List.of(autumn))))
        .filter(this::canBeUsed)
        .findFirst();
  }

  /**
   * Methods to try: those that the user can get, if the file names them, the first of each
   * substance before the others.
   */
  private List<String> methods() {
    List<Method> allowed =
        scenario.allowed().stream().filter(method -> !method.id().equals(WINTER)).toList();
    if (scenario.allowed().isEmpty()) {
      return METHODS;
    }
    Set<String> substances = new HashSet<>();
    List<Method> firsts = allowed.stream().filter(m -> substances.add(m.substance())).toList();
    return Stream.concat(firsts.stream(), allowed.stream().filter(m -> !firsts.contains(m)))
        .map(Method::id)
        .toList();
  }

  /**
   * Whether there is brood on a day: some is seen now, and later if eggs were laid within the three
   * weeks in which a worker grows up.
   */
  private boolean hasBrood(LocalDate day) {
    double few =
        scenario.parameters().value(ParameterId.WINTER_BEES_LAYING_SHARE)
            * scenario.climate().eggs().max();
    boolean soon = day.isBefore(scenario.start().plusDays(WORKER_GROWS));
    return soon
        ? scenario.hive().broodCells() > 0
        : scenario.climate().potentialEggs(SeasonDay.of(day.minusDays(WORKER_GROWS))) >= few;
  }

  private Course course(String id, LocalDate start) {
    Method method = MethodCatalogue.shipped().get(id);
    return hasBrood(start) ? method.usual().withBrood() : method.usual().course();
  }

  private Optional<Treatment> winter(LocalDate start) {
    Method method = MethodCatalogue.shipped().get(WINTER);
    Optional<LocalDate> midwinter =
        SeasonDates.of(scenario.climate(), scenario.start(), scenario.end(), scenario.parameters())
            .midwinter();
    return Stream.concat(
            BEFORE_MIDWINTER.stream()
                .flatMap(days -> midwinter.map(d -> d.minusDays(days)).stream()),
            Stream.of(start))
        .filter(date -> !date.isBefore(start))
        .map(date -> new Treatment(method, method.usual().course(), date))
        .filter(treatment -> canBeUsed(new Example(List.of(treatment))))
        .findFirst();
  }

  private boolean canBeUsed(Example example) {
    List<PlanStep> steps = example.steps();
    return steps.stream().noneMatch(step -> step.date().isAfter(scenario.end()))
        && rules.reasons(new Plan(example.name(), steps)).isEmpty();
  }

  /** A usual course that begins on a day. */
  private record Treatment(Method method, Course course, LocalDate start) {
    String name() {
      return method.name()
          + (course.times() == 1
              ? method.id().equals(WINTER) ? " on " + DateWords.brief(start) : ""
              : " " + PlanWords.times(course.times()));
    }

    List<PlanStep> steps() {
      return IntStream.range(0, course.times())
          .<PlanStep>mapToObj(
              i ->
                  new PlanStep.Application(
                      start.plusDays((long) i * course.everyDays()), method, 1))
          .toList();
    }

    LocalDate until() {
      return steps().get(course.times() - 1).until();
    }

    String yaml() {
      String repeated =
          course.times() == 1
              ? ""
              : ", times: " + course.times() + ", every: " + course.everyDays() + " days";
      return "      - {date: " + start + ", treatment: " + method.id() + repeated + "}\n";
    }
  }

  /** Treatments one after the other. */
  private record Example(List<Treatment> treatments) {
    String name() {
      return PlanWords.capital(
          treatments.stream()
              .map(Treatment::name)
              .collect(Collectors.joining(", then "))
              .replace(", then oxalic acid ", ", then "));
    }

    List<PlanStep> steps() {
      return treatments.stream().flatMap(treatment -> treatment.steps().stream()).toList();
    }

    String yaml() {
      return "  - name: "
          + name()
          + "\n    steps:\n"
          + treatments.stream().map(Treatment::yaml).collect(Collectors.joining());
    }
  }
}
