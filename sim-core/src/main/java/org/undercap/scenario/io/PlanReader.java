package org.undercap.scenario.io;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.undercap.scenario.BadValueException;
import org.undercap.scenario.Lookup;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Quantities;
import org.undercap.scenario.Written;
import org.undercap.scenario.WrittenPlan;
import org.undercap.scenario.WrittenStep;
import org.undercap.treatment.Method;
import org.undercap.treatment.PlanStep;
import org.undercap.treatment.PlanStep.Application;
import org.undercap.treatment.PlanStep.BroodRemoval;
import org.undercap.treatment.PlanStep.DroneCombRemoval;
import org.undercap.treatment.PlanStep.DroneFrame;
import org.undercap.treatment.PlanStep.LateFeeding;
import org.undercap.treatment.PlanStep.LayingStop;
import org.undercap.treatment.PlanStep.ShookSwarm;
import org.undercap.treatment.PlanStep.Split;

/** Reads the plans of a scenario. */
final class PlanReader {

  private static final int LONGEST_NAME = 80;
  private static final List<String> MEASURES =
      List.of(
          "queen-caging",
          "requeening-gap",
          "drone-comb-removal",
          "brood-removal",
          "shook-swarm",
          "split",
          "late-feeding");

  private static final String[] STEP_KEYS = {
    "dose",
    "times",
    "every",
    "days",
    "share",
    "drone-frame",
    "bees-leaving",
    "brood-leaving",
    "queen",
    "days-without-laying"
  };

  private final MethodReader methods;
  private final boolean study;

  /**
   * Prepares to read plans.
   *
   * @param methods finds the treatments
   * @param study whether doses other than the full one are accepted
   */
  PlanReader(MethodReader methods, boolean study) {
    this.methods = methods;
    this.study = study;
  }

  /** The plans of a list. */
  List<WrittenPlan> read(List<FieldReader> plans) {
    List<WrittenPlan> written = new ArrayList<>();
    for (FieldReader plan : plans) {
      plan.require("name", "steps");
      Optional<Written<String>> name = plan.value("name", text -> newName(text, written));
      List<WrittenStep> steps = steps(plan.maps("steps"));
      Optional<Written<LocalDate>> supers = plan.value("supers-until", Quantities::date);
      plan.done();
      name.ifPresent(given -> written.add(new WrittenPlan(given, steps, supers)));
    }
    return written;
  }

  /** The steps of a list. */
  List<WrittenStep> steps(List<FieldReader> steps) {
    return steps.stream().flatMap(step -> step(step).stream()).toList();
  }

  private static String newName(String text, List<WrittenPlan> before) throws BadValueException {
    String name = Texts.text(text, LONGEST_NAME);
    if (name.equalsIgnoreCase(Plan.DO_NOTHING)) {
      throw new BadValueException(
          Quantities.quote(name) + " is added by itself", "leave this plan out");
    }
    if (before.stream().anyMatch(plan -> plan.name().value().equalsIgnoreCase(name))) {
      throw new BadValueException(
          "there are two plans named " + Quantities.quote(name), "give each a name of its own");
    }
    return name;
  }

  private List<WrittenStep> step(FieldReader step) {
    step.require("date");
    Optional<Written<LocalDate>> date = step.value("date", Quantities::date);
    Optional<Written<Method>> treatment = step.value("treatment", methods::find);
    Optional<Written<String>> measure = step.value("measure", PlanReader::measure);
    if (step.has("treatment") == step.has("measure")) {
      step.accept(STEP_KEYS);
      step.done();
      step.refuse(
          "needs either treatment or measure",
          "as in treatment: thymol-gel, or measure: queen-caging");
      return List.of();
    }
    if (treatment.isEmpty() && measure.isEmpty()) {
      return List.of();
    }
    Optional<Function<LocalDate, PlanStep>> action =
        treatment.isPresent()
            ? application(step, treatment.get().value())
            : measure(step, measure.get().value());
    List<WrittenStep> written = new ArrayList<>();
    if (date.isPresent() && action.isPresent()) {
      written.add(repeated(step, date.get(), action.get()));
    } else {
      repetitions(step);
    }
    if (measure.isPresent() && measure.get().value().equals("drone-comb-removal")) {
      step.map("drone-frame").flatMap(PlanReader::droneFrame).ifPresent(written::add);
    }
    step.done();
    return written;
  }

  private static WrittenStep repeated(
      FieldReader step, Written<LocalDate> first, Function<LocalDate, PlanStep> action) {
    Repetitions repetitions = repetitions(step);
    List<PlanStep> steps = new ArrayList<>();
    LocalDate date = first.value();
    for (int i = 0; i < repetitions.times; i++) {
      date = first.value().plusDays((long) i * repetitions.every);
      steps.add(action.apply(date));
    }
    Written<LocalDate> last =
        repetitions.times == 1
            ? first
            : new Written<>(date, "the last repetition on " + date, step.placeOf("times"));
    return new WrittenStep(first, last, steps);
  }

