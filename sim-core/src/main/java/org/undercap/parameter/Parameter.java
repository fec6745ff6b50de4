package org.undercap.parameter;

import java.util.List;

/** One number of the model, or a few that belong together, with what is known about it. */
public record Parameter(
    ParameterId id,
    String symbol,
    List<Double> values,
    List<Double> low,
    List<Double> high,
    String unit,
    Spread spread,
    Kind kind,
    List<String> sourceKeys,
    String read,
    String note) {

  /**
   * Checks the values against the bounds and the domain.
   *
   * @param id its identity
   * @param symbol symbol in the description of the model, possibly empty
   * @param values the shipped values (in {@code unit}); mostly one
   * @param low lower bounds of what is plausible, one per value, or none
   * @param high upper bounds of what is plausible, one per value, or none
   * @param unit unit of the values
   * @param spread how the value differs between the members of an ensemble
   * @param kind how far it is known
   * @param sourceKeys keys of its sources in the bibliography; at least one
   * @param read how the sources were read for this value
   * @param note what else to know, possibly empty
   * @throws IllegalArgumentException if there is no value, no unit or no source, if a value lies
   *     outside its domain or bounds, or if bounds are not as many as the values
   */
  public Parameter {
    values = List.copyOf(values);
    low = List.copyOf(low);
    high = List.copyOf(high);
    sourceKeys = List.copyOf(sourceKeys);
    if (values.isEmpty() || unit.isEmpty() || sourceKeys.isEmpty()) {
      throw new IllegalArgumentException(id.id() + " needs a value, a unit and a source");
    }
    id.check(values);
    checkBounds(id, low, values);
    checkBounds(id, values, high);
  }

  /**
   * The first value, which is the only one for most parameters.
   *
   * @return the value (in {@link #unit()})
   */
  public double value() {
    return values.get(0);
  }

  private static void checkBounds(ParameterId id, List<Double> lower, List<Double> upper) {
    if (lower.isEmpty() || upper.isEmpty()) {
      return;
    }
    if (lower.size() != upper.size()) {
      throw new IllegalArgumentException(
          id.id() + " needs one bound per value, not " + lower + " for " + upper);
    }
    for (int i = 0; i < lower.size(); i++) {
      if (!(lower.get(i) <= upper.get(i))) {
        throw new IllegalArgumentException(
            id.id() + ": " + lower.get(i) + " is above " + upper.get(i));
      }
    }
  }
}
