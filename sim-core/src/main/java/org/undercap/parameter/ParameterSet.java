package org.undercap.parameter;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The values a model runs with: those that ship with the library, and the changes of a study. */
public final class ParameterSet {

  private final Map<ParameterId, double[]> values;

  private ParameterSet(Map<ParameterId, double[]> values) {
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

  /** The values of a catalogue; open to tests that change some. */
  static ParameterSet of(ParameterCatalogue catalogue) {
    Map<ParameterId, double[]> values = new EnumMap<>(ParameterId.class);
    for (Parameter parameter : catalogue.all()) {
      List<Double> numbers = parameter.values();
      values.put(parameter.id(), numbers.stream().mapToDouble(Double::doubleValue).toArray());
    }
    return new ParameterSet(values);
  }

  /**
   * The value of a parameter that has one value.
   *
   * @param id the parameter
   * @return its value (unit as in the catalogue)
   * @throws IllegalArgumentException if the parameter has several values
   */
  public double value(ParameterId id) {
    double[] all = values.get(id);
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
    double[] all = values.get(id);
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
    return values.get(id).clone();
  }

  /**
   * Whether another set has the same values of a parameter.
   *
   * @param other the other set
   * @param id the parameter
   * @return true if each value is the same
   */
  public boolean sameValues(ParameterSet other, ParameterId id) {
    return Arrays.equals(values.get(id), other.values.get(id));
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
    int needed = values.get(id).length;
    if (newValues.length != needed) {
      throw new IllegalArgumentException(
          id.id() + " needs " + needed + " values, " + newValues.length + " were given");
    }
    id.check(Arrays.stream(newValues).boxed().toList());
    Map<ParameterId, double[]> copy = new EnumMap<>(values);
    copy.put(id, newValues.clone());
    return new ParameterSet(copy);
  }

  /**
   * The parameters that differ from those that ship with the library.
   *
   * @return a new map from parameter to copies of the values of this set; empty if nothing differs
   */
  public Map<ParameterId, double[]> changed() {
    Map<ParameterId, double[]> changed = new EnumMap<>(ParameterId.class);
    values.forEach(
        (id, numbers) -> {
          if (!Arrays.equals(numbers, shipped().values.get(id))) {
            changed.put(id, numbers.clone());
          }
        });
    return changed;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ParameterSet set && asLists().equals(set.asLists());
  }

  @Override
  public int hashCode() {
    return asLists().hashCode();
  }

  @Override
  public String toString() {
    return asLists().toString();
  }

  private Map<String, List<Double>> asLists() {
    Map<String, List<Double>> lists = new TreeMap<>();
    values.forEach((id, numbers) -> lists.put(id.id(), Arrays.stream(numbers).boxed().toList()));
    return lists;
  }

  private static final class Holder {
    static final ParameterSet SHIPPED = of(ParameterCatalogue.shipped());
  }
}
