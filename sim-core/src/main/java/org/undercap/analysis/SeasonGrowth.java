package org.undercap.analysis;

import java.util.OptionalDouble;
import org.undercap.internal.Checks;

/**
 * How the mites of an untreated colony grow over a season.
 *
 * @param rate slope of the logarithm of all mites against time while there is much brood (per day)
 * @param multiplication all mites at the end of that time for each one at its begin (ratio)
 * @param autumnPerWinterMite all mites in autumn for each one alive at the end of winter (ratio)
 */
public record SeasonGrowth(double rate, double multiplication, double autumnPerWinterMite) {

  /**
   * Checks the numbers.
   *
   * @param rate finite
   * @param multiplication at least 0
   * @param autumnPerWinterMite at least 0
   * @throws IllegalArgumentException if a number is out of range
   */
  public SeasonGrowth {
    Checks.finite(rate, "growth rate (per day)");
    Checks.notNegative(multiplication, "multiplication over the season");
    Checks.notNegative(autumnPerWinterMite, "autumn mites per winter mite");
  }

  /**
   * Time in which the mites double.
   *
   * @return {@code ln 2 / rate} (days), or nothing if they do not grow
   */
  public OptionalDouble doublingDays() {
    return rate > 0 ? OptionalDouble.of(StrictMath.log(2) / rate) : OptionalDouble.empty();
  }
}
