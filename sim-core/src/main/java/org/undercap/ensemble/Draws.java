package org.undercap.ensemble;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.rng.UniformRandomProvider;
import org.undercap.internal.Randoms;
import org.undercap.internal.ShiftedSobol;
import org.undercap.parameter.Parameter;
import org.undercap.parameter.ParameterCatalogue;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.Spread;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.Method;
import org.undercap.treatment.MethodCatalogue;

/**
 * Which coordinate of a member's point stands for what. Every method has a coordinate whether a
 * plan uses it or not, so adding a plan does not change the draws of the others.
 */
final class Draws {
  static final int MITES = 0;
  static final int BEES = 1;
  static final int BROOD = 2;
  static final int SEASON = 3;
  static final int ARRIVALS = 4;
  private static final int FIXED_PLACES = 5;

  /** Drawn in their own way, or not by the ensemble at all. */
  private static final Set<ParameterId> APART =
      EnumSet.of(
          ParameterId.TREATMENT_STRENGTH,
          ParameterId.COLONY_SIZE,
          ParameterId.WEATHER_OFFSET,
          ParameterId.WEATHER_DAILY,
          ParameterId.ARRIVALS_SPREAD,
          ParameterId.COUNT_RECOVERY_WASH,
          ParameterId.COUNT_RECOVERY_ROLL,
          ParameterId.COUNT_CAPTURE_BOARD);

  private final List<Parameter> uncertain;
  private final Map<ParameterId, Integer> parameterPlaces = new LinkedHashMap<>();
  private final Map<String, Integer> methodPlaces = new LinkedHashMap<>();
  private final ShiftedSobol points;
  private final long seed;

  Draws(Scenario scenario, long seed) {
    this.seed = seed;
    uncertain =
        ParameterCatalogue.shipped().all().stream()
            .filter(p -> p.spread().shape() != Spread.Shape.FIXED && !APART.contains(p.id()))
            .toList();
    int place = FIXED_PLACES;
    for (Parameter parameter : uncertain) {
      parameterPlaces.put(parameter.id(), place++);
    }
    List<Method> methods = new ArrayList<>(MethodCatalogue.shipped().all());
    methods.addAll(scenario.ownMethods());
    for (Method method : methods) {
      if (!methodPlaces.containsKey(method.id())) {
        methodPlaces.put(method.id(), place++);
      }
    }
    points = new ShiftedSobol(place, seed);
  }

  List<Parameter> uncertain() {
    return uncertain;
  }

  int dimension(Parameter parameter) {
    return parameterPlaces.get(parameter.id());
  }

  List<String> methods() {
    return List.copyOf(methodPlaces.keySet());
  }

  int strength(String method) {
    return methodPlaces.get(method);
  }

  double[][] points(int first, int count) {
    return points.points(first, count);
  }

  UniformRandomProvider stream(String purpose, long number) {
    return Randoms.of(seed, purpose + " " + number);
  }
}
