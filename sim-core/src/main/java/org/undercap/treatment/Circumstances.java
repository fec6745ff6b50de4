package org.undercap.treatment;

import java.util.Map;
import org.undercap.internal.Checks;
import org.undercap.parameter.ParameterSet;

/**
 * What a treatment meets in a hive and place.
 *
 * @param openFloor whether the floor is open, which weakens what evaporates
 * @param humid whether the place is humid, which weakens some strips
 * @param resistantShares share of resistant mites by class of substances (fraction)
 * @param peakEggs largest potential laying of the year (eggs per day)
 * @param parameters values of the parameters
 */
public record Circumstances(
    boolean openFloor,
    boolean humid,
    Map<String, Double> resistantShares,
    double peakEggs,
    ParameterSet parameters) {
  /**
   * Checks the shares.
   *
   * @param openFloor whether the floor is open
   * @param humid whether the place is humid
   * @param resistantShares each 0 to 1
   * @param peakEggs at least 0 (eggs per day)
   * @param parameters values of the parameters
   * @throws IllegalArgumentException if a number is out of range
   */
  public Circumstances {
    resistantShares = Map.copyOf(resistantShares);
    resistantShares.forEach(
        (substance, share) -> Checks.share(share, "share of mites resistant to " + substance));
    Checks.notNegative(peakEggs, "peak laying (eggs per day)");
  }

  /**
   * A closed floor in a place that is not humid, with susceptible mites.
   *
   * @param peakEggs largest potential laying of the year (eggs per day)
   * @return circumstances with the shipped parameters
   */
  public static Circumstances usual(double peakEggs) {
    return new Circumstances(false, false, Map.of(), peakEggs, ParameterSet.shipped());
  }
}
