package org.undercap.calibration;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.undercap.model.ColonyLanes;
import org.undercap.model.DayFlows;
import org.undercap.model.Flow;
import org.undercap.model.Part;
import org.undercap.monitoring.Board;
import org.undercap.monitoring.Count;
import org.undercap.monitoring.CountLaw;
import org.undercap.monitoring.DroneCells;
import org.undercap.monitoring.Wash;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.simulation.SimulationDay;

/** A count as the model sees it: what a run adds up for it, and how counts scatter around that. */
sealed interface Observation {
  LocalDate date();

  /** First day of the observation. */
  default LocalDate from() {
    return date();
  }

  String kind();

  double found();

  /** What the start of a day adds, from {@link #from} to {@link #date}. */
  default double atStart(SimulationDay day, int lane) {
    return 0;
  }

  /** What the whole of a day adds, from {@link #from} to {@link #date}. */
  default double atEnd(SimulationDay day, int lane) {
    return 0;
  }

  /** What may be found. */
  CountLaw law(double sum, ParameterSet parameters, CountErrors errors);

  /** The same count with another outcome. */
  default Count asCount(double otherFound) {
    throw new IllegalStateException(kind() + " is not a count of mites in a sample");
  }

  static List<Observation> of(ObservedColony colony) {
    List<Observation> all = new ArrayList<>();
    for (Count count : colony.counts()) {
      if (count instanceof Wash wash) {
        all.add(new OfWash(wash));
      } else if (count instanceof Board board) {
        all.add(new OfBoard(board));
      } else if (count instanceof DroneCells cells) {
        all.add(new OfDroneCells(cells));
      }
    }
    colony.totals().forEach(total -> all.add(new OfTotal(total)));
    return List.copyOf(all);
  }

  /** Mites on a sample of bees; the sum is the mites on each bee. */
  record OfWash(Wash wash) implements Observation {
    @Override
    public LocalDate date() {
      return wash.date();
    }

    @Override
    public String kind() {
      return "wash";
    }

    @Override
    public double found() {
      return wash.mites();
    }

    @Override
    public double atStart(SimulationDay day, int lane) {
      ColonyLanes colony = day.colony();
      double bees = colony.adults(lane);
      return bees > 0 ? colony.total(Part.MITES_ON_BEES, lane) / bees : 0;
    }

    @Override
    public CountLaw law(double sum, ParameterSet p, CountErrors errors) {
      double share = p.value(wash.method().recovery()) * Math.min(1, sum);
      return CountLaw.alike(wash.bees(), share, errors.wash());
    }

    @Override
    public Count asCount(double otherFound) {
      return new Wash(wash.date(), wash.bees(), (int) otherFound, wash.method());
    }
  }

  /** Mites on a board; the sum is the fall of its days, the day of taking it out left out. */
  record OfBoard(Board board) implements Observation {
    @Override
    public LocalDate date() {
      return board.date().minusDays(1);
    }

    @Override
    public LocalDate from() {
      return board.date().minusDays(board.days());
    }

    @Override
    public String kind() {
      return "board";
    }

    @Override
    public double found() {
      return board.mites();
    }

    @Override
    public double atEnd(SimulationDay day, int lane) {
      DayFlows flows = day.flows();
      return flows.of(Flow.LOST_AT_EMERGENCE, lane)
          + flows.of(Flow.DIED_NATURALLY, lane)
          + flows.of(Flow.KILLED_ON_BEES, lane)
          + flows.of(Flow.KILLED_IN_CELLS, lane);
    }

    @Override
    public CountLaw law(double sum, ParameterSet p, CountErrors errors) {
      return CountLaw.falling(
          sum * p.value(ParameterId.COUNT_CAPTURE_BOARD), StrictMath.sqrt(errors.board()));
    }

    @Override
    public Count asCount(double otherFound) {
      return new Board(board.date(), board.days(), otherFound);
    }
  }

  /** Opened drone cells; the sum is the mothers in each cell. */
  record OfDroneCells(DroneCells cells) implements Observation {
    @Override
    public LocalDate date() {
      return cells.date();
    }

    @Override
    public String kind() {
      return "drone cells";
    }

    @Override
    public double found() {
      return cells.infested();
    }

    @Override
    public double atStart(SimulationDay day, int lane) {
      ColonyLanes colony = day.colony();
      double sealed = colony.total(Part.SEALED_DRONES, lane);
      return sealed > 0 ? colony.total(Part.MITES_IN_DRONE_CELLS, lane) / sealed : 0;
    }

    @Override
    public CountLaw law(double sum, ParameterSet p, CountErrors errors) {
      double k = p.value(ParameterId.DISPERSION_DRONE);
      double empty =
          k == Double.POSITIVE_INFINITY ? StrictMath.exp(-sum) : StrictMath.pow(1 + sum / k, -k);
      return CountLaw.alike(cells.opened(), 1 - empty, errors.wash());
    }

    @Override
    public Count asCount(double otherFound) {
      return new DroneCells(cells.date(), cells.opened(), (int) otherFound);
    }
  }

  /** All mites; the sum is all mites at the start of the day. */
  record OfTotal(TotalMites total) implements Observation {
    @Override
    public LocalDate date() {
      return total.date();
    }

    @Override
    public String kind() {
      return "all mites";
    }

    @Override
    public double found() {
      return total.mites();
    }

    @Override
    public double atStart(SimulationDay day, int lane) {
      return day.flows().of(Flow.MITES_BEFORE, lane);
    }

    @Override
    public CountLaw law(double sum, ParameterSet p, CountErrors errors) {
      return new CountLaw.LogNormal(sum, errors.total());
    }
  }
}
