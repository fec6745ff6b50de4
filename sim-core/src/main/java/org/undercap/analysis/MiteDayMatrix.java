package org.undercap.analysis;

import static org.undercap.parameter.ParameterId.*;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.undercap.model.ColonyLanes;
import org.undercap.model.DayDrivers;
import org.undercap.model.DayStep;
import org.undercap.model.Flow;
import org.undercap.model.ModelParameters;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;

/**
 * One day of few mites as a linear map, in a colony whose bees and brood stay as they are: {@code
 * mites(tomorrow) = A mites(today)}. The state holds the mites on bees, then the mothers in each
 * daily cohort of sealed worker cells and of sealed drone cells, youngest first.
 *
 * <p>The entries are written down from the parameters, not taken from a run: the share of the mites
 * on bees that enters the cells sealed today, what returns to the bees for each mother in the
 * cohort that emerges, and natural death on the bees. With few mites no two mothers share a cell,
 * so that the crowding factor is that of one mother; this is the only place where the model is not
 * linear in the mites. Only the counts of bees and of cells sealed on the day come from one step of
 * the model.
 *
 * <p>The logarithm of the dominant eigenvalue is the growth rate in the long run. [1] H. Caswell,
 * Matrix Population Models, 2nd edition, 2001, chapter 4.
 */
public final class MiteDayMatrix {
  private static final int ON_BEES = 0;
  private static final double CLOSE_ENOUGH = 1e-15;
  private static final int MOST_ROUNDS = 100_000;

  /** The parameters of one value that the entries are made from. */
  static final Set<ParameterId> PARAMETERS =
      EnumSet.of(
          INVASION_WORKER,
          INVASION_DRONE,
          REPRODUCTION_WORKER,
          REPRODUCTION_DRONE,
          REPRODUCTION_WINTER_FACTOR,
          EMERGENCE_LOSS_MOTHER_WORKER,
          EMERGENCE_LOSS_DAUGHTER_WORKER,
          EMERGENCE_LOSS_MOTHER_DRONE,
          EMERGENCE_LOSS_DAUGHTER_DRONE,
          MITE_DEATH_BROOD_NEST,
          MITE_DEATH_BROODLESS,
          ADULT_WEIGHT);

  private final RealMatrix matrix;

  private MiteDayMatrix(RealMatrix matrix) {
    this.matrix = matrix;
  }

  /**
   * The map of a colony.
   *
   * @param colony bees and brood; its mites do not matter; the first lane is taken
   * @param parameters values of the parameters
   * @return the map
   */
  public static MiteDayMatrix of(ColonyLanes colony, ParameterSet parameters) {
    return new Builder(colony, parameters).build();
  }

  /**
   * Growth of the mites in the long run, while bees and brood stay as they are.
   *
   * @return logarithm of the dominant eigenvalue (per day)
   */
  public double growth() {
    EigenDecomposition eigen = new EigenDecomposition(matrix);
    return StrictMath.log(eigen.getRealEigenvalue(dominant(eigen)));
  }

  /**
   * Where the mites are in the long run: the eigenvector of the dominant eigenvalue.
   *
   * @return shares of all mites in the order of the state; they add up to 1
   */
  public double[] stableMites() {
    return dominant(matrix);
  }

  /**
   * What a mite of each part of the state adds to the mites of the distant future: the eigenvector
   * of the transposed matrix.
   *
   * @return values in the order of the state; they add up to 1
   */
  public double[] reproductiveValues() {
    return dominant(matrix.transpose());
  }

  /**
   * The dominant eigenvector of a matrix without negative entries, by repeated multiplication. (A
   * decomposition finds the eigenvalue well, but at times not its vector.)
   */
  private static double[] dominant(RealMatrix matrix) {
    int n = matrix.getRowDimension();
    double[] vector = new double[n];
    Arrays.fill(vector, 1.0 / n);
    for (int round = 0; round < MOST_ROUNDS; round++) {
      double[] next = matrix.operate(vector);
      double sum = Arrays.stream(next).sum();
      double change = 0;
      for (int i = 0; i < n; i++) {
        next[i] /= sum;
        change = Math.max(change, Math.abs(next[i] - vector[i]));
      }
      vector = next;
      if (change < CLOSE_ENOUGH) {
        break;
      }
    }
    return vector;
  }

