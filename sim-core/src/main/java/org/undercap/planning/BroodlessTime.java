package org.undercap.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicIntegerArray;
import java.util.stream.IntStream;
import org.undercap.ensemble.Ensemble;
import org.undercap.model.Flow;
import org.undercap.model.Part;
import org.undercap.parameter.ParameterId;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;
import org.undercap.simulation.SimulationDay;

/**
 * When the colony is without brood, so that one treatment with oxalic acid reaches nearly all
 * mites.
 *
 * @param from the first day looked at, when winter bees begin to be reared
 * @param chances share of the living colonies that have no brood, day by day (fractions)
 * @param wanted chance from which on a day counts as broodless (fraction)
 */
public record BroodlessTime(LocalDate from, List<Double> chances, double wanted) {
  private static final List<Part> BROOD =
      List.of(
          Part.WORKER_EGGS,
          Part.WORKER_LARVAE,
          Part.SEALED_WORKERS,
          Part.DRONE_EGGS,
          Part.DRONE_LARVAE,
          Part.SEALED_DRONES);

  /** Chances nearer to each other than this cannot be told apart (fraction). */
  private static final double EQUAL = 0.02;

  /**
   * Copies the list.
   *
   * @param from the first day looked at
   * @param chances share of the living colonies without brood, one a day
   * @param wanted chance from which on a day counts as broodless (fraction)
   */
  public BroodlessTime {
    chances = List.copyOf(chances);
  }

  /**
   * Looks at untreated colonies.
   *
   * @param scenario the scenario with its whole run
   * @param ensemble its members
   * @return the chances from the time on in which winter bees are reared
   */
  static BroodlessTime of(Scenario scenario, Ensemble ensemble) {
    double few = scenario.parameters().value(ParameterId.TIMING_BROODLESS);
    AtomicIntegerArray living = new AtomicIntegerArray(scenario.days());
    AtomicIntegerArray broodless = new AtomicIntegerArray(scenario.days());
    ensemble.watch(
        Plan.doNothing(),
        (day, first) -> {
          for (int lane = 0; lane < day.lanes(); lane++) {
            if (day.flows().of(Flow.ADULTS, lane) > 0) {
              living.incrementAndGet(day.index());
              if (brood(day, lane) < few) {
                broodless.incrementAndGet(day.index());
              }
            }
          }
        });
    LocalDate from = ensemble.dates().winterBeesFrom();
    LocalDate first = from.isBefore(scenario.start()) ? scenario.start() : from;
    int skipped = (int) (first.toEpochDay() - scenario.start().toEpochDay());
    List<Double> chances = new ArrayList<>();
    for (int day = skipped; day < scenario.days(); day++) {
      int alive = living.get(day);
      chances.add(alive == 0 ? 0 : (double) broodless.get(day) / alive);
    }
    return new BroodlessTime(
        first, chances, scenario.parameters().value(ParameterId.TIMING_BROODLESS_CHANCE));
  }

  private static double brood(SimulationDay day, int lane) {
    double cells = 0;
    for (Part part : BROOD) {
      cells += day.colony().total(part, lane);
    }
    return cells;
  }

  /**
   * The chance of no brood on a day.
   *
   * @param day the day, not before the first one looked at
   * @return share of the living colonies (fraction)
   * @throws IndexOutOfBoundsException if the day was not looked at
   */
  public double chanceOn(LocalDate day) {
    return chances.get((int) (day.toEpochDay() - from.toEpochDay()));
  }

  /**
   * The highest chance of any day.
   *
   * @return share of the colonies (fraction)
   */
  public double bestChance() {
    return chances.stream().mapToDouble(Double::doubleValue).max().orElse(0);
  }

  /**
   * The first day on which the chance of no brood is as high as it gets.
   *
   * @return the day; empty if no day counts as broodless
   */
  public Optional<LocalDate> best() {
    double most = bestChance();
    return most < wanted ? Optional.empty() : Optional.of(from.plusDays(firstFrom(most - EQUAL)));
  }

  /**
   * The first day that counts as broodless.
   *
   * @return the day; empty if there is none
   */
  public Optional<LocalDate> first() {
    return bestChance() < wanted ? Optional.empty() : Optional.of(from.plusDays(firstFrom(wanted)));
  }

  /**
   * The last day in a row from the first one that counts as broodless.
   *
   * @return the day; empty if there is none
   */
  public Optional<LocalDate> last() {
    return first()
        .map(
            day -> {
              int begin = (int) (day.toEpochDay() - from.toEpochDay());
              int end = begin;
              while (end + 1 < chances.size() && chances.get(end + 1) >= wanted) {
                end++;
              }
              return from.plusDays(end);
            });
  }

  private int firstFrom(double chance) {
    return IntStream.range(0, chances.size())
        .filter(day -> chances.get(day) >= chance)
        .findFirst()
        .orElseThrow();
  }
}
