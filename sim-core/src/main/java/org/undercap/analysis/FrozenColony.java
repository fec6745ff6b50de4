package org.undercap.analysis;

import java.util.Arrays;
import org.undercap.model.Cohorts;
import org.undercap.model.ColonyLanes;
import org.undercap.model.DayDrivers;
import org.undercap.model.DayStep;
import org.undercap.model.Flow;
import org.undercap.model.ModelParameters;
import org.undercap.model.Part;
import org.undercap.parameter.ParameterSet;

/**
 * A colony whose bees and brood are put back every morning, so that only its mites go through the
 * days, by the steps of the model. As many cells as are sealed on the day are of each age under the
 * cappings, and there are so few mites that none share a cell. The growth of the mites can be told
 * in four ways; run, matrix and daily equation are the same by theory, the equation in continuous
 * time is near.
 */
public final class FrozenColony {
  private static final double FEW = 1e-12;

  private final ColonyLanes frozen;
  private final ParameterSet parameters;
  private final ModelParameters model;
  private final MiteDayMatrix matrix;
  private final ConstantBrood brood;
  private final double broodIndex;

  /**
   * Holds the bees and brood of a colony.
   *
   * @param colony bees and brood; its mites do not matter; the first lane is taken
   * @param parameters values of the parameters
   */
  public FrozenColony(ColonyLanes colony, ParameterSet parameters) {
    frozen = colony.copies(0, 1);
    this.parameters = parameters;
    model = ModelParameters.of(parameters);
    DayStep day = new DayStep(frozen.copy(), model);
    day.begin();
    broodIndex = day.flows().of(Flow.BROOD_INDEX, 0);
    double adults = day.flows().of(Flow.ADULTS, 0);
    day.finish(noEggs(), 0);
    Cohorts workers = day.colony().sealedWorkerCells();
    Cohorts drones = day.colony().sealedDroneCells();
    double workerCells = workers.row(0)[0];
    double droneCells = drones.row(0)[0];
    frozen.set(Part.SEALED_WORKERS, 0, same(workerCells, workers.ages()));
    frozen.set(Part.SEALED_DRONES, 0, same(droneCells, drones.ages()));
    matrix = MiteDayMatrix.of(frozen, parameters);
    brood = ConstantBrood.of(adults, workerCells, droneCells, broodIndex, parameters);
  }

  private static double[] same(double cells, int ages) {
    double[] all = new double[ages];
    Arrays.fill(all, cells);
    return all;
  }

  private static DayDrivers noEggs() {
    DayDrivers season = new DayDrivers();
    season.set(0, 0, new double[1], new double[1]);
    return season;
  }

  /**
   * Open brood for each adult bee against a full brood nest.
   *
   * @return 0 to 1
   */
  public double broodIndex() {
    return broodIndex;
  }

  /**
   * What brood and bees do to few mites.
   *
   * @return the two delay equations
   */
  public ConstantBrood brood() {
    return brood;
  }

  /**
   * Bees and brood.
   *
   * @return a copy of the colony
   */
  public ColonyLanes colony() {
    return frozen.copy();
  }

  /**
   * The values of the parameters.
   *
   * @return a set
   */
  public ParameterSet parameters() {
    return parameters;
  }

  /**
   * Growth by the dominant eigenvalue of the day matrix.
   *
   * @return growth rate (per day)
   */
  public double growthByMatrix() {
    return matrix.growth();
  }

  /**
   * Mean growth over a run. It begins with the mites spread over bees and cells as the matrix says
   * that they are in the long run.
   *
   * @param days length of the run (days), at least 1
   * @return slope of the logarithm of all mites (per day)
   */
  public double growthByRun(int days) {
    double[] spread = matrix.stableMites();
    for (int i = 0; i < spread.length; i++) {
      spread[i] *= FEW;
    }
    ColonyLanes colony = withMites(spread);
    double before = colony.mites(0);
    DayDrivers season = noEggs();
    for (int i = 0; i < days; i++) {
      DayStep day = new DayStep(colony, model);
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
