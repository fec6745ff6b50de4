package org.undercap.monitoring;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Predicate;
import org.undercap.climate.SeasonDay;
import org.undercap.model.ColonyLanes;
import org.undercap.model.ModelParameters;
import org.undercap.simulation.DailyDrivers;
import org.undercap.simulation.Intervention;
import org.undercap.simulation.Simulator;
import org.undercap.simulation.StartShape;
import org.undercap.treatment.Interventions;
import org.undercap.treatment.PlanStep;
import org.undercap.treatment.Treatment;

/**
 * From a colony to its counts: runs the model from the first day that any count covers, for every
 * number of mites of the grid and every row of the unknowns, many colonies side by side.
 *
 * <p>Bees and brood are given for the day of the estimate. If counts begin before it, the first day
 * has them in the proportion in which a healthy colony of the climate has them on the two days; if
 * something was done in between, one to which the same was done. Brood that was taken away or could
 * not be laid says nothing about the brood before: then the first day has that of a healthy colony
 * of so many bees.
 */
final class CountModel {
  private static final int BLOCK = 256;
  private static final int SHAPE = 0;

  private final CountedColony colony;
  private final List<Count> counts;
  private final LocalDate start;
  private final int days;
  private final ColonyLanes shape;
  private final double beesAtStart;
  private final double broodAtStart;
  private final List<Intervention> interventions;
  private final boolean broodIsGone;

  CountModel(CountedColony colony, List<Count> counts) {
    this.colony = colony;
    this.counts = List.copyOf(counts);
    start = edge(true);
    days = (int) ChronoUnit.DAYS.between(start, edge(false));
    shape = shapeOn(start);
    interventions = Interventions.of(colony.steps(), colony.circumstances());
    broodIsGone = anyBetween(CountModel::takesBroodAway);
    if (start.equals(colony.date())) {
      beesAtStart = 1;
      broodAtStart = 1;
    } else {
      ColonyLanes later =
          anyBetween(step -> !(step instanceof PlanStep.LateFeeding))
              ? healthyOnTheDate()
              : shapeOn(colony.date());
      beesAtStart = shape.adults(SHAPE) / later.adults(SHAPE);
      double brood = later.brood(SHAPE);
      broodAtStart = brood > 0 ? shape.brood(SHAPE) / brood : 0;
    }
  }

  private LocalDate edge(boolean first) {
    LocalDate edge = colony.date();
    for (Count count : counts) {
      LocalDate date = first ? count.firstDay() : count.date();
      if (first ? date.isBefore(edge) : date.isAfter(edge)) {
        edge = date;
      }
    }
    return edge;
  }

  private static boolean takesBroodAway(PlanStep step) {
    return step instanceof PlanStep.LayingStop
        || step instanceof PlanStep.BroodRemoval
        || step instanceof PlanStep.ShookSwarm
        || step instanceof PlanStep.Split;
  }

  private boolean anyBetween(Predicate<PlanStep> kind) {
    return colony.steps().stream()
        .filter(kind)
        .anyMatch(step -> step.date().isBefore(colony.date()) && !step.until().isBefore(start));
  }

  /** A healthy colony of the first day, run through what was done to the day of the estimate. */
  private ColonyLanes healthyOnTheDate() {
    ColonyLanes healthy = shape.copies(SHAPE, 1);
    healthy.setQueenQuality(0, colony.queenQuality());
    int until = (int) ChronoUnit.DAYS.between(start, colony.date());
    return new Simulator(ModelParameters.of(colony.parameters()), drivers(1, until))
        .run(healthy, interventions, List.of())
        .colony();
  }

  private ColonyLanes shapeOn(LocalDate date) {
    return StartShape.at(
        colony.climate(), SeasonDay.of(date), ModelParameters.of(colony.parameters()));
  }

  /** What the counts would meet. */
  Signals signals(Unknowns unknowns) {
    Signals signals = new Signals(counts.size(), MiteGrid.points(), unknowns.rows());
    if (days == 0) {
      look(signals, unknowns);
      return signals;
    }
    for (int from = 0; from < signals.colonies(); from += BLOCK) {
      run(signals, unknowns, from, Math.min(BLOCK, signals.colonies() - from));
    }
    return signals;
  }

  /** All counts are of one day: the shape tells all, for one number of mites after the other. */
  private void look(Signals signals, Unknowns unknowns) {
    int rows = unknowns.rows();
    ColonyLanes colonies = shape.copies(SHAPE, rows);
    for (int row = 0; row < rows; row++) {
      scale(colonies, row, unknowns, row, 0);
    }
    for (int point = 0; point < MiteGrid.points(); point++) {
      for (int row = 0; row < rows; row++) {
        colonies.scaleMites(row, MiteGrid.mites(point));
      }
      observer(signals, point * rows).observe(0, colonies);
    }
  }

  private void run(Signals signals, Unknowns unknowns, int from, int lanes) {
    ColonyLanes block = shape.copies(SHAPE, lanes);
    double[] strength = new double[lanes];
    for (int lane = 0; lane < lanes; lane++) {
      int row = (from + lane) % unknowns.rows();
      scale(block, lane, unknowns, row, (from + lane) / unknowns.rows());
      block.setQueenQuality(lane, colony.queenQuality());
      strength[lane] = unknowns.strength(row);
    }
    CountObserver observer = observer(signals, from);
    ModelParameters parameters =
        ModelParameters.of(Collections.nCopies(lanes, colony.parameters()));
    Simulator.RunEnd end =
        new Simulator(parameters, drivers(lanes, days))
            .run(block, acting(strength), List.of(observer));
    for (int day = end.days(); day <= days; day++) {
      observer.observe(day, end.colony());
    }
  }

  private void scale(ColonyLanes block, int lane, Unknowns unknowns, int row, int point) {
    double bees = unknowns.bees(row) * beesAtStart;
    double brood =
        broodIsGone
            ? bees * shape.brood(SHAPE) / shape.adults(SHAPE)
            : unknowns.brood(row) * broodAtStart;
    block.scaleTo(lane, bees, brood, MiteGrid.mites(point));
  }

  private CountObserver observer(Signals signals, int from) {
    return new CountObserver(counts, colony.parameters(), colony.date(), start, signals, from);
  }

  private DailyDrivers drivers(int lanes, int length) {
    DailyDrivers drivers =
        DailyDrivers.of(colony.climate(), start, length, colony.arrivals(), lanes);
    for (int day = 0; day < length; day++) {
      double[] temperature = drivers.temperature(day);
      for (int lane = 0; lane < lanes; lane++) {
        temperature[lane] += colony.warmer();
      }
    }
    return drivers;
  }

  private List<Intervention> acting(double[] strength) {
    List<Intervention> acting = new ArrayList<>();
    for (Intervention intervention : interventions) {
      acting.add(
          intervention instanceof Treatment treatment
              ? treatment.withStrength(strength)
              : intervention);
    }
    return acting;
  }
}
