package org.undercap.analysis;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.model.ColonyLanes;
import org.undercap.model.DayDrivers;
import org.undercap.model.DayStep;
import org.undercap.model.ModelParameters;
import org.undercap.model.Part;
import org.undercap.parameter.ParameterSet;
import org.undercap.simulation.StartShape;

/** Each column of the matrix against one day of the model with mites in one place only. */
class MiteDayMatrixTest {
  private static final ModelParameters PARAMETERS = ModelParameters.of(ParameterSet.shipped());
  private static final double FEW = 1e-12;

  private static ColonyLanes colony(String climate, int seasonDay) {
    return StartShape.at(ClimateCatalogue.shipped().get(climate), seasonDay, PARAMETERS);
  }

  @ParameterizedTest
  @CsvSource({"central-european, 166", "central-european, 349", "humid-subtropical, 15"})
  void columnsAreDaysOfTheModel(String climate, int seasonDay) {
    ColonyLanes colony = colony(climate, seasonDay);
    double[][] rows = MiteDayMatrix.of(colony, ParameterSet.shipped()).rows();
    int workers = colony.mothersInWorkerCells().ages();
    for (int place = 0; place < rows.length; place++) {
      if (!hasCells(colony, place, workers)) {
        continue;
      }
      double[] mites = new double[rows.length];
      mites[place] = FEW;
      double[] column = new double[rows.length];
      double[] next = aDayLater(colony, mites, workers);
      for (int i = 0; i < rows.length; i++) {
        column[i] = rows[i][place];
        next[i] /= FEW;
      }
      assertArrayEquals(column, next, 1e-11, "mites at place " + place);
    }
  }

  /** Mites sit on bees or in cells that there are. */
  private static boolean hasCells(ColonyLanes colony, int place, int workers) {
    if (place == 0) {
      return true;
    }
    return place <= workers
        ? colony.sealedWorkerCells().row(place - 1)[0] > 0
        : colony.sealedDroneCells().row(place - 1 - workers)[0] > 0;
  }

  private static double[] aDayLater(ColonyLanes frozen, double[] mites, int workers) {
    ColonyLanes colony = frozen.copy();
    colony.set(Part.MITES_ON_BEES, 0, mites[0]);
    colony.set(Part.MITES_IN_WORKER_CELLS, 0, Arrays.copyOfRange(mites, 1, 1 + workers));
    colony.set(Part.MITES_IN_DRONE_CELLS, 0, Arrays.copyOfRange(mites, 1 + workers, mites.length));
    DayStep day = new DayStep(colony, PARAMETERS);
    day.begin();
    DayDrivers season = new DayDrivers();
    season.set(1000, 0.01, new double[] {20}, new double[] {0});
    day.finish(season, 0);
    double[] next = new double[mites.length];
    next[0] = colony.total(Part.MITES_ON_BEES, 0);
    for (int age = 0; age < workers; age++) {
      next[1 + age] = colony.mothersInWorkerCells().row(age)[0];
    }
    for (int age = 0; age < next.length - 1 - workers; age++) {
      next[1 + workers + age] = colony.mothersInDroneCells().row(age)[0];
    }
    return next;
  }

  @ParameterizedTest
  @CsvSource({"central-european, 166", "central-european, 349", "humid-subtropical, 15"})
  void stableMitesGrowInProportion(String climate, int seasonDay) {
    MiteDayMatrix matrix = MiteDayMatrix.of(colony(climate, seasonDay), ParameterSet.shipped());
    double[] stable = matrix.stableMites();
    double factor = Math.exp(matrix.growth());
    assertEquals(1, Arrays.stream(stable).sum(), 1e-12);
    double[][] rows = matrix.rows();
    for (int i = 0; i < stable.length; i++) {
      double next = 0;
      for (int j = 0; j < stable.length; j++) {
        next += rows[i][j] * stable[j];
      }
      assertTrue(stable[i] >= 0);
      assertEquals(factor * stable[i], next, 1e-12);
    }
  }
}
