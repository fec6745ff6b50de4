package org.undercap.model;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;

/** What happened on one day, one value a colony for each {@link Flow}. Overwritten every day. */
public final class DayFlows {
  private final Map<Flow, double[]> values = new EnumMap<>(Flow.class);
  private final double[][] rows;

  DayFlows(int lanes) {
    for (Flow flow : Flow.values()) {
      values.put(flow, new double[lanes]);
    }
    rows = values.values().toArray(new double[0][]);
  }

  /**
   * One flow, one value a colony. The array is live; only the model writes to it.
   *
   * @param flow which
   * @return its values; units as {@link Flow} says
   */
  public double[] of(Flow flow) {
    return values.get(flow);
  }

  /**
   * One flow of one colony.
   *
   * @param flow which
   * @param lane the colony
   * @return its value; unit as {@link Flow} says
   */
  public double of(Flow flow, int lane) {
    return values.get(flow)[lane];
  }

  void clear() {
    for (double[] row : rows) {
      Arrays.fill(row, 0.0);
    }
  }
}
