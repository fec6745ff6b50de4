package org.undercap.model;

/**
 * What season and neighbours bring on one day. Filled by the caller before each step; the arrays
 * are not copied.
 */
public final class DayDrivers {
  double potentialEggs;
  double droneShare;
  double[] temperature = {};
  double[] arriving = {};

  /** Drivers to be set before the first day. */
  public DayDrivers() {}

  /**
   * Sets the drivers of the day.
   *
   * @param potentialEggs eggs that a queen of quality 1 in a large colony would lay (eggs per day),
   *     at least 0
   * @param droneShare share of the eggs laid into drone cells in a strong colony (fraction, 0 to 1)
   * @param temperature daily mean outside temperature (C), one value a colony
   * @param arriving mites arriving on the bees (mites per day), one value a colony, at least 0
   */
  public void set(
      double potentialEggs, double droneShare, double[] temperature, double[] arriving) {
    this.potentialEggs = potentialEggs;
    this.droneShare = droneShare;
    this.temperature = temperature;
    this.arriving = arriving;
  }

  /**
   * Temperature of the day.
   *
   * @param lane the colony
   * @return daily mean outside temperature (C)
   */
  public double temperature(int lane) {
    return temperature[lane];
  }
}
