package org.undercap.hive;

/** In what a keeper counts bees or brood. */
public enum CombUnit {
  /** Combs that are covered on both sides. */
  FRAMES(2),
  /** Spaces between two combs, full of bees, so that the two sides that face are covered. */
  SEAMS(2),
  /** Single sides of combs. */
  SIDES(1);

  private final int sides;

  CombUnit(int sides) {
    this.sides = sides;
  }

  /**
   * Comb sides of one unit.
   *
   * @return the number of sides
   */
  public int sides() {
    return sides;
  }
}
