package org.undercap.monitoring;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.undercap.model.Cohorts;
import org.undercap.model.ColonyLanes;
import org.undercap.model.DayFlows;
import org.undercap.model.Flow;
import org.undercap.model.Part;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.simulation.DayObserver;
import org.undercap.simulation.SimulationDay;

/**
 * Looks at a block of colonies with the eyes of each count: a wash and opened cells see the start
 * of their day, a board catches what falls from the day it is put in until the day before it is
 * taken out.
 */
final class CountObserver implements DayObserver {
  private final List<Count> counts;
  private final int[] firstDay;
  private final int[] day;
  private final int wantedDay;
  private final double droneDispersion;
  private final double workerDispersion;
  private final Signals signals;
  private final int from;

  CountObserver(
      List<Count> counts,
      ParameterSet parameters,
      LocalDate wanted,
      LocalDate start,
      Signals signals,
      int from) {
    this.counts = counts;
    firstDay = counts.stream().mapToInt(count -> days(start, count.firstDay())).toArray();
    day = counts.stream().mapToInt(count -> days(start, count.date())).toArray();
    wantedDay = days(start, wanted);
    droneDispersion = parameters.value(ParameterId.DISPERSION_DRONE);
    workerDispersion = parameters.value(ParameterId.DISPERSION_WORKER);
    this.signals = signals;
    this.from = from;
  }

  private static int days(LocalDate start, LocalDate date) {
    return (int) ChronoUnit.DAYS.between(start, date);
  }

  @Override
  public void dayBegins(SimulationDay today) {
    observe(today.index(), today.colony());
  }

  /** Looks at the colonies at the start of a day. */
  void observe(int today, ColonyLanes colony) {
    for (int lane = 0; lane < colony.lanes(); lane++) {
      if (today == wantedDay) {
        signals.mites()[from + lane] = alive(colony, lane) ? colony.mites(lane) : Double.NaN;
        signals.perBee()[from + lane] = perBee(colony, lane);
      }
      for (int i = 0; i < day.length; i++) {
        if (today == day[i]) {
          observe(counts.get(i), signals.ofCount(i), colony, lane);
        }
      }
    }
  }

  private void observe(Count count, double[] values, ColonyLanes colony, int lane) {
    int i = from + lane;
    if (count instanceof Wash) {
      values[i] = perBee(colony, lane);
    } else if (count instanceof DroneCells) {
      values[i] =
          infested(colony.sealedDroneCells(), colony.mothersInDroneCells(), droneDispersion, lane);
    } else if (count instanceof WorkerCells) {
      values[i] =
          infested(
              colony.sealedWorkerCells(), colony.mothersInWorkerCells(), workerDispersion, lane);
    } else if (!alive(colony, lane)) {
      values[i] = Double.NaN;
    }
  }

  @Override
  public void dayEnds(SimulationDay today) {
    for (int i = 0; i < day.length; i++) {
      if (counts.get(i) instanceof Board
          && today.index() >= firstDay[i]
          && today.index() < day[i]) {
        addFall(signals.ofCount(i), today.flows(), today.lanes());
      }
    }
  }

  private void addFall(double[] fallen, DayFlows flows, int lanes) {
    double[] emergence = flows.of(Flow.LOST_AT_EMERGENCE);
    double[] natural = flows.of(Flow.DIED_NATURALLY);
    double[] onBees = flows.of(Flow.KILLED_ON_BEES);
    double[] inCells = flows.of(Flow.KILLED_IN_CELLS);
    for (int lane = 0; lane < lanes; lane++) {
      fallen[from + lane] += emergence[lane] + natural[lane] + onBees[lane] + inCells[lane];
    }
  }

  private static boolean alive(ColonyLanes colony, int lane) {
    return colony.adults(lane) > 0;
  }

  private static double perBee(ColonyLanes colony, int lane) {
    double adults = colony.adults(lane);
    return adults > 0 ? colony.total(Part.MITES_ON_BEES, lane) / adults : Double.NaN;
  }

  /** Share of the sealed cells of all ages with at least one mother mite. */
  private static double infested(Cohorts cells, Cohorts mothers, double dispersion, int lane) {
    double all = 0;
    double with = 0;
    for (int age = 0; age < cells.ages(); age++) {
      double sealed = cells.row(age)[lane];
      if (sealed > 0) {
        all += sealed;
        with += sealed * infested(mothers.row(age)[lane] / sealed, dispersion);
      }
    }
    return all > 0 ? with / all : Double.NaN;
  }

  private static double infested(double perCell, double k) {
    return k == Double.POSITIVE_INFINITY
        ? -StrictMath.expm1(-perCell)
        : 1 - StrictMath.pow(1 + perCell / k, -k);
  }
}
