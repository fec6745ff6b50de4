package org.undercap.treatment;

import org.undercap.internal.Checks;

/**
 * How a treatment works: when it acts, how temperature changes that, how strongly it kills, where
 * it reaches, and what it does to bees and brood. Phoretic-only treatments have an in-cell ratio of
 * 0; brood-penetrating ones have more.
 *
 * @param release how much acts on each day after an application
 * @param temperature how the temperature changes it
 * @param response from the amount to the hazard of the mites on bees
 * @param inCellRatio hazard of the mites under the cappings against that on the bees (ratio)
 * @param sideEffects what it does to bees and brood
 */
public record EfficacyProfile(
    Release release,
    TemperatureResponse temperature,
    Response response,
    double inCellRatio,
    SideEffects sideEffects) {
  /**
   * Checks the ratio.
   *
   * @param release how much acts on each day after an application
   * @param temperature how the temperature changes it
   * @param response from the amount to the hazard of the mites on bees
   * @param inCellRatio at least 0
   * @param sideEffects what it does to bees and brood
   * @throws IllegalArgumentException if the ratio is out of range
   */
  public EfficacyProfile {
    Checks.notNegative(inCellRatio, "in-cell ratio");
  }

  /**
   * Whether it works by evaporating, so that an open floor weakens it.
   *
   * @return true if the temperature matters through vapour
   */
  public boolean evaporates() {
    return temperature.evaporates();
  }

  /**
   * Whether it reaches mites under the cappings.
   *
   * @return true if the in-cell ratio is above 0
   */
  public boolean reachesSealedBrood() {
    return inCellRatio > 0;
  }

  /**
   * Whether it acts slowly over weeks, so that mites that leave the cells or arrive later meet it
   * too.
   *
   * @return true if the release is not a pulse
   */
  public boolean slowRelease() {
    return !(release instanceof Release.Pulse);
  }
}
