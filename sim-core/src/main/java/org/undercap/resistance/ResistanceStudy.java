package org.undercap.resistance;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.undercap.climate.SeasonDay;
import org.undercap.internal.Checks;
import org.undercap.model.ColonyLanes;
import org.undercap.model.Flow;
import org.undercap.model.ModelParameters;
import org.undercap.model.Part;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;
import org.undercap.simulation.DailyDrivers;
import org.undercap.simulation.DayObserver;
import org.undercap.simulation.SimulationDay;
import org.undercap.simulation.Simulator;
import org.undercap.simulation.StartShape;
import org.undercap.treatment.PlanStep;

/**
 * The share of resistant mites in a colony through several years of treatment by a scheme: a study,
 * not a forecast.
 *
 * <p>Resistant mites are not killed by their class of substances at all and are otherwise like the
 * others; they cross with nobody, and resistance costs nothing. Mites that arrive hold as many
 * resistant ones as the colony did on the first day. All of this is assumed. Selection is what the
 * model's own kill leaves: see {@link Selection}.
 */
public final class ResistanceStudy {
  /** The longest study (years). */
  public static final int MOST_YEARS = 30;

  private ResistanceStudy() {}

  /**
   * Runs a study.
   *
   * @param scenario place and colony; its plans are repeated from year to year
   * @param mites all mites on the first day (mites), at least 0
   * @param scheme plans of the first year, the second and so on, then again from the first
   * @param years length (years), 1 to {@value #MOST_YEARS}
   * @param shares share of resistant mites on the first day by class of substances (fraction)
   * @return one entry a year, fewer if the colony is lost
   * @throws IllegalArgumentException if a number is out of range, the scheme is empty, or a step of
   *     a plan lies more than a year after the first day
   */
  public static List<ResistanceYear> run(
      Scenario scenario, double mites, List<Plan> scheme, int years, Map<String, Double> shares) {
    if (years < 1 || years > MOST_YEARS) {
      throw new IllegalArgumentException("years " + years + " must be in 1 to " + MOST_YEARS);
    }
    if (scheme.isEmpty()) {
      throw new IllegalArgumentException("a scheme needs at least one plan");
    }
    shares.forEach((name, share) -> Checks.share(share, "share of mites resistant to " + name));
    Selection selection = new Selection(scenario, steps(scenario, scheme, years), shares);
    Years observer = new Years(scenario, scheme, years, selection);
    ModelParameters parameters = ModelParameters.of(scenario.parameters());
    LocalDate end = scenario.start().plusYears(years);
    int days = (int) ChronoUnit.DAYS.between(scenario.start(), end);
    DailyDrivers drivers =
        DailyDrivers.of(scenario.climate(), scenario.start(), days, scenario::arrivalsOn, 1);
    new Simulator(parameters, drivers)
        .run(start(scenario, mites, parameters), List.of(selection), List.of(selection, observer));
    return List.copyOf(observer.kept);
  }

  /**
   * The classes of substances that a scheme uses.
   *
   * @param scheme some plans
   * @return names of the classes, sorted
   */
  public static List<String> classes(List<Plan> scheme) {
    TreeSet<String> classes = new TreeSet<>();
    for (Plan plan : scheme) {
      for (PlanStep step : plan.steps()) {
        if (step instanceof PlanStep.Application application) {
          classes.add(application.method().substanceClass());
        }
      }
    }
    return List.copyOf(classes);
  }

  private static ColonyLanes start(Scenario scenario, double mites, ModelParameters parameters) {
    ColonyLanes start =
        StartShape.at(scenario.climate(), SeasonDay.of(scenario.start()), parameters);
    start.setQueenQuality(0, scenario.hive().queenQuality());
    start.scaleTo(0, scenario.hive().bees(), scenario.hive().broodCells(), mites);
    return start;
  }

  private static List<PlanStep> steps(Scenario scenario, List<Plan> scheme, int years) {
    LocalDate start = scenario.start();
    List<PlanStep> steps = new ArrayList<>();
    for (int year = 0; year < years; year++) {
      Plan plan = scheme.get(year % scheme.size());
      for (PlanStep step : scenario.stepsUnder(plan)) {
        if (!step.date().isBefore(start.plusYears(1))) {
          throw new IllegalArgumentException(
              plan.name() + ": the step on " + step.date() + " must lie within a year of " + start);
        }
        LocalDate date = step.date().plusYears(year);
        steps.add(step.moved(ChronoUnit.DAYS.between(step.date(), date)));
      }
    }
    return steps;
  }

  /** Keeps what is told of each year. */
  private static final class Years implements DayObserver {
    private final Scenario scenario;
    private final List<Plan> scheme;
    private final Selection selection;
    private final List<ResistanceYear> kept = new ArrayList<>();
    private final int years;
    private double highest;

    Years(Scenario scenario, List<Plan> scheme, int years, Selection selection) {
      this.scenario = scenario;
      this.scheme = scheme;
      this.years = years;
      this.selection = selection;
    }

    @Override
    public void dayBegins(SimulationDay day) {
      double bees = day.flows().of(Flow.ADULTS, 0);
      if (bees > 0) {
        highest = Math.max(highest, 100 * day.colony().total(Part.MITES_ON_BEES, 0) / bees);
      }
    }

    @Override
    public void dayEnds(SimulationDay day) {
      int year = kept.size();
      boolean last = day.date().plusDays(1).equals(scenario.start().plusYears(year + 1L));
      if (year < years && (last || day.isLost(0))) {
        kept.add(
            new ResistanceYear(
                year + 1,
                scenario.start().plusYears(year),
                scheme.get(year % scheme.size()).name(),
                selection.resistant(),
                day.flows().of(Flow.MITES_AFTER, 0),
                highest,
                day.isLost(0) ? Optional.of(day.date()) : Optional.empty()));
        highest = 0;
      }
    }
  }
}
