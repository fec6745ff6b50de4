package org.undercap.cli.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.undercap.scenario.InputLimits;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.Caution;
import org.undercap.treatment.CautionCatalogue;
import org.undercap.treatment.Method;
import org.undercap.treatment.PlanStep;

/** Which cautions a report must print. Nothing switches them off. */
final class Cautions {
  private static final Set<String> MANY_MITES_ARRIVE = Set.of("dense", "collapsing");

  /** Applications of one method that most labels allow in a season (common practice, no source). */
  private static final int OFTEN = 2;

  private Cautions() {}

  /** The cautions of all plans of a scenario. */
  static List<Caution> of(Scenario scenario) {
    return of(scenario, scenario.plans());
  }

  /** The cautions of some plans and of the circumstances of the scenario. */
  static List<Caution> of(Scenario scenario, List<Plan> plans) {
    CautionCatalogue catalogue = CautionCatalogue.shipped();
    List<Method> methods = methods(plans);
    Set<Caution> cautions = new LinkedHashSet<>();
    if (scenario.study()) {
      cautions.add(catalogue.get("study"));
    }
    cautions.addAll(catalogue.of(methods));
    if (plans.stream().anyMatch(Cautions::repeats)) {
      cautions.add(catalogue.get("repeated"));
    }
    boolean supers = scenario.hive().supersOn() || scenario.keeper().supersUntil().isPresent();
    if (supers && !methods.isEmpty()) {
      cautions.add(catalogue.get("supers"));
    }
    if (isSmall(scenario, plans) && !methods.isEmpty()) {
      cautions.add(catalogue.get("small-colony"));
    }
    if (scenario.organic() && !methods.isEmpty()) {
      cautions.add(catalogue.get("organic"));
    }
    if (!scenario.resistance().isEmpty()) {
      cautions.add(catalogue.get("veterinary"));
    }
    if (MANY_MITES_ARRIVE.contains(scenario.arrivals().id())) {
      cautions.add(catalogue.get("neighbours"));
    }
    if (!methods.isEmpty()) {
      cautions.add(catalogue.get("records"));
    }
    return List.copyOf(cautions);
  }

  /** The cautions of a scenario for which there is no advice. */
  static List<Caution> ofRefusal() {
    CautionCatalogue catalogue = CautionCatalogue.shipped();
    return List.of(catalogue.get("every-report"), catalogue.get("veterinary"));
  }

  static List<Report.Term> terms(List<Caution> cautions) {
    return cautions.stream().map(c -> new Report.Term(c.title(), c.text())).toList();
  }

  /** Whether one method is applied more than twice. */
  private static boolean repeats(Plan plan) {
    return methods(List.of(plan)).stream()
        .anyMatch(
            method ->
                plan.steps().stream()
                        .filter(PlanStep.Application.class::isInstance)
                        .map(PlanStep.Application.class::cast)
                        .filter(step -> step.method().equals(method))
                        .count()
                    > OFTEN);
  }

  private static boolean isSmall(Scenario scenario, List<Plan> plans) {
    return scenario.hive().bees() < InputLimits.shipped().get("colony.bees.small").low()
        || plans.stream()
            .flatMap(plan -> plan.steps().stream())
            .anyMatch(
                step ->
                    step instanceof PlanStep.Split
                        || (step instanceof PlanStep.LayingStop stop && !stop.caged()));
  }

  private static List<Method> methods(List<Plan> plans) {
    List<Method> methods = new ArrayList<>();
    for (Plan plan : plans) {
      for (PlanStep step : plan.steps()) {
        if (step instanceof PlanStep.Application application
            && !methods.contains(application.method())) {
          methods.add(application.method());
        }
      }
    }
    return methods;
  }
}
