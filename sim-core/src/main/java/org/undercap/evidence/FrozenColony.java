package org.undercap.evidence;

import java.util.Arrays;
import org.undercap.analysis.MiteDayMatrix;
import org.undercap.model.Cohorts;
import org.undercap.model.ColonyLanes;
import org.undercap.model.DayDrivers;
import org.undercap.model.DayStep;
import org.undercap.model.Part;
import org.undercap.parameter.ParameterSet;

/**
 * A colony whose bees and brood are put back every morning, so that only its mites go through the
 * days, by the steps of the model. There are so few of them that none share a cell.
 */
final class FrozenColony {
  private static final double FEW = 1e-12;

  private final ColonyLanes frozen;
  private final MiteDayMatrix matrix;

  FrozenColony(ColonyLanes frozen) {
    this.frozen = frozen.copy();
    matrix = MiteDayMatrix.of(frozen, ParameterSet.shipped());
  }

  /** Growth by the matrix (per day). */
  double growthByMatrix() {
    return matrix.growth();
  }

  /**
   * Mean growth over a run (per day). It begins with the mites spread over bees and cells as the
   * matrix says that they are in the long run.
   */
  double growthByRun(int days) {
    double[] spread = matrix.stableMites();
    for (int i = 0; i < spread.length; i++) {
      spread[i] *= FEW;
    }
    ColonyLanes colony = withMites(spread);
    double before = colony.mites(0);
    DayDrivers season = new DayDrivers();
    season.set(0, 0, new double[1], new double[1]);
    for (int i = 0; i < days; i++) {
      DayStep day = new DayStep(colony, ColonyRun.PARAMETERS);
      day.begin();
      day.finish(season, i);
      colony = withMites(mites(colony));
    }
    return StrictMath.log(colony.mites(0) / before) / days;
  }

  private ColonyLanes withMites(double[] mites) {
    ColonyLanes colony = frozen.copy();
    int firstDrone = 1 + colony.mothersInWorkerCells().ages();
    colony.set(Part.MITES_ON_BEES, 0, mites[0]);
    colony.set(Part.MITES_IN_WORKER_CELLS, 0, Arrays.copyOfRange(mites, 1, firstDrone));
    colony.set(Part.MITES_IN_DRONE_CELLS, 0, Arrays.copyOfRange(mites, firstDrone, mites.length));
    return colony;
  }

  private static double[] mites(ColonyLanes colony) {
    Cohorts workers = colony.mothersInWorkerCells();
    Cohorts drones = colony.mothersInDroneCells();
    double[] mites = new double[1 + workers.ages() + drones.ages()];
    mites[0] = colony.total(Part.MITES_ON_BEES, 0);
    for (int age = 0; age < workers.ages(); age++) {
      mites[1 + age] = workers.row(age)[0];
    }
    for (int age = 0; age < drones.ages(); age++) {
      mites[1 + workers.ages() + age] = drones.row(age)[0];
    }
    return mites;
  }
}
