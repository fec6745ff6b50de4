package org.undercap.resistance;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.undercap.model.DayEffects;
import org.undercap.model.Flow;
import org.undercap.scenario.Scenario;
import org.undercap.simulation.DayObserver;
import org.undercap.simulation.Intervention;
import org.undercap.simulation.SimulationDay;
import org.undercap.treatment.Circumstances;
import org.undercap.treatment.Interventions;
import org.undercap.treatment.PlanStep;
import org.undercap.treatment.Treatment;

/**
 * Treatments that meet the resistant mites of the day, and select for them. A treatment acts on the
 * susceptible mites only; of the mites that the model books as killed on a day, all those that a
 * class of substances killed were susceptible to it. Where several treatments act on a day, the
 * dead are shared out by their hazards. Everything else that happens to mites happens to both
 * alike.
 */
final class Selection implements Intervention, DayObserver {
  private final Scenario scenario;
  private final List<PlanStep> steps;
  private final Map<String, Double> arriving;
  private final Map<String, Double> resistant;
  private final Map<String, double[]> hazards = new HashMap<>();
  private List<Intervention> today = List.of();
  private boolean changed = true;
  private double hazardOnBees;
  private double hazardInCells;

  Selection(Scenario scenario, List<PlanStep> steps, Map<String, Double> shares) {
    this.scenario = scenario;
    this.steps = List.copyOf(steps);
    arriving = Map.copyOf(shares);
    resistant = new TreeMap<>(shares);
  }

  Map<String, Double> resistant() {
    return Map.copyOf(resistant);
  }

  @Override
  public void act(SimulationDay day, DayEffects effects) {
    if (changed) {
      Circumstances usual = scenario.circumstances();
      Circumstances now =
          new Circumstances(
              usual.openFloor(), usual.humid(), resistant, usual.peakEggs(), usual.parameters());
      today = Interventions.of(steps, now);
      changed = false;
    }
    hazards.clear();
    for (Intervention intervention : today) {
      double onBees = effects.hazardOnBees(0);
      double inCells = effects.hazardInCells(0);
      intervention.act(day, effects);
      if (intervention instanceof Treatment treatment) {
        double[] sum =
            hazards.computeIfAbsent(treatment.method().substanceClass(), key -> new double[2]);
        sum[0] += effects.hazardOnBees(0) - onBees;
        sum[1] += effects.hazardInCells(0) - inCells;
      }
    }
    hazardOnBees = effects.hazardOnBees(0);
    hazardInCells = effects.hazardInCells(0);
  }

  @Override
  public void dayEnds(SimulationDay day) {
    double onBees = day.flows().of(Flow.KILLED_ON_BEES, 0);
    double inCells = day.flows().of(Flow.KILLED_IN_CELLS, 0);
    double left = day.flows().of(Flow.MITES_AFTER, 0);
    double arrived = Math.min(left, day.flows().of(Flow.ARRIVED, 0));
    if (!(left > 0)) {
      return;
    }
    for (String substance : new ArrayList<>(resistant.keySet())) {
      double[] hazard = hazards.getOrDefault(substance, new double[2]);
      double killed =
          part(onBees, hazard[0], hazardOnBees) + part(inCells, hazard[1], hazardInCells);
      double before = resistant.get(substance);
      double mites = before * (left + killed - arrived) + arriving.get(substance) * arrived;
      double after = Math.min(1, mites / left);
      changed |= after != before;
      resistant.put(substance, after);
    }
  }

  private static double part(double killed, double hazard, double all) {
    return all > 0 ? killed * hazard / all : 0;
  }
}
