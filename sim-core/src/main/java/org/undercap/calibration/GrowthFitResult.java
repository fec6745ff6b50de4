package org.undercap.calibration;

import java.util.List;
import org.undercap.parameter.ParameterSet;

/**
 * A calibration to growth rates.
 *
 * @param fit values, intervals and correlations of the parameters
 * @param parameters the model's parameters with the best values
 * @param reached the growth rates, one a target
 */
public record GrowthFitResult(FitResult fit, ParameterSet parameters, List<Reached> reached) {
  /**
   * Keeps a copy.
   *
   * @param fit values, intervals and correlations
   * @param parameters the model's parameters with the best values
   * @param reached the growth rates
   */
  public GrowthFitResult {
    reached = List.copyOf(reached);
  }

  /**
   * The growth rate of the model against a target.
   *
   * @param target what was wanted
   * @param before growth rate before the fit (per day), not a number if there was none
   * @param rate growth rate at the best values (per day)
   * @param low 2.5 % of draws around the best values grow slower (per day)
   * @param high 2.5 % of draws around the best values grow faster (per day)
   */
  public record Reached(GrowthTarget target, double before, double rate, double low, double high) {
    /**
     * Whether the best values meet the target.
     *
     * @return true if the growth rate lies in the interval of the target
     */
    public boolean inside() {
      return rate >= target.low() && rate <= target.high();
    }
  }
}
