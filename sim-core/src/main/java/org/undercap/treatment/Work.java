package org.undercap.treatment;

import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;

/** Keeper's time for what a plan asks for. */
public final class Work {
  private Work() {}

  /**
   * The time for one step in one colony: that of the method, or of the measure (parameters {@code
   * work...}). Drone frames and feeding belong to the usual work.
   *
   * @param step a step of a plan
   * @param parameters values
   * @return time (minutes)
   */
  public static double minutes(PlanStep step, ParameterSet parameters) {
    if (step instanceof PlanStep.Application application) {
      return application.method().minutes();
    } else if (step instanceof PlanStep.LayingStop stop) {
      return parameters.value(
          stop.caged() ? ParameterId.WORK_QUEEN_CAGING : ParameterId.WORK_REQUEENING);
    } else if (step instanceof PlanStep.DroneCombRemoval) {
      return parameters.value(ParameterId.WORK_DRONE_COMB);
    } else if (step instanceof PlanStep.BroodRemoval) {
      return parameters.value(ParameterId.WORK_BROOD_REMOVAL);
    } else if (step instanceof PlanStep.ShookSwarm) {
      return parameters.value(ParameterId.WORK_SHOOK_SWARM);
    } else if (step instanceof PlanStep.Split) {
      return parameters.value(ParameterId.WORK_SPLIT);
    }
    return 0;
  }
}
