package org.undercap.batch;

import static org.undercap.parameter.ParameterId.ADULT_LIFE_SUMMER;
import static org.undercap.parameter.ParameterId.ADULT_WEIGHT;
import static org.undercap.parameter.ParameterId.AGEING_BROOD_INDEX_FULL;
import static org.undercap.parameter.ParameterId.AGEING_BROOD_WEIGHT;
import static org.undercap.parameter.ParameterId.AGEING_FLIGHT_HIGH;
import static org.undercap.parameter.ParameterId.AGEING_FLIGHT_LOW;
import static org.undercap.parameter.ParameterId.AGEING_MINIMUM;
import static org.undercap.parameter.ParameterId.BROOD_SURVIVAL_EGG;
import static org.undercap.parameter.ParameterId.BROOD_SURVIVAL_LARVA;
import static org.undercap.parameter.ParameterId.BROOD_SURVIVAL_SEALED;
import static org.undercap.parameter.ParameterId.DRONES_SIZE_HIGH;
import static org.undercap.parameter.ParameterId.DRONES_SIZE_LOW;
import static org.undercap.parameter.ParameterId.DRONE_DEATH;
import static org.undercap.parameter.ParameterId.EMERGENCE_LOSS_DAUGHTER_DRONE;
import static org.undercap.parameter.ParameterId.EMERGENCE_LOSS_DAUGHTER_WORKER;
import static org.undercap.parameter.ParameterId.EMERGENCE_LOSS_MOTHER_DRONE;
import static org.undercap.parameter.ParameterId.EMERGENCE_LOSS_MOTHER_WORKER;
import static org.undercap.parameter.ParameterId.INVASION_DRONE;
import static org.undercap.parameter.ParameterId.INVASION_WORKER;
import static org.undercap.parameter.ParameterId.LAYING_HALF_SATURATION;
import static org.undercap.parameter.ParameterId.LOST_ADULTS_COLD;
import static org.undercap.parameter.ParameterId.LOST_ADULTS_WARM;
import static org.undercap.parameter.ParameterId.LOST_COLD_BELOW;
import static org.undercap.parameter.ParameterId.MITE_DEATH_BROODLESS;
import static org.undercap.parameter.ParameterId.MITE_DEATH_BROOD_NEST;
import static org.undercap.parameter.ParameterId.PARASITISED_AGEING;
import static org.undercap.parameter.ParameterId.PARASITISED_AGEING_FLOOR;
import static org.undercap.parameter.ParameterId.PARASITISED_PUPA_DEATH_ONE;
import static org.undercap.parameter.ParameterId.PARASITISED_PUPA_DEATH_SEVERAL;
import static org.undercap.parameter.ParameterId.REPRODUCTION_DRONE;
import static org.undercap.parameter.ParameterId.REPRODUCTION_WINTER_FACTOR;
import static org.undercap.parameter.ParameterId.REPRODUCTION_WORKER;
import static org.undercap.parameter.ParameterId.TREATMENT_STRENGTH;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.undercap.parameter.ParameterId;
import org.undercap.scenario.Scenario;

/**
 * What runs must have in common to be lanes of one block. Runs with equal keys differ in what the
 * engine keeps colony by colony only.
 */
record SideBySide(
    Same scenario,
    Same climate,
    LocalDate start,
    LocalDate end,
    Same plan,
    Map<ParameterId, String> parameters) {

  /** Parameters that may differ from lane to lane; all others part the runs. */
  static final Set<ParameterId> MAY_DIFFER =
      EnumSet.of(
          INVASION_WORKER,
          INVASION_DRONE,
          REPRODUCTION_WORKER,
          REPRODUCTION_DRONE,
          REPRODUCTION_WINTER_FACTOR,
          EMERGENCE_LOSS_MOTHER_WORKER,
          EMERGENCE_LOSS_DAUGHTER_WORKER,
          EMERGENCE_LOSS_MOTHER_DRONE,
          EMERGENCE_LOSS_DAUGHTER_DRONE,
          MITE_DEATH_BROOD_NEST,
          MITE_DEATH_BROODLESS,
          BROOD_SURVIVAL_EGG,
          BROOD_SURVIVAL_LARVA,
          BROOD_SURVIVAL_SEALED,
          ADULT_LIFE_SUMMER,
          AGEING_MINIMUM,
          AGEING_BROOD_WEIGHT,
          AGEING_BROOD_INDEX_FULL,
          AGEING_FLIGHT_LOW,
          AGEING_FLIGHT_HIGH,
          LAYING_HALF_SATURATION,
          ADULT_WEIGHT,
          PARASITISED_PUPA_DEATH_ONE,
          PARASITISED_PUPA_DEATH_SEVERAL,
          PARASITISED_AGEING,
          PARASITISED_AGEING_FLOOR,
          DRONES_SIZE_LOW,
          DRONES_SIZE_HIGH,
          DRONE_DEATH,
          LOST_ADULTS_COLD,
          LOST_ADULTS_WARM,
          LOST_COLD_BELOW,
          TREATMENT_STRENGTH);

  static SideBySide of(BatchRow row) {
    return new SideBySide(
        new Same(row.scenario()),
        new Same(row.climate()),
        row.start(),
        row.end(),
        new Same(row.plan()),
        parting(row));
  }

  private static Map<ParameterId, String> parting(BatchRow row) {
    Map<ParameterId, String> parting = new TreeMap<>();
    Scenario scenario = row.scenario();
    for (ParameterId id : ParameterId.values()) {
      if (!MAY_DIFFER.contains(id) && !row.parameters().sameValues(scenario.parameters(), id)) {
        parting.put(id, Arrays.toString(row.parameters().values(id)));
      }
    }
    return parting;
  }

  /** A large object that is told apart by identity. */
  private record Same(Object object) {
    @Override
    public boolean equals(Object other) {
      return other instanceof Same same && same.object == object;
    }

    @Override
    public int hashCode() {
      return System.identityHashCode(object);
    }
  }
}
