package org.undercap.parameter;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;

/** The values a model runs with: those that ship with the library, and the changes of a study. */
public final class ParameterSet {

  private final double[][] values;

  private ParameterSet(double[][] values) {
    this.values = values;
  }

  /**
   * The values that ship with the library.
   *
   * @return the one shared, immutable set
   */
  public static ParameterSet shipped() {
    return Holder.SHIPPED;
  }

  /**
   * The value of a parameter that has one value.
   *
   * @param id the parameter
   * @return its value (unit as in the catalogue)
   * @throws IllegalArgumentException if the parameter has several values
   */
  public double value(ParameterId id) {
    double[] all = values[id.ordinal()];
    if (all.length != 1) {
      throw new IllegalArgumentException(id.id() + " has " + all.length + " values; name one");
    }
    return all[0];
  }

  /**
   * One of the values of a parameter that has several.
   *
   * @param id the parameter
   * @param index which one (from 0)
   * @return the value (unit as in the catalogue)
   * @throws IllegalArgumentException if there is no such value
   */
  public double value(ParameterId id, int index) {
    double[] all = values[id.ordinal()];
    if (!(index >= 0 && index < all.length)) {
      throw new IllegalArgumentException(
          id.id() + " has " + all.length + " values, none at index " + index);
    }
    return all[index];
  }

  /**
   * All values of a parameter.
   *
   * @param id the parameter
   * @return a copy (unit as in the catalogue)
   */
  public double[] values(ParameterId id) {
    return values[id.ordinal()].clone();
  }

  /**
   * A copy of this set with other values for one parameter. They may lie outside the range of the
   * catalogue, as studies need, but not outside the domain of the parameter.
   *
   * @param id the parameter
   * @param newValues as many values as the catalogue has (unit as in the catalogue)
   * @return the changed copy
   * @throws IllegalArgumentException if a value is outside {@link ParameterId#domain()}, or if
   *     there are too few or too many
   */
  public ParameterSet with(ParameterId id, double... newValues) {
    int needed = values[id.ordinal()].length;
    if (newValues.length != needed) {
      throw new IllegalArgumentException(
          id.id() + " needs " + needed + " values, " + newValues.length + " were given");
    }
    id.check(Arrays.stream(newValues).boxed().toList());
    double[][] copy = values.clone();
    copy[id.ordinal()] = newValues.clone();
    return new ParameterSet(copy);
  }

  /**
   * The parameters that differ from those that ship with the library.
   *
   * @return a new map from parameter to copies of the values of this set; empty if nothing differs
   */
  public Map<ParameterId, double[]> changed() {
    Map<ParameterId, double[]> changed = new EnumMap<>(ParameterId.class);
    for (ParameterId id : ParameterId.values()) {
      if (!Arrays.equals(values[id.ordinal()], shipped().values[id.ordinal()])) {
        changed.put(id, values(id));
      }
    }
    return changed;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ParameterSet set && Arrays.deepEquals(values, set.values);
  }

  @Override
  public int hashCode() {
    return Arrays.deepHashCode(values);
  }

  private static final class Holder {
    static final ParameterSet SHIPPED = load();

    private static ParameterSet load() {
      ParameterId[] ids = ParameterId.values();
      double[][] values = new double[ids.length][];
      for (ParameterId id : ids) {
        values[id.ordinal()] =
            ParameterCatalogue.shipped().get(id).values().stream()
                .mapToDouble(Double::doubleValue)
                .toArray();
      }
      return new ParameterSet(values);
    }
  }
}
