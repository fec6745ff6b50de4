package org.undercap.cli.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.undercap.cli.output.UsageException;
import org.undercap.internal.Nearest;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.Method;
import org.undercap.treatment.MethodCatalogue;
import org.undercap.treatment.PlanStep;

/** Finds the treatments that a user names. */
final class Methods {
  private Methods() {}

  /** The named methods, or those in the plans of a scenario if none is named. */
  static List<Method> of(Scenario scenario, List<String> ids) {
    return ids.isEmpty() ? inPlans(scenario) : named(scenario, ids);
  }

  private static List<Method> inPlans(Scenario scenario) {
    List<Method> methods =
        scenario.plans().stream()
            .flatMap(plan -> plan.steps().stream())
            .filter(step -> step instanceof PlanStep.Application)
            .map(step -> ((PlanStep.Application) step).method())
            .distinct()
            .toList();
    if (methods.isEmpty()) {
      throw new UsageException(
          "the plans of " + scenario.name() + " have no treatment: name some with --method=ID,ID");
    }
    return methods;
  }

  private static List<Method> named(Scenario scenario, List<String> ids) {
    Map<String, Method> known = new LinkedHashMap<>();
    scenario.ownMethods().forEach(method -> known.put(method.id(), method));
    MethodCatalogue.with(scenario.parameters())
        .all()
        .forEach(method -> known.putIfAbsent(method.id(), method));
    List<Method> methods = new ArrayList<>();
    for (String id : ids) {
      Method method = known.get(id);
      if (method == null) {
        throw new UsageException(Nearest.unknown("treatment", id, known.keySet()).getMessage());
      }
      if (!methods.contains(method)) {
        methods.add(method);
      }
    }
    return methods;
  }
}
