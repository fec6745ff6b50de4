package org.undercap.calibration;

/**
 * What a fit says about one parameter.
 *
 * @param name its name
 * @param value the best value (unit of the value)
 * @param low lower end of the 95 % profile interval, or the bound if {@code openBelow}
 * @param high upper end of the 95 % profile interval, or the bound if {@code openAbove}
 * @param openBelow whether all lower values up to the bound are compatible with data and prior
 * @param openAbove whether all higher values up to the bound are compatible with data and prior
 * @param priorLeft standard deviation after the data against that before (ratio): 1 where the data
 *     say nothing
 */
public record FittedParameter(
    String name,
    double value,
    double low,
    double high,
    boolean openBelow,
    boolean openAbove,
    double priorLeft) {
  private static final double NOTHING_LEARNED = 0.95;

  /**
   * Whether the data leave the parameter open: its profile is flat to both bounds, or its
   * uncertainty is that of the prior (more than 95 % of it left).
   *
   * @return true if the value tells nothing that was not believed before
   */
  public boolean unidentified() {
    return (openBelow && openAbove) || priorLeft > NOTHING_LEARNED;
  }
}
