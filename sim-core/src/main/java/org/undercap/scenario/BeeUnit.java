package org.undercap.scenario;

/** In what a keeper says how many bees there are. */
public enum BeeUnit {
  /** Frames covered with bees on both sides. */
  FRAMES,
  /** Spaces between two combs, full of bees. */
  SEAMS,
  /** Single comb sides covered with bees. */
  SIDES,
  /** Brood boxes full of bees. */
  BOXES,
  /** Weight of the bees (pounds). */
  POUNDS,
  /** Weight of the bees (kg). */
  KILOGRAMS,
  /** Single bees. */
  BEES;

  private static final UnitWords<BeeUnit> WORDS =
      UnitWords.<BeeUnit>named("9 frames, 11 seams, 17 sides, 1.5 boxes, 4 lb or 18000 bees")
          .plain(BEES)
          .fractions()
          .unit(FRAMES, "frames", "frame", "frames of bees", "combs", "comb")
          .unit(SEAMS, "seams", "seam", "seams of bees")
          .unit(SIDES, "sides", "side", "sides of bees", "comb sides")
          .unit(BOXES, "boxes", "box", "boxes of bees", "brood boxes", "brood box")
          .unit(POUNDS, "lb", "lbs", "pounds", "pound", "lb of bees", "pounds of bees")
          .unit(KILOGRAMS, "kg", "kilograms", "kilogram", "kg of bees")
          .unit(BEES, "bees", "bee");

  /**
   * Reads an amount of bees.
   *
   * @param text as typed: {@code 9 frames}, {@code 18000}
   * @return the amount
   * @throws BadValueException if it is not a number with one of these units
   */
  public static Amount<BeeUnit> parse(String text) throws BadValueException {
    return WORDS.parse(text);
  }
}
