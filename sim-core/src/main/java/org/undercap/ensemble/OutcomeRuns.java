package org.undercap.ensemble;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.undercap.climate.SeasonDay;
import org.undercap.model.ColonyLanes;
import org.undercap.model.ModelParameters;
import org.undercap.model.SideBySide;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;
import org.undercap.simulation.DailyDrivers;
import org.undercap.simulation.Intervention;
import org.undercap.simulation.Simulator;
import org.undercap.simulation.StartShape;
import org.undercap.treatment.Interventions;
import org.undercap.treatment.PlanStep;
import org.undercap.treatment.Treatment;

/**
 * Runs a plan with values that somebody else chose, for its outcomes: where an {@link Ensemble}
 * draws what is not known, a study sets it. The outcomes of a case do not depend on the others.
 */
public final class OutcomeRuns {
  private static final int LANES = 64;

  private final Scenario scenario;
  private final Plan plan;
  private final MiteBelief belief;
  private final Members members;

  /**
   * Runs of one plan.
   *
   * @param scenario place, colony and time
   * @param plan the plan, with the feeding of the scenario
   * @param belief mites on the first day
   */
  public OutcomeRuns(Scenario scenario, Plan plan, MiteBelief belief) {
    this.scenario = scenario;
    this.plan = plan;
    this.belief = belief;
    members = Members.of(scenario, belief, EnsembleSettings.usual(1));
  }

  /**
   * What one run takes for known.
   *
   * @param parameters values of the parameters
   * @param mitesPlace share of the belief about the first mites that lies below those of this run
   *     (between 0 and 1)
   * @param bees factor on the bees of the first day (ratio)
   * @param brood factor on the brood of the first day (ratio)
   * @param warmer how much warmer the days are than usual (C); what was measured stays
   * @param arrivals factor on the mites that arrive (ratio)
   * @param strengths factor on the hazard of a treatment by its method (ratio); 1 where none is
   *     named
   * @param later days by which all steps of the plan are moved (days)
   */
  public record Case(
      ParameterSet parameters,
      double mitesPlace,
      double bees,
      double brood,
      double warmer,
      double arrivals,
      Map<String, Double> strengths,
      int later) {
    /**
     * Copies the map.
     *
     * @param parameters values of the parameters
     * @param mitesPlace share of the belief that lies below
     * @param bees factor on the bees
     * @param brood factor on the brood
     * @param warmer how much warmer the days are (C)
     * @param arrivals factor on the mites that arrive
     * @param strengths factors on treatments
     * @param later days by which the plan is moved
     */
    public Case {
      strengths = Map.copyOf(strengths);
    }
  }

  /**
   * Runs cases.
   *
   * @param cases the cases
   * @return the outcomes, one member a case, in their order
   * @throws IllegalArgumentException if no colony of this season and place can be scaled to the
   *     facts of a case
   */
  public OutcomeTable run(List<Case> cases) {
    OutcomeTable table = new OutcomeTable(cases.size());
    Map<Integer, List<Integer>> byShift = new LinkedHashMap<>();
    for (int i = 0; i < cases.size(); i++) {
      byShift.computeIfAbsent(cases.get(i).later(), days -> new ArrayList<>()).add(i);
    }
    byShift.forEach(
        (later, places) -> {
          List<ParameterSet> sets = places.stream().map(i -> cases.get(i).parameters()).toList();
          for (List<Integer> group : SideBySide.groups(sets, LANES)) {
            run(group.stream().map(places::get).toList(), cases, later, table);
          }
        });
    return table;
  }

  private void run(List<Integer> places, List<Case> cases, int later, OutcomeTable table) {
    List<Case> mine = places.stream().map(cases::get).toList();
    int lanes = mine.size();
    ModelParameters parameters = ModelParameters.of(mine.stream().map(Case::parameters).toList());
    OutcomeTable block = new OutcomeTable(lanes);
    OutcomeObserver observer = new OutcomeObserver(members, block, 0, lanes);
    Simulator.RunEnd end =
        new Simulator(parameters, drivers(mine))
            .run(start(mine, parameters), interventions(mine, later), List.of(observer));
    observer.close(end);
    for (Outcome outcome : Outcome.values()) {
      for (int lane = 0; lane < lanes; lane++) {
        table.values(outcome)[places.get(lane)] = block.values(outcome)[lane];
      }
    }
  }

  private ColonyLanes start(List<Case> cases, ModelParameters parameters) {
    ColonyLanes start =
        StartShape.at(scenario.climate(), SeasonDay.of(scenario.start()), parameters);
    double[] places = cases.stream().mapToDouble(Case::mitesPlace).toArray();
    double[] bees = cases.stream().mapToDouble(c -> c.bees() * scenario.hive().bees()).toArray();
    double[] brood =
        cases.stream().mapToDouble(c -> c.brood() * scenario.hive().broodCells()).toArray();
    double[] mites = belief.mites(places, bees, brood);
    for (int lane = 0; lane < places.length; lane++) {
      start.setQueenQuality(lane, scenario.hive().queenQuality());
      start.scaleTo(lane, bees[lane], brood[lane], mites[lane]);
    }
    return start;
  }

  private DailyDrivers drivers(List<Case> cases) {
    DailyDrivers drivers =
        DailyDrivers.of(
            scenario.climate(),
            scenario.start(),
            scenario.days(),
            scenario::arrivalsOn,
            cases.size());
    LocalDate date = scenario.start();
    for (int day = 0; day < drivers.days(); day++, date = date.plusDays(1)) {
      boolean measured = scenario.climate().temperature().measured(date);
      for (int lane = 0; lane < cases.size(); lane++) {
        drivers.temperature(day)[lane] += measured ? 0 : cases.get(lane).warmer();
        drivers.arriving(day)[lane] *= cases.get(lane).arrivals();
      }
    }
    return drivers;
  }

  private List<Intervention> interventions(List<Case> cases, int later) {
    List<PlanStep> steps = new ArrayList<>(scenario.stepsOfEveryPlan());
    plan.steps().forEach(step -> steps.add(step.moved(later)));
    List<Intervention> result = new ArrayList<>();
    for (Intervention intervention : Interventions.of(steps, scenario.circumstances())) {
      result.add(
          intervention instanceof Treatment treatment
              ? treatment.withStrength(strengths(cases, treatment.method().id()))
              : intervention);
    }
    return result;
  }

  private static double[] strengths(List<Case> cases, String method) {
    return cases.stream()
        .mapToDouble(
            c ->
                c.parameters().value(ParameterId.TREATMENT_STRENGTH)
                    * c.strengths().getOrDefault(method, 1.0))
        .toArray();
  }
}
