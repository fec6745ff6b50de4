package org.undercap.calibration;

import java.time.LocalDate;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.undercap.climate.Climate;
import org.undercap.internal.Checks;
import org.undercap.monitoring.Board;
import org.undercap.monitoring.Count;
import org.undercap.monitoring.DroneCells;
import org.undercap.monitoring.Wash;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;
import org.undercap.simulation.Intervention;
import org.undercap.treatment.Interventions;

/**
 * A colony in which mites were counted over time. Bees and brood of the first day are taken as
 * known; its mites are not.
 *
 * @param name name of the colony, unlike that of the others
 * @param start place, first day, and bees and brood on it
 * @param arrivals mites that arrive on a date (mites per day)
 * @param done what the keeper did
 * @param counts counts from the first day on
 * @param totals all mites on dates, if a study found them
 */
public record ObservedColony(
    String name,
    Start start,
    ToDoubleFunction<LocalDate> arrivals,
    List<Intervention> done,
    List<Count> counts,
    List<TotalMites> totals) {

  /**
   * Checks numbers and dates.
   *
   * @param name name of the colony
   * @param start place, first day, and bees and brood on it
   * @param arrivals finite and at least 0 on each date (mites per day)
   * @param done what the keeper did
   * @param counts none from before the first day, boards not begun before it
   * @param totals none from before the first day
   * @throws IllegalArgumentException if a count is too early
   */
  public ObservedColony {
    done = List.copyOf(done);
    counts = List.copyOf(counts);
    totals = List.copyOf(totals);
    for (Count count : counts) {
      LocalDate from =
          count instanceof Board board ? board.date().minusDays(board.days()) : count.date();
      requireNotBefore(start.date(), from, name);
    }
    for (TotalMites total : totals) {
      requireNotBefore(start.date(), total.date(), name);
    }
  }

  private static void requireNotBefore(LocalDate start, LocalDate date, String name) {
    if (date.isBefore(start)) {
      throw new IllegalArgumentException(
          "colony "
              + name
              + ": a count begins on "
              + date
              + ", before the first day "
              + start
              + " of the run; begin the run earlier");
    }
  }

  /**
   * How a colony begins.
   *
   * @param climate its place
   * @param date first day of the run
   * @param adults adult workers on the first day (bees)
   * @param broodCells eggs, larvae and sealed brood on the first day (cells)
   * @param queenQuality laying against a good queen (ratio)
   */
  public record Start(
      Climate climate, LocalDate date, double adults, double broodCells, double queenQuality) {
    /**
     * Checks the numbers.
     *
     * @param climate its place
     * @param date first day of the run
     * @param adults above 0 (bees)
     * @param broodCells at least 0 (cells)
     * @param queenQuality at least 0 (ratio)
     * @throws IllegalArgumentException if a number is out of range
     */
    public Start {
      Checks.positive(adults, "adult bees");
      Checks.notNegative(broodCells, "brood (cells)");
      Checks.notNegative(queenQuality, "queen quality");
    }
  }

  /**
   * The colony of a scenario file with counts.
   *
   * @param scenario place and colony
   * @param plan what was done
   * @param counts its counts
   * @return the colony
   * @throws IllegalArgumentException if a count begins before the first day
   */
  public static ObservedColony of(Scenario scenario, Plan plan, List<Count> counts) {
    return new ObservedColony(
        scenario.name(),
        new Start(
            scenario.climate(),
            scenario.start(),
            scenario.hive().bees(),
            scenario.hive().broodCells(),
            scenario.hive().queenQuality()),
        scenario::arrivalsOn,
        List.copyOf(Interventions.of(scenario.stepsUnder(plan), scenario.circumstances())),
        counts,
        List.of());
  }

  boolean hasSamples() {
    return counts.stream().anyMatch(c -> c instanceof Wash || c instanceof DroneCells);
  }

  boolean hasBoards() {
    return counts.stream().anyMatch(Board.class::isInstance);
  }

  /**
   * This colony with other counts.
   *
   * @param otherCounts counts
   * @param otherTotals all mites on dates
   * @return the changed copy
   * @throws IllegalArgumentException if one is too early
   */
  public ObservedColony withCounts(List<Count> otherCounts, List<TotalMites> otherTotals) {
    return new ObservedColony(name, start, arrivals, done, otherCounts, otherTotals);
  }

  /**
   * This colony with its counts up to a date, to fit them.
   *
   * @param last last date
   * @return the changed copy
   */
  public ObservedColony until(LocalDate last) {
    return withCounts(
        counts.stream().filter(count -> !count.date().isAfter(last)).toList(),
        totals.stream().filter(total -> !total.date().isAfter(last)).toList());
  }

  /**
   * This colony with its counts after a date, to foretell them.
   *
   * @param last last date that was fitted
   * @return the changed copy
   */
  public ObservedColony after(LocalDate last) {
    return withCounts(
        counts.stream().filter(count -> count.date().isAfter(last)).toList(),
        totals.stream().filter(total -> total.date().isAfter(last)).toList());
  }
}
