package org.undercap.parameter;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Values that a user or a fit puts in the place of others.
 *
 * @param values the values of each parameter that is changed (unit as in the catalogue)
 */
public record ParameterChanges(Map<ParameterId, List<Double>> values) {
  private static final ParameterChanges NONE = new ParameterChanges(Map.of());

  /**
   * Checks the values.
   *
   * @param values the values of each parameter that is changed
   * @throws IllegalArgumentException if there are too few or too many for a parameter, or one lies
   *     outside its domain
   */
  public ParameterChanges {
    Map<ParameterId, List<Double>> copy = new EnumMap<>(ParameterId.class);
    ParameterSet shipped = ParameterSet.shipped();
    values.forEach(
        (id, numbers) -> {
          shipped.with(id, array(numbers)); // checks them
          copy.put(id, List.copyOf(numbers));
        });
    values = Map.copyOf(copy);
  }

  /**
   * Nothing is changed.
   *
   * @return no changes
   */
  public static ParameterChanges none() {
    return NONE;
  }

  /**
   * A set with these values in the place of its own.
   *
   * @param set the set
   * @return the changed copy
   */
  public ParameterSet applyTo(ParameterSet set) {
    ParameterSet changed = set;
    for (ParameterId id : ParameterId.values()) {
      if (values.containsKey(id)) {
        changed = changed.with(id, array(values.get(id)));
      }
    }
    return changed;
  }

  private static double[] array(List<Double> numbers) {
    return numbers.stream().mapToDouble(Double::doubleValue).toArray();
  }
}
