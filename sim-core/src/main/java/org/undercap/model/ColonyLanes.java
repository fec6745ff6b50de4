package org.undercap.model;

import java.util.Arrays;
import org.undercap.parameter.ParameterId;

/**
 * The state of one colony, or of many that are run side by side ("lanes"): adult workers by stage,
 * brood by daily cohort, mites on the bees and mother mites by cohort of sealed brood. Each array
 * has the colony as its innermost index.
 */
public final class ColonyLanes {
  final double[][] healthy;
  final double[][] weakened;
  final Cohorts workerEggs;
  final Cohorts workerLarvae;
  final Cohorts sealedWorkers;
  final Cohorts mothersInWorkers;
  final Cohorts droneEggs;
  final Cohorts droneLarvae;
  final Cohorts sealedDrones;
  final Cohorts mothersInDrones;
  final double[] phoretic;
  final double[] drones;
  final double[] queenQuality;
  private final int lanes;

  private ColonyLanes(int stages, int[] worker, int[] drone, int lanes) {
    this.lanes = lanes;
    healthy = new double[stages][lanes];
    weakened = new double[stages][lanes];
    workerEggs = new Cohorts(worker[0], lanes);
    workerLarvae = new Cohorts(worker[1], lanes);
    sealedWorkers = new Cohorts(worker[2], lanes);
    mothersInWorkers = new Cohorts(worker[2], lanes);
    droneEggs = new Cohorts(drone[0], lanes);
    droneLarvae = new Cohorts(drone[1], lanes);
    sealedDrones = new Cohorts(drone[2], lanes);
    mothersInDrones = new Cohorts(drone[2], lanes);
    phoretic = new double[lanes];
    drones = new double[lanes];
    queenQuality = new double[lanes];
    Arrays.fill(queenQuality, 1.0);
  }

  /**
   * Colonies without bees, brood or mites.
   *
   * @param parameters tell the number of colonies and the lengths of the stages
   * @return empty colonies
   */
  public static ColonyLanes empty(ModelParameters parameters) {
    return new ColonyLanes(
        parameters.sharedDays(ParameterId.ADULT_LIFE_STAGES)[0],
        parameters.sharedDays(ParameterId.BROOD_WORKER_DAYS),
        parameters.sharedDays(ParameterId.BROOD_DRONE_DAYS),
        parameters.lanes());
  }

  private ColonyLanes likeThis(int count) {
    return new ColonyLanes(
        healthy.length,
        new int[] {workerEggs.ages(), workerLarvae.ages(), sealedWorkers.ages()},
        new int[] {droneEggs.ages(), droneLarvae.ages(), sealedDrones.ages()},
        count);
  }

  /**
   * Copies of one colony side by side.
   *
   * @param lane the colony to copy
   * @param copies how many, at least 1
   * @return new state that shares nothing with this one
   */
  public ColonyLanes copies(int lane, int copies) {
    ColonyLanes result = likeThis(copies);
    for (int to = 0; to < copies; to++) {
      result.copyLane(this, lane, to);
    }
    return result;
  }

  /**
   * Copies of some colonies side by side.
   *
   * @param chosen the colonies to copy; one may be chosen more than once
   * @return new state that shares nothing with this one, one lane a choice
   */
  public ColonyLanes pick(int... chosen) {
    ColonyLanes result = likeThis(chosen.length);
    for (int to = 0; to < chosen.length; to++) {
      result.copyLane(this, chosen[to], to);
    }
    return result;
  }

  /**
   * A copy of all colonies.
   *
   * @return new state that shares nothing with this one
   */
  public ColonyLanes copy() {
    ColonyLanes result = likeThis(lanes);
    for (int lane = 0; lane < lanes; lane++) {
      result.copyLane(this, lane, lane);
    }
    return result;
  }

  private void copyLane(ColonyLanes from, int fromLane, int lane) {
    for (int stage = 0; stage < healthy.length; stage++) {
      healthy[stage][lane] = from.healthy[stage][fromLane];
      weakened[stage][lane] = from.weakened[stage][fromLane];
    }
    Cohorts[] mine = cohorts();
    Cohorts[] theirs = from.cohorts();
    for (int i = 0; i < mine.length; i++) {
      mine[i].copyLane(theirs[i], fromLane, lane);
    }
    phoretic[lane] = from.phoretic[fromLane];
    drones[lane] = from.drones[fromLane];
    queenQuality[lane] = from.queenQuality[fromLane];
  }

  private Cohorts[] cohorts() {
    return new Cohorts[] {
      workerEggs,
      workerLarvae,
      sealedWorkers,
      droneEggs,
      droneLarvae,
      sealedDrones,
      mothersInWorkers,
      mothersInDrones
    };
  }

