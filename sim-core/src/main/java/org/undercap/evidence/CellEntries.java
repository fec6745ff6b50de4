package org.undercap.evidence;

import static org.undercap.parameter.ParameterId.EMERGENCE_LOSS_MOTHER_DRONE;
import static org.undercap.parameter.ParameterId.EMERGENCE_LOSS_MOTHER_WORKER;

import org.undercap.model.ColonyLanes;
import org.undercap.model.Flow;
import org.undercap.model.Part;
import org.undercap.parameter.ParameterSet;
import org.undercap.simulation.DayObserver;
import org.undercap.simulation.SimulationDay;

/**
 * How often a mite enters a cell in its life, from the mean chances of the days that it observes.
 *
 * <p>A mite on the bees enters a worker cell on a day with chance {@code w}, a drone cell with
 * chance {@code d}; if it enters none it lives on with chance {@code s}. A mite that left a cell
 * meets the deaths of that day before the first chance, so it gets into a worker cell with chance
 * {@code a = s w / (1 - s (1 - w - d))} and into a drone cell with {@code b}, likewise. With the
 * losses of mothers at emergence {@code Lw, Ld} the entries that follow one into a worker or drone
 * cell, itself included, are {@code Ew = 1 + (1 - Lw)(a Ew + b Ed)} and {@code Ed = 1 + (1 - Ld)(a
 * Ew + b Ed)}.
 */
final class CellEntries implements DayObserver {
  private double onBees;
  private double intoWorkers;
  private double intoDrones;
  private double living;
  private int days;

  @Override
  public void dayBegins(SimulationDay day) {
    onBees = day.colony().total(Part.MITES_ON_BEES, 0);
  }

  @Override
  public void dayEnds(SimulationDay day) {
    ColonyLanes colony = day.colony();
    intoWorkers += colony.mothersInWorkerCells().row(0)[0] / onBees;
    intoDrones += colony.mothersInDroneCells().row(0)[0] / onBees;
    double alive = colony.total(Part.MITES_ON_BEES, 0);
    double dead = day.flows().of(Flow.DIED_NATURALLY, 0) + day.flows().of(Flow.KILLED_ON_BEES, 0);
    living += alive / (alive + dead);
    days++;
  }

  /** Entries of a mite that enters a worker cell, this one included. */
  double ofWorkerCell(ParameterSet parameters) {
    double w = intoWorkers / days;
    double d = intoDrones / days;
    double s = living / days;
    double again = s / (1 - s * (1 - w - d));
    double perWorker = 1 - parameters.value(EMERGENCE_LOSS_MOTHER_WORKER);
    double perDrone = 1 - parameters.value(EMERGENCE_LOSS_MOTHER_DRONE);
    double next = again * (w + d) / (1 - again * (w * perWorker + d * perDrone));
    return 1 + perWorker * next;
  }
}
