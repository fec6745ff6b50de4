package org.undercap.simulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.undercap.model.ColonyLanes;
import org.undercap.model.DayDrivers;
import org.undercap.model.DayStep;
import org.undercap.model.ModelException;
import org.undercap.model.ModelParameters;

/**
 * Runs colonies through the days. Immutable, so one object may serve many runs and threads; the
 * start state is copied.
 *
 * <p>A lost colony stays empty from the next day on; the run ends when all are lost.
 */
public final class Simulator {
  private final ModelParameters parameters;
  private final DailyDrivers drivers;

  /**
   * A simulator for a place and time.
   *
   * @param parameters one set a colony
   * @param drivers season, weather and arrivals for as many colonies
   * @throws IllegalArgumentException if the numbers of colonies differ
   */
  public Simulator(ModelParameters parameters, DailyDrivers drivers) {
    if (parameters.lanes() != drivers.lanes()) {
      throw new IllegalArgumentException(
          parameters.lanes() + " parameter sets, but drivers for " + drivers.lanes() + " colonies");
    }
    this.parameters = parameters;
    this.drivers = drivers;
  }

  /**
   * Runs the colonies to the last day.
   *
   * @param start colonies on the first day
   * @param interventions what the keeper does
   * @param observers see every day
   * @return how it ended
   * @throws ModelException if the model leaves its range
   */
  public RunEnd run(
      ColonyLanes start,
      List<? extends Intervention> interventions,
      List<? extends DayObserver> observers) {
    ColonyLanes colony = start.copy();
    DayStep step = new DayStep(colony, parameters);
    SimulationDay day = new SimulationDay(drivers, step);
    DayDrivers season = new DayDrivers();
    // Arrays, because the iterator of a list would be made anew every day.
    Intervention[] acting = interventions.toArray(new Intervention[0]);
    DayObserver[] watching = observers.toArray(new DayObserver[0]);
    int alive = colony.lanes();
    int index = 0;
    for (; index < drivers.days() && alive > 0; index++) {
      day.moveTo(index);
      season.set(
          drivers.potentialEggs(index),
          drivers.droneShare(index),
          drivers.temperature(index),
          drivers.arriving(index));
      step.begin();
      for (DayObserver observer : watching) {
        observer.dayBegins(day);
      }
      for (Intervention intervention : acting) {
        intervention.act(day, step.effects());
      }
      int lost = step.finish(season, index);
      alive -= lost;
      for (DayObserver observer : watching) {
        observer.dayEnds(day);
      }
      if (lost > 0) {
        bury(step, index);
      }
    }
    return new RunEnd(index, colony, step);
  }

  private static void bury(DayStep step, int today) {
    for (int lane = 0; lane < step.colony().lanes(); lane++) {
      if (step.lostOn(lane) == today) {
        step.bury(lane);
      }
    }
  }

  /**
   * Runs the colonies and tells what each intervention did on one day, and why.
   *
   * @param start colonies on the first day
   * @param interventions what the keeper does
   * @param dayIndex the day to explain, from 0
   * @param lane the colony to explain
   * @return chains of intermediate values; empty if nothing acted on that day or the colony was
   *     lost before
   */
  public List<Explanation> explain(
      ColonyLanes start, List<? extends Intervention> interventions, int dayIndex, int lane) {
    List<Explanation> explanations = new ArrayList<>();
    DayObserver listener =
        new DayObserver() {
          @Override
          public void dayBegins(SimulationDay day) {
            if (day.index() == dayIndex && !day.isLost(lane)) {
              interventions.forEach(i -> explanations.addAll(i.explain(day, lane)));
            }
          }
        };
    run(start, interventions, List.of(listener));
    return List.copyOf(explanations);
  }

  /** How a run ended. */
  public static final class RunEnd {
    private final int days;
    private final ColonyLanes colony;
    private final DayStep step;

    RunEnd(int days, ColonyLanes colony, DayStep step) {
      this.days = days;
      this.colony = Objects.requireNonNull(colony);
      this.step = step;
    }

    /**
     * Days that were run.
     *
     * @return number of days; fewer than planned if all colonies were lost
     */
    public int days() {
      return days;
    }

    /**
     * The colonies after the last day; a lost one is empty.
     *
     * @return the state
     */
    public ColonyLanes colony() {
      return colony;
    }

    /**
     * The day on which a colony was lost.
     *
     * @param lane the colony
     * @return number of the day from 0, or -1 if it lives
     */
    public int lostOn(int lane) {
      return step.lostOn(lane);
    }
  }
}
