package org.undercap.model;

import java.util.Arrays;

/**
 * What keeper and treatments do to the colonies on one day, one value a colony. Several may act at
 * once: hazards add, factors multiply, and shares removed leave the product of what each leaves, so
 * the order does not matter.
 */
public final class DayEffects {
  final double[] hazardOnBees;
  final double[] hazardInCells;
  final double[] adultHazard;
  final double[] openBroodHazard;
  final double[] sealedBroodHazard;
  final double[] layingFactor;
  final double[] layingFloor;
  final double[] droneFactor;
  final double[] workerBroodLeft;
  final double[] droneBroodLeft;
  final double[] adultsLeft;
  private final double[][] sums;
  private final double[][] factors;
  private boolean touched = true;
  boolean onAdults;
  boolean inCells;
  boolean onBrood;
  boolean removal;

  DayEffects(int lanes) {
    sums = new double[6][lanes];
    factors = new double[5][lanes];
    hazardOnBees = sums[0];
    hazardInCells = sums[1];
    adultHazard = sums[2];
    openBroodHazard = sums[3];
    sealedBroodHazard = sums[4];
    layingFloor = sums[5];
    layingFactor = factors[0];
    droneFactor = factors[1];
    workerBroodLeft = factors[2];
    droneBroodLeft = factors[3];
    adultsLeft = factors[4];
  }

  /** Forgets the day before. */
  void clear() {
    if (touched) {
      for (double[] row : sums) {
        Arrays.fill(row, 0.0);
      }
      for (double[] row : factors) {
        Arrays.fill(row, 1.0);
      }
      onAdults = inCells = onBrood = removal = touched = false;
    }
  }

  /** True when anything acts on this day. */
  boolean any() {
    return touched;
  }

  /**
   * Kills mites.
   *
   * @param lane the colony
   * @param onBees hazard of the mites on adult bees (per day), at least 0
   * @param inCells hazard of the mites under the cappings (per day), at least 0
   */
  public void killMites(int lane, double onBees, double inCells) {
    hazardOnBees[lane] += notNegative(onBees, "hazard on bees");
    hazardInCells[lane] += notNegative(inCells, "hazard in cells");
    this.inCells |= inCells > 0;
    touched = true;
  }

  /**
   * Harms bees and brood.
   *
   * @param lane the colony
   * @param adults hazard of adult workers (per day), at least 0
   * @param openBrood hazard of larvae (per day), at least 0
   * @param sealedBrood hazard of sealed brood and the mites in it (per day), at least 0
   */
  public void harmBees(int lane, double adults, double openBrood, double sealedBrood) {
    adultHazard[lane] += notNegative(adults, "hazard of adults");
    openBroodHazard[lane] += notNegative(openBrood, "hazard of open brood");
    sealedBroodHazard[lane] += notNegative(sealedBrood, "hazard of sealed brood");
    onAdults |= adults > 0;
    onBrood |= openBrood > 0;
    inCells |= sealedBrood > 0;
    touched = true;
  }

  /**
   * Slows or stops the queen.
   *
   * @param lane the colony
   * @param factor eggs laid as a share of what would be laid, at least 0
   */
  public void slowLaying(int lane, double factor) {
    layingFactor[lane] *= notNegative(factor, "laying factor");
    touched = true;
  }

  /**
   * Keeps the queen laying: potential laying is at least this.
   *
   * @param lane the colony
   * @param eggs potential eggs (eggs per day), at least 0
   */
  public void keepLaying(int lane, double eggs) {
    layingFloor[lane] = Math.max(layingFloor[lane], notNegative(eggs, "potential eggs"));
    touched = true;
  }

  /**
   * Changes the share of eggs laid into drone cells.
   *
   * @param lane the colony
   * @param factor multiplies the share, at least 0; the share stays at most 1
   */
  public void changeDroneShare(int lane, double factor) {
    droneFactor[lane] *= notNegative(factor, "drone share factor");
    touched = true;
  }

  /**
   * Takes brood and bees out of the colony, with the mites in and on them.
   *
   * @param lane the colony
   * @param workerBrood share of the worker brood taken (fraction, 0 to 1)
   * @param droneBrood share of the drone brood taken (fraction, 0 to 1)
   * @param adults share of the adult bees taken (fraction, 0 to 1)
   */
  public void remove(int lane, double workerBrood, double droneBrood, double adults) {
    workerBroodLeft[lane] *= 1.0 - share(workerBrood, "worker brood");
    droneBroodLeft[lane] *= 1.0 - share(droneBrood, "drone brood");
    adultsLeft[lane] *= 1.0 - share(adults, "adult bees");
    removal = true;
    touched = true;
  }

  /**
   * Hazard of the mites on bees so far today.
   *
   * @param lane the colony
   * @return hazard (per day)
   */
  public double hazardOnBees(int lane) {
    return hazardOnBees[lane];
  }

  /**
   * Hazard of the mites under the cappings so far today.
   *
   * @param lane the colony
   * @return hazard (per day)
   */
  public double hazardInCells(int lane) {
    return hazardInCells[lane];
  }

  private static double notNegative(double x, String what) {
    if (!(x >= 0 && x < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(what + " " + x + " must be a finite number of at least 0");
    }
    return x;
  }

  private static double share(double x, String what) {
    if (!(x >= 0 && x <= 1)) {
      throw new IllegalArgumentException(
          "share of " + what + " removed " + x + " must be in [0, 1]");
    }
    return x;
  }
}