  /** The matrix has no negative entry, so that its largest real eigenvalue dominates. */
  private static int dominant(EigenDecomposition eigen) {
    double[] eigenvalues = eigen.getRealEigenvalues();
    int largest = 0;
    for (int i = 1; i < eigenvalues.length; i++) {
      largest = eigenvalues[i] > eigenvalues[largest] ? i : largest;
    }
    return largest;
  }

  /**
   * The matrix.
   *
   * @return a copy, row by row: what each of today's mites adds to tomorrow's
   */
  public double[][] rows() {
    return matrix.getData();
  }

  /** Collects the entries. */
  private static final class Builder {
    private final ParameterSet p;
    private final DayStep day;
    private final double broodIndex;

    Builder(ColonyLanes colony, ParameterSet parameters) {
      p = parameters;
      day = new DayStep(colony.copies(0, 1), ModelParameters.of(parameters));
      day.begin();
      broodIndex = day.flows().of(Flow.BROOD_INDEX, 0);
      DayDrivers season = new DayDrivers();
      season.set(0, 0, new double[1], new double[1]);
      day.finish(season, 0);
    }

    MiteDayMatrix build() {
      int workerAges = day.colony().sealedWorkerCells().ages();
      int droneAges = day.colony().sealedDroneCells().ages();
      int firstWorker = ON_BEES + 1;
      int firstDrone = firstWorker + workerAges;
      RealMatrix a = MatrixUtils.createRealMatrix(firstDrone + droneAges, firstDrone + droneAges);
      double toWorkers = hazard(INVASION_WORKER, day.colony().sealedWorkerCells().row(0)[0]);
      double toDrones = hazard(INVASION_DRONE, day.colony().sealedDroneCells().row(0)[0]);
      double hazard = toWorkers + toDrones;
      double staying = StrictMath.exp(-hazard);
      double perHazard = hazard > 0 ? (1 - staying) / hazard : 0;
      double living = StrictMath.exp(-between(MITE_DEATH_BROODLESS, MITE_DEATH_BROOD_NEST));
      a.setEntry(ON_BEES, ON_BEES, staying * living);
      a.setEntry(firstWorker, ON_BEES, toWorkers * perHazard);
      a.setEntry(firstDrone, ON_BEES, toDrones * perHazard);
      passOn(a, firstWorker, workerAges);
      passOn(a, firstDrone, droneAges);
      a.setEntry(ON_BEES, firstDrone - 1, living * perWorkerMother());
      a.setEntry(ON_BEES, firstDrone + droneAges - 1, living * perDroneMother());
      return new MiteDayMatrix(a);
    }

    private static void passOn(RealMatrix a, int first, int ages) {
      for (int age = 1; age < ages; age++) {
        a.setEntry(first + age, first + age - 1, 1);
      }
    }

    private double hazard(ParameterId rate, double cells) {
      return p.value(rate) * cells / (day.flows().of(Flow.ADULTS, 0) * p.value(ADULT_WEIGHT));
    }

    private double between(ParameterId broodless, ParameterId fullBrood) {
      return p.value(broodless) + (p.value(fullBrood) - p.value(broodless)) * broodIndex;
    }

    private double perWorkerMother() {
      return perMother(
          REPRODUCTION_WORKER,
          CROWDING_WORKER,
          EMERGENCE_LOSS_MOTHER_WORKER,
          EMERGENCE_LOSS_DAUGHTER_WORKER);
    }

    private double perDroneMother() {
      return perMother(
          REPRODUCTION_DRONE,
          CROWDING_DRONE,
          EMERGENCE_LOSS_MOTHER_DRONE,
          EMERGENCE_LOSS_DAUGHTER_DRONE);
    }

    /** Mother and daughters that return to the bees for each mother in an emerging cell. */
    private double perMother(
        ParameterId daughters,
        ParameterId crowding,
        ParameterId lossMother,
        ParameterId lossDaughter) {
      double winter = p.value(REPRODUCTION_WINTER_FACTOR);
      double born =
          p.value(daughters) * (winter + (1 - winter) * broodIndex) * p.value(crowding, 0);
      return 1 - p.value(lossMother) + born * (1 - p.value(lossDaughter));
    }
  }
}
