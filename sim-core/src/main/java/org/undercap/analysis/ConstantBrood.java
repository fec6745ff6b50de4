package org.undercap.analysis;

import static org.undercap.parameter.ParameterId.*;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.undercap.internal.Checks;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;

/**
 * Few mites in a colony whose bees and brood do not change: each mite on the bees enters a cell
 * with a constant hazard, stays for the sealed time, and returns with the daughters that live. Two
 * equations give the growth rate {@code r}:
 *
 * <ul>
 *   <li>in continuous time {@code r + a + mu = sum of m a exp(-r tau)} over worker and drone brood,
 *       with the hazards {@code a} (their sum on the left), the natural death {@code mu}, the mites
 *       {@code m} that return for each that entered, and the sealed time {@code tau};
 *   <li>in the model's days {@code exp(r + mu) = exp(-a) + (1 - exp(-a)) sum of m s exp(-r tau)},
 *       with the share {@code s} of each kind of brood in the hazard. Its root is the logarithm of
 *       the dominant eigenvalue of {@link MiteDayMatrix}.
 * </ul>
 *
 * The two agree to first order in the hazards, as a day is short against the life of a mite.
 *
 * @param worker what worker brood does to the mites
 * @param drone what drone brood does to the mites
 * @param death natural death on the bees (per day)
 */
public record ConstantBrood(Kind worker, Kind drone, double death) {
  private static final double ACCURACY = 1e-14;
  private static final int MOST_EVALUATIONS = 500;

  /**
   * Checks the death.
   *
   * @param worker what worker brood does to the mites
   * @param drone what drone brood does to the mites
   * @param death natural death on the bees (per day), at least 0
   * @throws IllegalArgumentException if the death is out of range
   */
  public ConstantBrood {
    Checks.notNegative(death, "natural death (per day)");
  }

  /**
   * One kind of brood.
   *
   * @param hazard hazard of a mite on the bees to enter a cell (per day)
   * @param returning mother and daughters that return for each mite that entered (mites)
   * @param sealedDays time under the cappings (days)
   */
  public record Kind(double hazard, double returning, double sealedDays) {
    /**
     * Checks the numbers.
     *
     * @param hazard at least 0 (per day)
     * @param returning at least 0 (mites)
     * @param sealedDays above 0 (days)
     * @throws IllegalArgumentException if a number is out of range
     */
    public Kind {
      Checks.notNegative(hazard, "hazard of invasion (per day)");
      Checks.notNegative(returning, "mites returning for each that entered");
      Checks.positive(sealedDays, "sealed time (days)");
    }
  }

  /**
   * A colony in numbers.
   *
   * @param adults adult workers (bees), above 0
   * @param workerCells worker cells sealed on a day (cells per day), at least 0
   * @param droneCells drone cells sealed on a day (cells per day), at least 0
   * @param broodIndex open brood for each adult against a full brood nest (0 to 1)
   * @param parameters values of the parameters
   * @return the constant colony
   * @throws IllegalArgumentException if a number is out of range
   */
  public static ConstantBrood of(
      double adults,
      double workerCells,
      double droneCells,
      double broodIndex,
      ParameterSet parameters) {
    double grams = Checks.positive(adults, "adult bees") * parameters.value(ADULT_WEIGHT);
    double rho = Checks.share(broodIndex, "brood index");
    double winter = parameters.value(REPRODUCTION_WINTER_FACTOR);
    double fertility = winter + (1 - winter) * rho;
    double broodless = parameters.value(MITE_DEATH_BROODLESS);
    double nest = parameters.value(MITE_DEATH_BROOD_NEST);
    return new ConstantBrood(
        new Kind(
            parameters.value(INVASION_WORKER) * Checks.notNegative(workerCells, "cells") / grams,
            returning(
                parameters,
                fertility * parameters.value(REPRODUCTION_WORKER),
                CROWDING_WORKER,
                EMERGENCE_LOSS_MOTHER_WORKER,
                EMERGENCE_LOSS_DAUGHTER_WORKER),
            sealedDays(parameters, BROOD_WORKER_DAYS)),
        new Kind(
            parameters.value(INVASION_DRONE) * Checks.notNegative(droneCells, "cells") / grams,
            returning(
                parameters,
                fertility * parameters.value(REPRODUCTION_DRONE),
                CROWDING_DRONE,
                EMERGENCE_LOSS_MOTHER_DRONE,
                EMERGENCE_LOSS_DAUGHTER_DRONE),
            sealedDays(parameters, BROOD_DRONE_DAYS)),
        broodless + (nest - broodless) * rho);
  }

  private static double returning(
      ParameterSet p, double daughters, ParameterId crowding, ParameterId lost, ParameterId lostD) {
    double born = daughters * p.value(crowding, 0);
    return 1 - p.value(lost) + born * (1 - p.value(lostD));
  }

  private static double sealedDays(ParameterSet p, ParameterId durations) {
    return p.values(durations)[2];
  }

  /**
   * Growth rate by the equation in continuous time.
   *
   * @return the real root {@code r} (per day)
   */
  public double continuousGrowth() {
    double a = worker.hazard + drone.hazard;
    return root(
        r -> r + a + death - entering(worker, r) - entering(drone, r),
        -(a + death),
        worker.returning * worker.hazard + drone.returning * drone.hazard);
  }

  private static double entering(Kind kind, double r) {
    return kind.returning * kind.hazard * StrictMath.exp(-r * kind.sealedDays);
  }

  /**
   * Growth rate by the equation in the model's days.
   *
   * @return the real root {@code r} (per day)
   */
  public double dailyGrowth() {
    double a = worker.hazard + drone.hazard;
    double staying = StrictMath.exp(-a);
    double perHazard = a > 0 ? (1 - staying) / a : 0;
    return root(
        r ->
            StrictMath.exp(r + death)
                - staying
                - perHazard * (entering(worker, r) + entering(drone, r)),
        -(a + death),
        worker.returning * worker.hazard + drone.returning * drone.hazard);
  }

  /** Both equations rise with r, are at most 0 at the lower and at least 0 at the upper end. */
  private static double root(UnivariateFunction f, double low, double high) {
    if (!(f.value(low) < 0)) {
      return low;
    }
    return new BrentSolver(ACCURACY, ACCURACY, 0).solve(MOST_EVALUATIONS, f, low, high);
  }
}
