package org.undercap.climate;

/** What a place does to a colony through the year. */
public record Climate(
    String id,
    String description,
    Hemisphere hemisphere,
    TemperatureCourse temperature,
    MonthlyTable eggs,
    MonthlyTable droneShare) {

  /**
   * Checks the tables.
   *
   * @param id name in files
   * @param description name for people; tells the place for which the tables were made
   * @param hemisphere hemisphere in whose months the tables are given
   * @param temperature daily mean outside temperature
   * @param eggs eggs that a good queen in a very large colony lays (eggs per day), each at least 0
   * @param droneShare share of the eggs laid into drone cells in a large colony (fraction, 0 to 1)
   * @throws IllegalArgumentException if a number of eggs is negative, or a share of drone eggs
   *     outside 0 to 1
   */
  public Climate {
    for (int month = 0; month < eggs.values().size(); month++) {
      double laid = eggs.values().get(month);
      if (!(laid >= 0)) {
        throw new IllegalArgumentException(
            "eggs of month " + (month + 1) + " are " + laid + " per day, must be >= 0");
      }
      double share = droneShare.values().get(month);
      if (!(share >= 0 && share <= 1)) {
        throw new IllegalArgumentException(
            "drone share of month " + (month + 1) + " is " + share + ", must be in [0, 1]");
      }
    }
  }

  /**
   * Potential eggs on a day.
   *
   * @param doy season day (1 to 365)
   * @return eggs that a good queen in a very large colony lays (eggs per day)
   * @throws IllegalArgumentException if the day is not in 1 to 365
   */
  public double potentialEggs(int doy) {
    return eggs.at(doy);
  }

  /**
   * Share of eggs laid into drone cells on a day by a large colony.
   *
   * @param doy season day (1 to 365)
   * @return the share (fraction)
   * @throws IllegalArgumentException if the day is not in 1 to 365
   */
  public double droneShare(int doy) {
    return droneShare.at(doy);
  }

  /**
   * This climate with another temperature.
   *
   * @param other daily mean outside temperature
   * @return the changed copy
   */
  public Climate withTemperature(TemperatureCourse other) {
    return new Climate(id, description, hemisphere, other, eggs, droneShare);
  }

  /**
   * This climate with another table of laying.
   *
   * @param other potential eggs (eggs per day)
   * @return the changed copy
   */
  public Climate withEggs(MonthlyTable other) {
    return new Climate(id, description, hemisphere, temperature, other, droneShare);
  }

  /**
   * This climate with another table of drone eggs.
   *
   * @param other share of eggs laid into drone cells (fraction)
   * @return the changed copy
   */
  public Climate withDroneShare(MonthlyTable other) {
    return new Climate(id, description, hemisphere, temperature, eggs, other);
  }

  /**
   * The like climate of the other hemisphere: every table half a year later. Name and description
   * stay, and so do temperatures that were measured on dates.
   *
   * @return the mirrored copy
   */
  public Climate mirrored() {
    Hemisphere other = hemisphere == Hemisphere.NORTH ? Hemisphere.SOUTH : Hemisphere.NORTH;
    return new Climate(
        id,
        description,
        other,
        temperature.mirrored(),
        eggs.shiftedHalfAYear(),
        droneShare.shiftedHalfAYear());
  }

  /**
   * This climate on a given hemisphere, mirrored if need be.
   *
   * @param wanted the hemisphere
   * @return this climate, or its mirrored copy
   */
  public Climate in(Hemisphere wanted) {
    return wanted == hemisphere ? this : mirrored();
  }
}
