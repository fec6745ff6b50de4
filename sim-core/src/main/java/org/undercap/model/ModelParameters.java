package org.undercap.model;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;

/**
 * The parameters of the model, one set for each colony that is run side by side. The lengths of the
 * brood stages, the number of adult stages, the dispersions and the crowding factors shape the
 * arrays and formulas, so they are the same for all colonies of a block.
 */
public final class ModelParameters {
  private final List<ParameterSet> sets;
  private final Submodels submodels;

  private ModelParameters(List<ParameterSet> sets, Submodels submodels) {
    this.sets = List.copyOf(sets);
    this.submodels = submodels;
  }

  /**
   * Parameters for one colony.
   *
   * @param set its parameters
   * @return parameters of one lane
   */
  public static ModelParameters of(ParameterSet set) {
    return new ModelParameters(List.of(set), Submodels.shipped());
  }

  /**
   * Parameters for several colonies.
   *
   * @param sets one set a colony, at least one
   * @return parameters of as many lanes
   * @throws IllegalArgumentException if there is no set
   */
  public static ModelParameters of(List<ParameterSet> sets) {
    if (sets.isEmpty()) {
      throw new IllegalArgumentException("at least one parameter set is needed");
    }
    return new ModelParameters(sets, Submodels.shipped());
  }

  /**
   * The same parameters for a model with some of its parts replaced. All that is made from them
   * follows: start shapes and runs.
   *
   * @param parts the parts
   * @return a copy
   */
  public ModelParameters with(Submodels parts) {
    return new ModelParameters(sets, parts);
  }

  /**
   * The parts of the day that can be replaced.
   *
   * @return those of {@link #with(Submodels)}, or those that ship
   */
  public Submodels submodels() {
    return submodels;
  }

  /**
   * Number of colonies run side by side.
   *
   * @return number of lanes, at least 1
   */
  public int lanes() {
    return sets.size();
  }

  /**
   * The parameters of the first colony.
   *
   * @return its set
   */
  public ParameterSet first() {
    return sets.get(0);
  }

  /**
   * Whether all colonies have the same values of all parameters but some.
   *
   * @param ids parameters that may differ
   * @return true if no other parameter differs
   */
  public boolean agreeBeside(Set<ParameterId> ids) {
    for (ParameterId id : ParameterId.values()) {
      if (!ids.contains(id) && !isShared(id)) {
        return false;
      }
    }
    return true;
  }

  private boolean isShared(ParameterId id) {
    ParameterSet first = first();
    return sets.stream().allMatch(set -> set.sameValues(first, id));
  }

  /**
   * One parameter of all colonies, for rules that reckon over all of them at once.
   *
   * @param id a parameter of one value, or the first of several
   * @return its values, one a colony; a new array
   */
  public double[] perLane(ParameterId id) {
    return perLane(id, 0);
  }

  double[] perLane(ParameterId id, int index) {
    double[] values = new double[sets.size()];
    for (int lane = 0; lane < values.length; lane++) {
      values[lane] = sets.get(lane).value(id, index);
    }
    return values;
  }

  /** Refuses two bounds that are not in order, between which the model would divide by nothing. */
  void requireBelow(ParameterId low, ParameterId high) {
    for (ParameterSet set : sets) {
      if (!(set.value(low) < set.value(high))) {
        throw new IllegalArgumentException(
            String.format(
                Locale.ROOT,
                "parameter %s is %s and must be below %s, which is %s",
                low.id(),
                set.value(low),
                high.id(),
                set.value(high)));
      }
    }
  }

  /** Values that must be the same for all lanes. */
  double[] shared(ParameterId id) {
    if (!isShared(id)) {
      throw new IllegalArgumentException(
          "parameter " + id.id() + " must be the same for all colonies run side by side");
    }
    return first().values(id);
  }

  int[] sharedDays(ParameterId id) {
    double[] values = shared(id);
    int[] days = new int[values.length];
    for (int i = 0; i < days.length; i++) {
      days[i] = (int) values[i];
      if (days[i] != values[i] || days[i] < 1) {
        throw new IllegalArgumentException(
            "parameter "
                + id.id()
                + " has the value "
                + values[i]
                + ": the day step needs whole days of at least 1");
      }
    }
    return days;
  }
}