  /**
   * Number of colonies side by side.
   *
   * @return number of lanes, at least 1
   */
  public int lanes() {
    return lanes;
  }

  /**
   * One part of the state.
   *
   * @param part which
   * @param lane the colony
   * @return sum over its ages or stages (bees, cells or mites)
   */
  public double total(Part part, int lane) {
    return switch (part) {
      case HEALTHY_ADULTS -> sum(healthy, lane);
      case WEAKENED_ADULTS -> sum(weakened, lane);
      case WORKER_EGGS -> workerEggs.total(lane);
      case WORKER_LARVAE -> workerLarvae.total(lane);
      case SEALED_WORKERS -> sealedWorkers.total(lane);
      case DRONE_EGGS -> droneEggs.total(lane);
      case DRONE_LARVAE -> droneLarvae.total(lane);
      case SEALED_DRONES -> sealedDrones.total(lane);
      case MITES_ON_BEES -> phoretic[lane];
      case MITES_IN_WORKER_CELLS -> mothersInWorkers.total(lane);
      case MITES_IN_DRONE_CELLS -> mothersInDrones.total(lane);
      case ADULT_DRONES -> drones[lane];
    };
  }

  /**
   * Adult workers, healthy and weakened.
   *
   * @param lane the colony
   * @return adults (bees)
   */
  public double adults(int lane) {
    return sum(healthy, lane) + sum(weakened, lane);
  }

  /**
   * All brood: eggs, larvae and sealed cells of workers and drones.
   *
   * @param lane the colony
   * @return brood (cells)
   */
  public double brood(int lane) {
    return workerEggs.total(lane)
        + workerLarvae.total(lane)
        + sealedWorkers.total(lane)
        + droneEggs.total(lane)
        + droneLarvae.total(lane)
        + sealedDrones.total(lane);
  }

  /**
   * All mites: on the bees and mothers under the cappings.
   *
   * @param lane the colony
   * @return mites
   */
  public double mites(int lane) {
    return phoretic[lane] + mothersInWorkers.total(lane) + mothersInDrones.total(lane);
  }

  /**
   * The mites under the cappings by age of the sealed worker brood.
   *
   * @return mother mites, a row a cohort, youngest first
   */
  public Cohorts mothersInWorkerCells() {
    return mothersInWorkers;
  }

  /**
   * The sealed worker brood by age.
   *
   * @return cells, a row a cohort, youngest first
   */
  public Cohorts sealedWorkerCells() {
    return sealedWorkers;
  }

  /**
   * The mites under the cappings by age of the sealed drone brood.
   *
   * @return mother mites, a row a cohort, youngest first
   */
  public Cohorts mothersInDroneCells() {
    return mothersInDrones;
  }

  /**
   * The sealed drone brood by age.
   *
   * @return cells, a row a cohort, youngest first
   */
  public Cohorts sealedDroneCells() {
    return sealedDrones;
  }

  /**
   * Sets one part of the state by age or stage, youngest first.
   *
   * @param part which
   * @param lane the colony
   * @param youngestFirst numbers (bees, cells or mites), each finite and at least 0
   * @throws IllegalArgumentException if a number is negative or not finite, or their count does not
   *     fit
   */
  public void set(Part part, int lane, double... youngestFirst) {
    for (double x : youngestFirst) {
      if (!(x >= 0 && x < Double.POSITIVE_INFINITY)) {
        throw new IllegalArgumentException(
            part + ": " + x + " must be a finite number of at least 0");
      }
    }
    switch (part) {
      case HEALTHY_ADULTS -> setStages(healthy, lane, youngestFirst);
      case WEAKENED_ADULTS -> setStages(weakened, lane, youngestFirst);
      case WORKER_EGGS -> workerEggs.set(lane, youngestFirst);
      case WORKER_LARVAE -> workerLarvae.set(lane, youngestFirst);
      case SEALED_WORKERS -> sealedWorkers.set(lane, youngestFirst);
      case DRONE_EGGS -> droneEggs.set(lane, youngestFirst);
      case DRONE_LARVAE -> droneLarvae.set(lane, youngestFirst);
      case SEALED_DRONES -> sealedDrones.set(lane, youngestFirst);
      case MITES_IN_WORKER_CELLS -> mothersInWorkers.set(lane, youngestFirst);
      case MITES_IN_DRONE_CELLS -> mothersInDrones.set(lane, youngestFirst);
      case MITES_ON_BEES -> phoretic[lane] = youngestFirst[0];
      case ADULT_DRONES -> drones[lane] = youngestFirst[0];
    }
  }

