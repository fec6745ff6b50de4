package org.undercap.model;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;

/** What happened on one day, one value a colony for each {@link Flow}. Overwritten every day. */
public final class DayFlows {
  private final Map<Flow, double[]> values = new EnumMap<>(Flow.class);

  DayFlows(int lanes) {
    for (Flow flow : Flow.values()) {
      values.put(flow, new double[lanes]);
    }
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

  /**
   * Carries yesterday's end over to today's start and forgets what is only added to or written on
   * some days.
   */
  void startDay() {
    int lanes = of(Flow.ADULTS).length;
    System.arraycopy(of(Flow.ADULTS_AFTER), 0, of(Flow.ADULTS), 0, lanes);
    System.arraycopy(of(Flow.MITES_AFTER), 0, of(Flow.MITES_BEFORE), 0, lanes);
    Arrays.fill(of(Flow.BORN), 0.0);
    Arrays.fill(of(Flow.LOST_AT_EMERGENCE), 0.0);
    Arrays.fill(of(Flow.KILLED_IN_CELLS), 0.0);
    Arrays.fill(of(Flow.REMOVED), 0.0);
  }
}
