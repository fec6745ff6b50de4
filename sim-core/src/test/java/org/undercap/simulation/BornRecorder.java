package org.undercap.simulation;

import org.undercap.model.Flow;

/** Keeps the daughters born on each day, which a daily table leaves out. */
final class BornRecorder implements DayObserver {
  private final double[] values;

  BornRecorder(int days) {
    values = new double[days];
  }

  @Override
  public void dayEnds(SimulationDay day) {
    values[day.index()] = day.flows().of(Flow.BORN, 0);
  }

  double on(int day) {
    return values[day];
  }
}
