package org.undercap.cli.command;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.undercap.cli.option.Question;
import org.undercap.cli.output.TextPage;
import org.undercap.cli.output.UsageException;
import org.undercap.cli.report.NewScenario;
import org.undercap.scenario.Assumption;
import org.undercap.scenario.BadValueException;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.Method;
import org.undercap.treatment.PlanStep;

/** When the plans of a new scenario may begin, and what is told when its file is written. */
final class NewPlans {
  /** Days until a treatment is at hand (days; common practice). */
  private static final int DAYS_TO_FETCH_IT = 2;

  private NewPlans() {}

  /** The first day on which a plan may treat: after the facts and, unless all is past, from now. */
  static LocalDate first(Scenario facts, LocalDate today, Optional<LocalDate> treatFrom) {
    if (treatFrom.isPresent()) {
      LocalDate day = treatFrom.get();
      try {
        checkFirst(facts, day);
      } catch (BadValueException e) {
        throw new UsageException("--treat-from: " + e.getMessage());
      }
      return day;
    }
    boolean past = !facts.end().isAfter(today.plusDays(DAYS_TO_FETCH_IT));
    LocalDate now = past || today.isBefore(facts.start()) ? facts.start() : today;
    return now.plusDays(DAYS_TO_FETCH_IT);
  }

  /** A treatment must begin in the run. */
  static void checkFirst(Scenario facts, LocalDate day) throws BadValueException {
    if (day.isBefore(facts.start()) || day.isAfter(facts.end())) {
      throw new BadValueException(
          day + " must lie in the run, " + facts.start() + " to " + facts.end(), "");
    }
  }

  /** Whether the facts are old and the season goes on, so that either day may be meant. */
  static boolean mayTreatThenOrNow(Scenario facts, LocalDate today) {
    return ChronoUnit.DAYS.between(facts.start(), today) > NewScenario.OLD_FACTS
        && facts.end().isAfter(today);
  }

  /** What a new file holds and what to do with it. */
  static String summary(
      Scenario scenario, Path file, LocalDate today, LocalDate first, List<Question> invented) {
    StringBuilder text = new StringBuilder();
    if (!invented.isEmpty()) {
      line(
          text,
          "an EXAMPLE, not your colony: "
              + NewScenario.words(invented)
              + " are invented; put your own into the file");
    }
    note(scenario, today, first).ifPresent(note -> line(text, note));
    line(text, "plans in it, to be changed as you like:");
    scenario.plans().stream().map(Plan::name).forEach(plan -> line(text, "  " + plan));
    if (scenario.plans().size() == 1) {
      line(
          text,
          "  (nothing that you may use suits the weather or the supers: see undercap methods)");
    }
    left(scenario).ifPresent(words -> line(text, words));
    line(text, "taken for granted, since the file does not say it:");
    for (Assumption assumption : scenario.assumptions()) {
      text.append(TextPage.indented(assumption.field() + ": " + assumption.text(), 2));
    }
    line(text, "next, type: undercap compare " + quoted(file));
    return text.toString();
  }

  private static Optional<String> note(Scenario scenario, LocalDate today, LocalDate first) {
    if (scenario.start().isAfter(today)) {
      return Optional.of("note: " + scenario.start() + " lies in the future");
    }
    long old = ChronoUnit.DAYS.between(scenario.start(), today);
    return old <= NewScenario.OLD_FACTS
        ? Optional.empty()
        : Optional.of(
            "note: the facts are "
                + old
                + " days old"
                + (scenario.end().isAfter(today)
                    ? ": count again for a surer answer"
                    : " and the season is over: a case to study")
                + "; plans begin from "
                + first
                + (first.isAfter(today)
                    ? "; for what could have been done then, give --treat-from "
                        + scenario.start().plusDays(DAYS_TO_FETCH_IT)
                    : " (--treat-from sets another day)"));
  }

  /** Treatments that the user can get and that stand in no plan. */
  private static Optional<String> left(Scenario scenario) {
    Set<String> used = new HashSet<>();
    for (Plan plan : scenario.plans()) {
      for (PlanStep step : plan.steps()) {
        if (step instanceof PlanStep.Application application) {
          used.add(application.method().id());
        }
      }
    }
    String left =
        scenario.allowed().stream()
            .map(Method::id)
            .filter(id -> !used.contains(id))
            .collect(Collectors.joining(", "));
    return left.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "in none of them: "
                + left
                + ", since weather or supers are against it, or to keep the list short; add plans"
                + " with it if you like");
  }

  private static String quoted(Path file) {
    String name = file.toString();
    return name.matches("[\\w./~:\\\\-]+") ? name : "\"" + name + "\"";
  }

  private static void line(StringBuilder text, String words) {
    text.append(words.startsWith(" ") ? words + "\n" : TextPage.indented(words, 0));
  }
}
