package org.undercap.monitoring;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import org.undercap.climate.Climate;
import org.undercap.climate.SeasonDay;
import org.undercap.model.ColonyLanes;
import org.undercap.model.ModelParameters;
import org.undercap.model.Part;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.simulation.DailyDrivers;
import org.undercap.simulation.DailyTable;
import org.undercap.simulation.Simulator;
import org.undercap.simulation.StartShape;

/**
 * The number of mites in a colony as counts suggest it: one number, without its uncertainty.
 *
 * <p>The shape of a colony of the season tells how many mites each count would find in a colony of
 * a known number of mites. Where every count is Poisson distributed, the likeliest number of mites
 * is what was found in all counts together, divided by what one mite adds to them. A count of many
 * mites so weighs more than one of few, and a count without mites weighs as well.
 */
public final class MiteEstimate {

  private static final int LANE = 0;
  private static final int ROUNDS = 20;
  private static final double CLOSE_ENOUGH = 1e-6;

  private final Climate climate;
  private final ParameterSet set;
  private final ModelParameters parameters;
  private final LocalDate date;
  private final ColonyLanes colony;

  private MiteEstimate(
      Climate climate, ParameterSet set, LocalDate date, double bees, double broodCells) {
    this.climate = climate;
    this.set = set;
    this.date = date;
    parameters = ModelParameters.of(set);
    colony = StartShape.at(climate, SeasonDay.of(date), parameters);
    colony.scaleTo(LANE, bees, broodCells, 1);
  }

  /**
   * Estimates all mites of a colony.
   *
   * @param climate the place
   * @param parameters values of the parameters
   * @param date day of the estimate; the counts are taken as of this day
   * @param bees adult workers (bees, above 0)
   * @param broodCells eggs, larvae and sealed brood (cells, at least 0)
   * @param counts the counts
   * @return mites on bees and under the cappings (mites), or nothing if the counts cannot tell, as
   *     drone cells in a season without drone brood
   * @throws IllegalArgumentException if a number is out of range, or a colony of this season and
   *     place has no brood but brood is given
   */
  public static OptionalDouble of(
      Climate climate,
      ParameterSet parameters,
      LocalDate date,
      double bees,
      double broodCells,
      List<Count> counts) {
    return new MiteEstimate(climate, parameters, date, bees, broodCells).estimate(counts);
  }

  /** What falls for each mite depends on how crowded the cells are, so the estimate is repeated. */
  private OptionalDouble estimate(List<Count> counts) {
    double found = counts.stream().mapToDouble(MiteEstimate::found).sum();
    double mites = found;
    for (int round = 0; round < ROUNDS; round++) {
      double assumed = Math.max(1, mites);
      double perMite =
          counts.stream().mapToDouble(count -> expected(count, assumed)).sum() / assumed;
      if (!(perMite > 0)) {
        return OptionalDouble.empty();
      }
      double before = mites;
      mites = found / perMite;
      if (Math.abs(mites - before) <= CLOSE_ENOUGH * Math.max(1, mites)) {
        break;
      }
    }
    return OptionalDouble.of(mites);
  }

  private static double found(Count count) {
    if (count instanceof Wash wash) {
      return wash.mites();
    } else if (count instanceof Board board) {
      return board.mites();
    }
    return ((DroneCells) count).infested();
  }

  /** What a count would find in this colony if it had so many mites in all. */
  private double expected(Count count, double mites) {
    colony.scaleMites(LANE, mites);
    if (count instanceof Wash wash) {
      double perBee = Math.min(1, colony.total(Part.MITES_ON_BEES, LANE) / colony.adults(LANE));
      return wash.bees() * set.value(wash.method().recovery()) * perBee;
    } else if (count instanceof Board board) {
      return fall(board.days()) * set.value(ParameterId.COUNT_CAPTURE_BOARD);
    }
    return ((DroneCells) count).opened() * infestedShare();
  }

  /** Share of the sealed drone cells with at least one mother mite. */
  private double infestedShare() {
    double cells = colony.total(Part.SEALED_DRONES, LANE);
    if (!(cells > 0)) {
      return 0;
    }
    double perCell = colony.total(Part.MITES_IN_DRONE_CELLS, LANE) / cells;
    double k = set.value(ParameterId.DISPERSION_DRONE);
    return 1 - StrictMath.pow(1 + perCell / k, -k);
  }

  /** Mites falling in so many days from this day on, without arrivals and treatment. */
  private double fall(int days) {
    DailyDrivers drivers = DailyDrivers.of(climate, date, days, day -> 0, 1);
    DailyTable table = DailyTable.of(drivers, LANE);
    new Simulator(parameters, drivers).run(colony, List.of(), List.of(table));
    double fall = 0;
    for (int day = 0; day < table.days(); day++) {
      fall += table.miteFall(day);
    }
    return fall;
  }
}
