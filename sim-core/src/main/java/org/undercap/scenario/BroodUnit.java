package org.undercap.scenario;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** In what a keeper says how much brood there is. */
public enum BroodUnit {
  /** Frames full of brood on both sides. */
  FRAMES,
  /** Single comb sides full of brood. */
  SIDES,
  /** Areas of the size of a hand. */
  HANDS,
  /** Area (cm2). */
  SQUARE_CENTIMETRES,
  /** Area (dm2). */
  SQUARE_DECIMETRES,
  /** Area (square inches). */
  SQUARE_INCHES,
  /** Single cells. */
  CELLS;

  private static final Set<String> NONE =
      Set.of("none", "none seen", "no brood", "no brood seen", "0");
  private static final UnitWords<BroodUnit> WORDS =
      UnitWords.<BroodUnit>named(
              "3 frames, 5 sides, 12 hands, 900 cm2, 140 sq in, 9000 cells or none seen")
          .fractions()
          .unit(FRAMES, "frames", "frame", "frames of brood", "combs", "comb")
          .unit(SIDES, "sides", "side", "sides of brood", "comb sides")
          .unit(HANDS, "hands", "hand", "hands of brood")
          .unit(SQUARE_CENTIMETRES, "cm2", "cm^2", "cm\u00b2", "sq cm", "square centimetres")
          .unit(SQUARE_DECIMETRES, "dm2", "dm^2", "dm\u00b2", "sq dm", "square decimetres")
          .unit(
              SQUARE_INCHES,
              "sq in",
              "sq. in.",
              "sq inches",
              "square inches",
              "in2",
              "in^2",
              "in\u00b2")
          .unit(CELLS, "cells", "cell", "cells of brood", "brood cells");

  /**
   * Reads an amount of brood.
   *
   * @param text as typed: {@code 3 frames}, {@code 3 frames two thirds full}, {@code none seen}
   * @return the amount, of full frames or sides; none seen is no cells
   * @throws BadValueException if it is not a number with one of these units
   */
  public static Amount<BroodUnit> parse(String text) throws BadValueException {
    if (NONE.contains(text.trim().toLowerCase(Locale.ROOT))) {
      return new Amount<>(0, CELLS);
    }
    Optional<BroodFullness.Said> said = BroodFullness.said(text);
    if (said.isEmpty()) {
      return WORDS.parse(text);
    }
    Amount<BroodUnit> combs = WORDS.parse(said.get().combs());
    return new Amount<>(combs.number() * BroodFullness.parse(said.get().fullness()), combs.unit());
  }
}
