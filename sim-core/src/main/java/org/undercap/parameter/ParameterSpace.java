package org.undercap.parameter;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Map.Entry;

/**
 * Named parameters with what is believed of each: maps a point of the unit cube, each coordinate
 * strictly between 0 and 1, to a set of parameters. A coordinate is the share of the prior that
 * lies below the value, so uniform points give values that are spread as the priors say.
 */
public final class ParameterSpace {
  private final ParameterSet base;
  private final Map<ParameterId, Prior> axes;

  private ParameterSpace(ParameterSet base, Map<ParameterId, Prior> axes) {
    this.base = base;
    this.axes = axes;
  }

  /**
   * A space without axes around the shipped values.
   *
   * @return the space, to be extended by {@code with...}
   */
  public static ParameterSpace empty() {
    return around(ParameterSet.shipped());
  }

  /**
   * A space without axes around a set.
   *
   * @param base values of all parameters that do not vary
   * @return the space, to be extended by {@code with...}
   */
  public static ParameterSpace around(ParameterSet base) {
    return new ParameterSpace(base, Map.of());
  }

  /**
   * This space with further parameters, each with its spread of the catalogue.
   *
   * @param ids the parameters
   * @return the extended copy
   * @throws IllegalArgumentException if a parameter has no spread or is an axis already
   */
  public ParameterSpace withSpreadOf(ParameterId... ids) {
    ParameterSpace space = this;
    for (ParameterId id : ids) {
      space = space.with(id, Prior.of(ParameterCatalogue.shipped().get(id)));
    }
    return space;
  }

  /**
   * This space with further parameters, each flat over its range of the catalogue.
   *
   * @param ids the parameters
   * @return the extended copy
   * @throws IllegalArgumentException if a parameter has no finite range or is an axis already
   */
  public ParameterSpace withRangeOf(ParameterId... ids) {
    ParameterSpace space = this;
    for (ParameterId id : ids) {
      space = space.with(id, Prior.overRange(ParameterCatalogue.shipped().get(id)));
    }
    return space;
  }

  /**
   * This space with a further parameter.
   *
   * @param id the parameter
   * @param prior what is believed of it
   * @return the extended copy
   * @throws IllegalArgumentException if the parameter is an axis already
   */
  public ParameterSpace with(ParameterId id, Prior prior) {
    Map<ParameterId, Prior> more = new LinkedHashMap<>(axes);
    if (more.put(id, prior) != null) {
      throw new IllegalArgumentException(id.id() + " varies already");
    }
    return new ParameterSpace(base, more);
  }

  /**
   * Number of parameters that vary.
   *
   * @return the number of axes
   */
  public int dimensions() {
    return axes.size();
  }

  /**
   * The parameters that vary.
   *
   * @return in the order of the coordinates
   */
  public List<ParameterId> ids() {
    return List.copyOf(axes.keySet());
  }

  /**
   * What is believed of the parameters that vary.
   *
   * @return in the order of the coordinates
   */
  public List<Prior> priors() {
    return List.copyOf(axes.values());
  }

  /**
   * The values of all parameters where they do not vary.
   *
   * @return the set this space is laid around
   */
  public ParameterSet base() {
    return base;
  }

  /**
   * The parameters at a point of the unit cube.
   *
   * @param unitPoint one coordinate an axis, each strictly between 0 and 1
   * @return the parameters
   * @throws IllegalArgumentException if a coordinate is missing or out of range
   */
  public ParameterSet at(double[] unitPoint) {
    requireSize(unitPoint);
    double[] values = new double[unitPoint.length];
    int axis = 0;
    for (Prior prior : axes.values()) {
      values[axis] = prior.quantile(unitPoint[axis]);
      axis++;
    }
    return withValues(values);
  }

  /**
   * The parameters with given values of those that vary.
   *
   * @param values one value an axis (unit as in the catalogue)
   * @return the parameters
   * @throws IllegalArgumentException if a value is missing or outside the domain of its parameter
   */
  public ParameterSet withValues(double[] values) {
    requireSize(values);
    ParameterSet set = base;
    int axis = 0;
    for (Entry<ParameterId, Prior> entry : axes.entrySet()) {
      set = set.with(entry.getKey(), values[axis++]);
    }
    return set;
  }

  /**
   * The parameters at several points.
   *
   * @param unitPoints points of the unit cube
   * @return one set a point, in their order
   * @throws IllegalArgumentException if a coordinate is missing or out of range
   */
  public List<ParameterSet> atAll(double[][] unitPoints) {
    return Arrays.stream(unitPoints).map(this::at).toList();
  }

  private void requireSize(double[] point) {
    if (point.length != axes.size()) {
      throw new IllegalArgumentException(
          point.length + " coordinates given, " + axes.size() + " parameters vary");
    }
  }
}