  private static Repetitions repetitions(FieldReader step) {
    Optional<Written<Integer>> times = step.whole("times", Quantities::times);
    Optional<Written<Integer>> every = step.whole("every", Quantities::days);
    if (step.has("every") && !step.has("times")) {
      step.refuse("every", "needs times", "say how often, as in times: 3");
    } else if (step.has("times") && !step.has("every") && times.map(Written::value).orElse(1) > 1) {
      step.refuse("times", "needs every", "say after how many days, as in every: 7 days");
    }
    return times.isPresent() && every.isPresent()
        ? new Repetitions(times.get().value(), every.get().value())
        : new Repetitions(1, 1);
  }

  private record Repetitions(int times, int every) {}

  private Optional<Function<LocalDate, PlanStep>> application(FieldReader step, Method method) {
    Optional<Written<Double>> dose = step.number("dose");
    if (dose.isPresent() && dose.get().value() != 1 && !study) {
      step.refuse(
          "dose",
          Quantities.format(dose.get().value()) + " times the full amount is not on any label",
          "write study: true at the top of the file; the results are then marked as a study run");
    }
    double amount = dose.map(Written::value).orElse(1.0);
    return step.has("dose") && dose.isEmpty()
        ? Optional.empty()
        : Optional.of(date -> new Application(date, method, amount));
  }

  private static Optional<Function<LocalDate, PlanStep>> measure(FieldReader step, String measure) {
    return switch (measure) {
      case "queen-caging" -> days(step, (date, days) -> new LayingStop(date, days, true));
      case "requeening-gap" -> days(step, (date, days) -> new LayingStop(date, days, false));
      case "late-feeding" ->
          days(step, (date, days) -> new LateFeeding(date, date.plusDays(days - 1L)));
      case "drone-comb-removal" -> share(step, DroneCombRemoval::new);
      case "brood-removal" -> share(step, BroodRemoval::new);
      case "shook-swarm" -> Optional.of(ShookSwarm::new);
      default -> split(step);
    };
  }

  @FunctionalInterface
  private interface Dated<T> {
    PlanStep on(LocalDate date, T value);
  }

  private static Optional<Function<LocalDate, PlanStep>> days(
      FieldReader step, Dated<Integer> action) {
    step.require("days");
    return step.whole("days", Quantities::days).map(days -> date -> action.on(date, days.value()));
  }

  private static Optional<Function<LocalDate, PlanStep>> share(
      FieldReader step, Dated<Double> action) {
    step.require("share");
    return step.value("share", Quantities::share)
        .map(share -> date -> action.on(date, share.value()));
  }

  private static Optional<Function<LocalDate, PlanStep>> split(FieldReader step) {
    step.require("bees-leaving", "brood-leaving", "queen");
    Optional<Written<Double>> bees = step.value("bees-leaving", Quantities::share);
    Optional<Written<Double>> brood = step.value("brood-leaving", Quantities::share);
    Optional<Written<Boolean>> leaves = step.choice("queen", "leaves", "stays");
    Optional<Written<Integer>> gap = Optional.empty();
    if (leaves.isPresent() && leaves.get().value()) {
      step.require("days-without-laying");
      gap = step.whole("days-without-laying", Quantities::days);
    }
    if (bees.isEmpty() || brood.isEmpty() || leaves.isEmpty()) {
      return Optional.empty();
    }
    int days = gap.map(Written::value).orElse(0);
    return Optional.of(date -> new Split(date, bees.get().value(), brood.get().value(), days));
  }

  private static Optional<WrittenStep> droneFrame(FieldReader frame) {
    frame.require("from", "until", "factor");
    Optional<Written<LocalDate>> from = frame.value("from", Quantities::date);
    Optional<Written<LocalDate>> until = frame.value("until", Quantities::date);
    Optional<Written<Double>> factor = frame.number("factor");
    frame.done();
    if (from.isEmpty() || until.isEmpty() || factor.isEmpty()) {
      return Optional.empty();
    }
    double amount = factor.get().value();
    return PeriodReader.ordered(frame, from.get(), until.get())
        .map(
            span -> {
              PlanStep step = new DroneFrame(span.from().value(), span.until().value(), amount);
              return new WrittenStep(span.from(), span.until(), List.of(step));
            });
  }

  private static String measure(String text) throws BadValueException {
    return Lookup.find(
        "measure", text, id -> MEASURES.stream().filter(id::equals).findFirst(), MEASURES);
  }
}
