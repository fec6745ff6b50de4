package org.undercap.cli.chart;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.OptionalInt;

/** Daily course of one plan, ready to draw: one value a day, the first on the start date. */
@SuppressWarnings("ArrayRecordComponent") // copied on the way in and out; never compared
public record Course(
    String plan,
    LocalDate start,
    double[] mitesOnBees,
    double[] mitesInCells,
    double[] adults,
    double[] brood,
    OptionalInt lostOnDay) {

  /**
   * Copies and checks the values.
   *
   * @param plan name of the plan in words
   * @param start date of the first value
   * @param mitesOnBees mites on adult bees (mites), at least 0
   * @param mitesInCells mites in sealed brood (mites), at least 0
   * @param adults adult bees (bees), at least 0
   * @param brood brood cells (cells), at least 0
   * @param lostOnDay day on which the colony was lost (days after the start), empty if it lived;
   *     values after that day are not drawn
   * @throws IllegalArgumentException if the lengths differ, there is no day, a value is negative,
   *     infinite or not a number, or the lost day lies outside the course
   */
  public Course {
    if (plan.isBlank()) {
      throw new IllegalArgumentException("plan needs a name");
    }
    mitesOnBees = checked("mites on bees", mitesOnBees, mitesOnBees.length);
    mitesInCells = checked("mites in cells", mitesInCells, mitesOnBees.length);
    adults = checked("adults", adults, mitesOnBees.length);
    brood = checked("brood", brood, mitesOnBees.length);
    int lost = lostOnDay.orElse(0);
    if (!(lost >= 0 && lost < mitesOnBees.length)) {
      throw new IllegalArgumentException(
          "lost day " + lost + " must be in [0, " + (mitesOnBees.length - 1) + "] (days)");
    }
  }

  private static double[] checked(String name, double[] values, int length) {
    if (values.length == 0 || values.length != length) {
      throw new IllegalArgumentException(
          name + " has " + values.length + " days, must have " + Math.max(length, 1));
    }
    for (double value : values) {
      if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
        throw new IllegalArgumentException(name + " " + value + " must be finite and at least 0");
      }
    }
    return values.clone();
  }

  /**
   * Mites on adult bees.
   *
   * @return a copy (mites)
   */
  @Override
  public double[] mitesOnBees() {
    return mitesOnBees.clone();
  }

  /**
   * Mites in sealed brood.
   *
   * @return a copy (mites)
   */
  @Override
  public double[] mitesInCells() {
    return mitesInCells.clone();
  }

  /**
   * Adult bees.
   *
   * @return a copy (bees)
   */
  @Override
  public double[] adults() {
    return adults.clone();
  }

  /**
   * Brood cells.
   *
   * @return a copy (cells)
   */
  @Override
  public double[] brood() {
    return brood.clone();
  }

  /**
   * Number of values.
   *
   * @return at least 1 (days)
   */
  public int days() {
    return mitesOnBees.length;
  }

  /** Number of values to draw: up to the lost day, which is the last one shown (days). */
  int shownDays() {
    return lostOnDay.isPresent() ? lostOnDay.getAsInt() + 1 : days();
  }

  /** Date of the last value, drawn or not. */
  LocalDate end() {
    return start.plusDays(days() - 1L);
  }

  /** The part of a daily series that is drawn. */
  double[] shown(double[] values) {
    return Arrays.copyOf(values, shownDays());
  }

  /** Mites on bees and in sealed brood together (mites). */
  double[] allMites() {
    double[] sum = mitesOnBees.clone();
    for (int day = 0; day < sum.length; day++) {
      sum[day] += mitesInCells[day];
    }
    return sum;
  }

  /** Mites on bees per 100 adult bees; not a number on days without bees. */
  double[] mitesPer100Bees() {
    double[] share = new double[days()];
    for (int day = 0; day < share.length; day++) {
      share[day] = adults[day] > 0 ? 100 * mitesOnBees[day] / adults[day] : Double.NaN;
    }
    return share;
  }
}
