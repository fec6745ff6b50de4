package org.undercap.cli.command;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.undercap.cli.option.CountGroups;
import org.undercap.cli.option.CountText;
import org.undercap.cli.option.ScenarioOptions;
import org.undercap.cli.output.InvalidFileException;
import org.undercap.cli.output.UsageException;
import org.undercap.ensemble.EnsembleSettings;
import org.undercap.monitoring.BeforeAfter;
import org.undercap.monitoring.Board;
import org.undercap.monitoring.Count;
import org.undercap.monitoring.CountedColony;
import org.undercap.monitoring.PoorResult;
import org.undercap.monitoring.RankedCause;
import org.undercap.monitoring.Tally;
import org.undercap.monitoring.Wash;
import org.undercap.monitoring.WashMethod;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.Circumstances;
import org.undercap.treatment.PlanStep;

/** A colony of a scenario, what was done to it under a plan, and what was counted afterwards. */
record PoorResultCase(Scenario scenario, Plan plan, Count after) {
  /**
   * Puts the case together.
   *
   * @param scenario the scenario
   * @param planName what was done; null if there is but one plan
   * @param counted counts after the treatment in options; if empty, the last count of the scenario
   * @param day day of that count; null if none is given
   */
  static PoorResultCase of(
      Scenario scenario, String planName, List<CountText> counted, LocalDate day) {
    Plan plan = plan(scenario, planName);
    LocalDate treated =
        plan.steps().stream()
            .filter(PlanStep.Application.class::isInstance)
            .map(PlanStep::date)
            .min(Comparator.naturalOrder())
            .orElseThrow(
                () -> new UsageException("--plan '" + plan.name() + "' holds no treatment"));
    Count after = day == null ? lastOf(scenario) : washed(scenario, counted, day);
    if (!after.date().isAfter(treated) || after.date().isAfter(scenario.end())) {
      throw new UsageException(
          "the count after the treatment is of "
              + after.date()
              + "; it must lie after "
              + treated
              + ", when the treatment began, and not after "
              + scenario.end());
    }
    return new PoorResultCase(scenario, plan, after);
  }

  private static Plan plan(Scenario scenario, String name) {
    if (name != null) {
      return ScenarioOptions.plan(scenario, name);
    }
    if (scenario.plans().size() == 2) {
      return scenario.plans().get(1);
    }
    throw new UsageException(
        "--scenario needs --plan, the plan that was followed: "
            + scenario.plans().stream()
                .skip(1)
                .map(plan -> "\"" + plan.name() + "\"")
                .toList()
                .toString()
                .replaceAll("[\\[\\]]", ""));
  }

  private static Count lastOf(Scenario scenario) {
    return scenario.counts().stream()
        .filter(count -> count.date().isAfter(scenario.start()))
        .max(Comparator.comparing(Count::date))
        .orElseThrow(
            () ->
                new UsageException(
                    "--scenario needs the day of the count after the treatment: give one --after"
                        + " and --after-date=DATE, or write a later count into the file"));
  }

  private static Count washed(Scenario scenario, List<CountText> counted, LocalDate day) {
    if (counted.size() != 1 || counted.get(0).board()) {
      throw new UsageException(
          "--after-date needs exactly one --after that is a wash, as in 7/300; write a board into"
              + " the scenario file instead");
    }
    Tally tally = counted.get(0).tally();
    return new Wash(day, (int) tally.of(), (int) tally.mites(), method(scenario));
  }

  private static WashMethod method(Scenario scenario) {
    return lastWash(scenario).map(Wash::method).orElse(WashMethod.ALCOHOL);
  }

  private static Optional<Wash> lastWash(Scenario scenario) {
    return scenario.countsAtStart().stream()
        .filter(Wash.class::isInstance)
        .map(Wash.class::cast)
        .max(Comparator.comparing(Wash::date));
  }

  /** The last count before the treatment and the one after it, if both were made in one way. */
  CountGroups groups() {
    Optional<Count> before =
        scenario.countsAtStart().stream()
            .filter(count -> count.getClass() == after.getClass())
            .max(Comparator.comparing(Count::date));
    BeforeAfter pair = before.flatMap(this::pair).orElseThrow(PoorResultCase::unlike);
    return new CountGroups(
        List.of(pair.before()),
        List.of(pair.after()),
        List.of(),
        List.of(),
        List.of(),
        after instanceof Board);
  }

  private static UsageException unlike() {
    return new UsageException(
        "the scenario has no count before the treatment that was made like the one after it; give"
            + " --before and --after");
  }

  private Optional<BeforeAfter> pair(Count before) {
    if (before instanceof Wash first && after instanceof Wash second) {
      return first.method().recovery() == second.method().recovery()
          ? Optional.of(BeforeAfter.of(first, second))
          : Optional.empty();
    }
    return before instanceof Board first && after instanceof Board second
        ? Optional.of(BeforeAfter.of(first, second))
        : Optional.empty();
  }

  /**
   * The causes, best fit first. Resistance that the scenario takes for granted is left out, since
   * it is one of the causes to be told apart.
   */
  List<RankedCause> causes(Path file) {
    Circumstances met = scenario.circumstances();
    Circumstances open =
        new Circumstances(met.openFloor(), met.humid(), Map.of(), met.peakEggs(), met.parameters());
    CountedColony colony = scenario.countedColony().withSteps(scenario.stepsUnder(plan), open);
    try {
      return PoorResult.rank(colony, scenario.countsAtStart(), after, EnsembleSettings.USUAL_SEED);
    } catch (IllegalArgumentException e) {
      throw new InvalidFileException(file + ": error: mites.counts: " + e.getMessage());
    }
  }
}
