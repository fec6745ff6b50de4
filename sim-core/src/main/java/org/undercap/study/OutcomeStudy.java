package org.undercap.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.undercap.ensemble.MiteBelief;
import org.undercap.ensemble.Outcome;
import org.undercap.ensemble.OutcomeRuns;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;
import org.undercap.sensitivity.UnitCubeFunction;

/**
 * An outcome of a plan as a function of what a study varies, each axis from 0 to 1: to be given to
 * {@link org.undercap.sensitivity.SobolIndices} or {@link
 * org.undercap.sensitivity.ElementaryEffects}. What is not varied has its middle value.
 */
public final class OutcomeStudy implements UnitCubeFunction {
  private static final double MIDDLE = 0.5;

  private final ParameterSet base;
  private final OutcomeRuns runs;
  private final List<StudyAxis> axes;
  private final Outcome outcome;

  /**
   * A study.
   *
   * @param scenario place, colony and time
   * @param plan the plan
   * @param belief mites on the first day
   * @param axes what is varied, at least one thing, each once
   * @param outcome what is looked at
   * @throws IllegalArgumentException if nothing is varied or a thing twice
   */
  public OutcomeStudy(
      Scenario scenario, Plan plan, MiteBelief belief, List<StudyAxis> axes, Outcome outcome) {
    if (axes.isEmpty() || axes.stream().map(StudyAxis::words).distinct().count() < axes.size()) {
      throw new IllegalArgumentException("a study varies at least one thing, and each once");
    }
    base = scenario.parameters();
    runs = new OutcomeRuns(scenario, plan, belief);
    this.axes = List.copyOf(axes);
    this.outcome = outcome;
  }

  @Override
  public double[] values(double[][] points) {
    double[] values = runs.run(Arrays.stream(points).map(this::toCase).toList()).of(outcome);
    for (double value : values) {
      if (Double.isNaN(value)) {
        throw new IllegalArgumentException(
            "the colony is lost in some runs, and then "
                + outcome.header()
                + " has no value; look at "
                + Outcome.WINTER_BROOD_PARASITISED.header()
                + " or "
                + Outcome.LOST.header()
                + ", or vary less");
      }
    }
    return values;
  }

  private OutcomeRuns.Case toCase(double[] point) {
    ParameterSet parameters = base;
    Map<StudyAxis.Kind, Double> set = new EnumMap<>(StudyAxis.Kind.class);
    Map<String, Double> strengths = new HashMap<>();
    for (int i = 0; i < point.length; i++) {
      StudyAxis axis = axes.get(i);
      double value = axis.prior().quantile(point[i]);
      switch (axis.kind()) {
        case PARAMETER -> parameters = parameters.with(ParameterId.of(axis.name()), value);
        case STRENGTH -> strengths.put(axis.name(), value);
        default -> set.put(axis.kind(), value);
      }
    }
    return new OutcomeRuns.Case(
        parameters,
        set.getOrDefault(StudyAxis.Kind.MITES, MIDDLE),
        set.getOrDefault(StudyAxis.Kind.BEES, 1.0),
        set.getOrDefault(StudyAxis.Kind.BROOD, 1.0),
        set.getOrDefault(StudyAxis.Kind.WEATHER, 0.0),
        set.getOrDefault(StudyAxis.Kind.ARRIVALS, 1.0),
        strengths,
        (int) StrictMath.rint(set.getOrDefault(StudyAxis.Kind.DATES, 0.0)));
  }

  /**
   * What is varied.
   *
   * @return in the order of the coordinates
   */
  public List<StudyAxis> axes() {
    return new ArrayList<>(axes);
  }
}
