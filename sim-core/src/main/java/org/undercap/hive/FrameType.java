package org.undercap.hive;

/** A frame of a hive: what one side of its comb holds. */
public record FrameType(String id, double combPerSide, double cellsPerSide, double beesPerSide) {

  /**
   * Checks the sizes.
   *
   * @param id name in files
   * @param combPerSide comb inside the bars (dm2 per side)
   * @param cellsPerSide worker cells (cells per side)
   * @param beesPerSide bees on a fully covered side (bees per side)
   * @throws IllegalArgumentException if one is not finite and above 0
   */
  public FrameType {
    checkPositive(id, "comb per side", combPerSide);
    checkPositive(id, "cells per side", cellsPerSide);
    checkPositive(id, "bees per side", beesPerSide);
  }

  /**
   * Bees on a number of fully covered frames, seams or sides.
   *
   * @param amount how many (in {@code unit}, at least 0)
   * @param unit what was counted
   * @return the bees (adults)
   * @throws IllegalArgumentException if the amount is negative or not finite
   */
  public double bees(double amount, CombUnit unit) {
    return checkAmount(amount) * unit.sides() * beesPerSide;
  }

  /**
   * Worker cells on a number of frames or sides that are full of brood.
   *
   * @param amount how many (in {@code unit}, at least 0)
   * @param unit what was counted; brood is not counted in seams
   * @return the cells
   * @throws IllegalArgumentException if the amount is negative or not finite, or the unit is {@link
   *     CombUnit#SEAMS}
   */
  public double cells(double amount, CombUnit unit) {
    if (unit == CombUnit.SEAMS) {
      throw new IllegalArgumentException("brood is counted in frames or sides, not in seams");
    }
    return checkAmount(amount) * unit.sides() * cellsPerSide;
  }

  private static double checkAmount(double amount) {
    if (!(amount >= 0 && Double.isFinite(amount))) {
      throw new IllegalArgumentException("amount " + amount + " must be finite and >= 0");
    }
    return amount;
  }

  private static void checkPositive(String id, String what, double value) {
    if (!(value > 0 && Double.isFinite(value))) {
      throw new IllegalArgumentException(
          what + " of frame " + id + " is " + value + ", must be finite and > 0");
    }
  }
}
