package org.undercap.model;

import java.util.ArrayList;
import java.util.List;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;

/**
 * Sorts parameter sets into groups that can be run side by side: within a group the parameters that
 * shape arrays and formulas are the same.
 */
public final class SideBySide {
  private static final List<ParameterId> SHAPING =
      List.of(
          ParameterId.ADULT_LIFE_STAGES,
          ParameterId.BROOD_WORKER_DAYS,
          ParameterId.BROOD_DRONE_DAYS,
          ParameterId.DISPERSION_WORKER,
          ParameterId.DISPERSION_DRONE,
          ParameterId.CROWDING_WORKER,
          ParameterId.CROWDING_DRONE);

  private SideBySide() {}

  /**
   * Groups in the order of their first members.
   *
   * @param sets the parameter sets
   * @param most largest size of a group, at least 1
   * @return positions in {@code sets}; each in one group
   */
  public static List<List<Integer>> groups(List<ParameterSet> sets, int most) {
    List<List<Integer>> groups = new ArrayList<>();
    List<List<Integer>> growing = new ArrayList<>();
    for (int i = 0; i < sets.size(); i++) {
      ParameterSet set = sets.get(i);
      List<Integer> home =
          growing.stream()
              .filter(group -> fit(sets.get(group.get(0)), set))
              .findFirst()
              .orElse(null);
      if (home == null) {
        home = new ArrayList<>();
        growing.add(home);
        groups.add(home);
      }
      home.add(i);
      if (home.size() >= most) {
        growing.remove(home);
      }
    }
    return groups;
  }

  private static boolean fit(ParameterSet one, ParameterSet other) {
    return SHAPING.stream().allMatch(id -> one.sameValues(other, id));
  }
}
