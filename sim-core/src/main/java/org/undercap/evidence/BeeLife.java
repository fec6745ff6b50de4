package org.undercap.evidence;

import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.simulation.DailyColumn;

/**
 * Life of healthy workers that emerge on a day, followed through the stages of the ageing chain
 * with the ageing speeds of a run.
 */
final class BeeLife {
  private final Course course;
  private final int stages;
  private final double perStage;

  BeeLife(Course course, ParameterSet parameters) {
    this.course = course;
    stages = (int) parameters.value(ParameterId.ADULT_LIFE_STAGES);
    perStage = stages / parameters.value(ParameterId.ADULT_LIFE_SUMMER);
  }

  /**
   * Share of the bees that still live.
   *
   * @param emerged number of the day on which they emerge
   * @param day number of a later day; they have aged on it
   * @return share (fraction)
   */
  double living(int emerged, int day) {
    double[] bees = emerging();
    for (int d = emerged + 1; d <= day; d++) {
      age(bees, d);
    }
    return sum(bees);
  }

  /**
   * Mean life of the bees.
   *
   * @param emerged number of the day on which they emerge
   * @return mean life (days)
   * @throws IllegalStateException if the run ends before the last of them die
   */
  double mean(int emerged) {
    double[] bees = emerging();
    double life = 1;
    double left = 1;
    for (int d = emerged + 1; left > 1e-6; d++) {
      if (d >= course.table().days()) {
        throw new IllegalStateException("bees outlive the run");
      }
      age(bees, d);
      left = sum(bees);
      life += left;
    }
    return life;
  }

  private double[] emerging() {
    double[] bees = new double[stages];
    bees[0] = 1;
    return bees;
  }

  private void age(double[] bees, int day) {
    double pass = Math.min(1, perStage * course.table().at(DailyColumn.AGEING_SPEED, day));
    for (int stage = stages - 1; stage > 0; stage--) {
      bees[stage] += pass * (bees[stage - 1] - bees[stage]);
    }
    bees[0] -= pass * bees[0];
  }

  private static double sum(double[] bees) {
    double sum = 0;
    for (double stage : bees) {
      sum += stage;
    }
    return sum;
  }
}
