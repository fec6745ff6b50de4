package org.undercap.monitoring;

import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.AhrensDieterMarsagliaTsangGammaSampler;
import org.apache.commons.rng.sampling.distribution.PoissonSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.undercap.climate.SeasonDay;
import org.undercap.model.ColonyLanes;
import org.undercap.model.ModelParameters;
import org.undercap.model.Part;
import org.undercap.parameter.ParameterCatalogue;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.parameter.Prior;
import org.undercap.simulation.DailyDrivers;
import org.undercap.simulation.DailyTable;
import org.undercap.simulation.Simulator;
import org.undercap.simulation.StartShape;

/**
 * Colonies that differ from what the keeper believes of them, and counts made in them: drawn bee by
 * bee and by single runs, apart from the code under test.
 */
final class SimulatedColonies {
  private static final ModelParameters PARAMETERS = ModelParameters.of(ParameterSet.shipped());

  private final CountedColony believed;
  private final ColonyLanes shape;
  private final UniformRandomProvider random;

  SimulatedColonies(CountedColony believed, long seed) {
    this.believed = believed;
    shape = StartShape.at(believed.climate(), SeasonDay.of(believed.date()), PARAMETERS);
    random = RandomSource.XO_SHI_RO_256_PP.create(seed);
  }

  /** A colony with a number of mites, equally likely in its logarithm. */
  Colony any() {
    double mites = StrictMath.exp(StrictMath.log(MiteGrid.MOST) * random.nextDouble());
    return of(mites);
  }

  Colony of(double mites) {
    ColonyLanes colony = shape.copy();
    colony.scaleTo(
        0,
        believed.bees() * drawn(ParameterId.COLONY_SIZE),
        believed.broodCells() * drawn(ParameterId.COLONY_SIZE),
        mites);
    return new Colony(colony, mites);
  }

  private double drawn(ParameterId id) {
    return Prior.of(ParameterCatalogue.shipped().get(id)).quantile(random.nextDouble());
  }

  private int hits(int n, double p) {
    int hits = 0;
    for (int i = 0; i < n; i++) {
      hits += random.nextDouble() < p ? 1 : 0;
    }
    return hits;
  }

  /** One of the colonies. */
  final class Colony {
    private final ColonyLanes state;
    private final double mites;

    private Colony(ColonyLanes state, double mites) {
      this.state = state;
      this.mites = mites;
    }

    double mites() {
      return mites;
    }

    double mitesPer100Bees() {
      return 100 * state.total(Part.MITES_ON_BEES, 0) / state.adults(0);
    }

    Wash wash(int bees, WashMethod method) {
      double p = Math.min(1, mitesPer100Bees() / 100) * drawn(method.recovery());
      return new Wash(believed.date(), bees, hits(bees, p), method);
    }

    DroneCells droneCells(int cells) {
      double all = state.total(Part.SEALED_DRONES, 0);
      double share = 0;
      for (int age = 0; age < state.sealedDroneCells().ages(); age++) {
        double sealed = state.sealedDroneCells().row(age)[0];
        double perCell = state.mothersInDroneCells().row(age)[0] / sealed;
        share += sealed / all * (1 - 1 / ((1 + perCell / 2) * (1 + perCell / 2)));
      }
      return new DroneCells(believed.date(), cells, hits(cells, share));
    }

    /**
     * A board laid in today; the fall varies by chance around a mean that varies as the model says.
     */
    Board board(int days) {
      DailyDrivers drivers =
          DailyDrivers.of(believed.climate(), believed.date(), days, day -> 0, 1);
      DailyTable table = DailyTable.of(drivers, 0);
      new Simulator(PARAMETERS, drivers).run(state, List.of(), List.of(table));
      double fall = 0;
      for (int day = 0; day < table.days(); day++) {
        fall += table.miteFall(day);
      }
      double spread = ParameterSet.shipped().value(ParameterId.COUNT_SPREAD_BOARD);
      double mean = fall * drawn(ParameterId.COUNT_CAPTURE_BOARD) * gamma(1 / (spread * spread));
      return new Board(believed.date().plusDays(days), days, poisson(mean));
    }
  }

  private double gamma(double shape) {
    return AhrensDieterMarsagliaTsangGammaSampler.of(random, shape, 1 / shape).sample();
  }

  private double poisson(double mean) {
    return mean > 0 ? PoissonSampler.of(random, mean).sample() : 0;
  }
}