  /**
   * Brings a colony to given numbers of bees, brood and mites and keeps its shape: the ages of the
   * bees and of the brood, and how many mites sit in a cell for each mite on a bee. More brood for
   * each bee so means a larger share of the mites under the cappings, and without brood all mites
   * are on the bees.
   *
   * @param lane the colony
   * @param adults adult workers (bees), above 0
   * @param brood all brood (cells), at least 0
   * @param mites all mites (mites), at least 0
   * @throws IllegalArgumentException if a number is out of range, or the colony has no bees, or has
   *     none of the brood or mites that are asked for
   */
  public void scaleTo(int lane, double adults, double brood, double mites) {
    double beesBefore = adults(lane);
    double broodBefore = brood(lane);
    double beeFactor = factor(adults, beesBefore, "adult bees");
    double broodFactor = factor(brood, broodBefore, "brood cells");
    for (int stage = 0; stage < healthy.length; stage++) {
      healthy[stage][lane] *= beeFactor;
      weakened[stage][lane] *= beeFactor;
    }
    drones[lane] *= beeFactor;
    for (Cohorts c :
        new Cohorts[] {
          workerEggs, workerLarvae, sealedWorkers, droneEggs, droneLarvae, sealedDrones
        }) {
      c.scaleLane(lane, broodFactor);
    }
    mothersInWorkers.scaleLane(lane, broodFactor);
    mothersInDrones.scaleLane(lane, broodFactor);
    phoretic[lane] *= beeFactor;
    scaleMites(lane, mites);
  }

  /**
   * Brings a colony to a given number of mites, wherever they sit.
   *
   * @param lane the colony
   * @param mites all mites (mites), at least 0
   * @throws IllegalArgumentException if the number is out of range, or the colony has no mites to
   *     scale
   */
  public void scaleMites(int lane, double mites) {
    double f = factor(mites, mites(lane), "mites");
    mothersInWorkers.scaleLane(lane, f);
    mothersInDrones.scaleLane(lane, f);
    phoretic[lane] *= f;
  }

  /**
   * Puts mites on the bees.
   *
   * @param lane the colony
   * @param mites how many more (mites), finite and at least 0
   * @throws IllegalArgumentException if the number is out of range
   */
  public void addMitesOnBees(int lane, double mites) {
    set(Part.MITES_ON_BEES, lane, phoretic[lane] + mites);
  }

  /**
   * Sets how well the queen lays.
   *
   * @param lane the colony
   * @param quality laying against the potential of season and place (ratio, at least 0; 1 is good,
   *     and what a new state has)
   * @throws IllegalArgumentException if the number is out of range
   */
  public void setQueenQuality(int lane, double quality) {
    if (!(quality >= 0 && quality < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "queen quality " + quality + " must be a finite number of at least 0");
    }
    queenQuality[lane] = quality;
  }

  private static double factor(double wanted, double present, String what) {
    if (!(wanted >= 0 && wanted < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          what + " " + wanted + " must be a finite number of at least 0");
    }
    if (wanted == 0) {
      return 0;
    }
    if (!(present > 0)) {
      throw new IllegalArgumentException(
          wanted + " " + what + " asked for, but a colony of this season has none to scale");
    }
    return wanted / present;
  }

  void clearLane(int lane) {
    for (int stage = 0; stage < healthy.length; stage++) {
      healthy[stage][lane] = 0;
      weakened[stage][lane] = 0;
    }
    for (Cohorts c : cohorts()) {
      c.clearLane(lane);
    }
    phoretic[lane] = 0;
    drones[lane] = 0;
  }

  void adultsTo(double[] sum) {
    Arrays.fill(sum, 0.0);
    for (int stage = 0; stage < healthy.length; stage++) {
      double[] well = healthy[stage];
      double[] weak = weakened[stage];
      for (int lane = 0; lane < sum.length; lane++) {
        sum[lane] += well[lane] + weak[lane];
      }
    }
  }

  void mitesTo(double[] sum) {
    System.arraycopy(phoretic, 0, sum, 0, sum.length);
    mothersInWorkers.addTo(sum);
    mothersInDrones.addTo(sum);
  }

  private static double sum(double[][] rows, int lane) {
    double sum = 0;
    for (double[] row : rows) {
      sum += row[lane];
    }
    return sum;
  }

  private static void setStages(double[][] rows, int lane, double[] values) {
    if (values.length != rows.length) {
      throw new IllegalArgumentException(
          values.length + " stages given, " + rows.length + " expected");
    }
    for (int stage = 0; stage < rows.length; stage++) {
      rows[stage][lane] = values[stage];
    }
  }
}
