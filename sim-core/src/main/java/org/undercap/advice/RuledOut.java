package org.undercap.advice;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.undercap.climate.Climate;
import org.undercap.parameter.ParameterCatalogue;
import org.undercap.parameter.ParameterId;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.Method;
import org.undercap.treatment.PlanStep;

/**
 * What speaks against a plan whatever the mites do: the weather, honey supers, the user's lists,
 * the same substances again.
 */
public final class RuledOut {
  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);
  private final Scenario scenario;

  /**
   * The rules of a scenario.
   *
   * @param scenario place, supers, lists and what was used before
   */
  public RuledOut(Scenario scenario) {
    this.scenario = scenario;
  }

  /**
   * Reasons that rule a plan out.
   *
   * @param plan the plan
   * @return the reasons in words; empty if nothing does
   */
  public List<String> reasons(Plan plan) {
    Set<String> reasons = new LinkedHashSet<>();
    Map<String, Integer> uses = new TreeMap<>(scenario.keeper().treatedBefore());
    String last = "";
    for (PlanStep step : plan.steps()) {
      if (step instanceof PlanStep.Application application) {
        Method method = application.method();
        reasons.addAll(lists(method));
        reasons.addAll(supers(application));
        if (!method.substanceClass().equals(last) && !method.organic()) {
          uses.merge(method.substanceClass(), 1, Integer::sum);
        }
        last = method.substanceClass();
      }
    }
    reasons.addAll(weather(plan));
    reasons.addAll(tooOften(plan, uses));
    return List.copyOf(reasons);
  }

  private List<String> lists(Method method) {
    List<String> reasons = new ArrayList<>();
    boolean listed =
        scenario.allowed().isEmpty()
            || scenario.allowed().stream().anyMatch(m -> m.id().equals(method.id()));
    if (!listed) {
      reasons.add(method.name() + " is not on your list of allowed treatments");
    }
    if (scenario.organic() && !method.organic()) {
      reasons.add(method.name() + " is usually not allowed in organic schemes");
    }
    return reasons;
  }

  private List<String> supers(PlanStep.Application application) {
    return scenario
        .keeper()
        .supersUntil()
        .filter(until -> !application.date().isAfter(until))
        .map(
            until ->
                "honey supers are on until "
                    + until
                    + ", and "
                    + application.method().name()
                    + " begins before")
        .map(List::of)
        .orElse(List.of());
  }

  private List<String> tooOften(Plan plan, Map<String, Integer> uses) {
    double most = scenario.parameters().value(ParameterId.ROTATION_MOST_TIMES);
    List<String> reasons = new ArrayList<>();
    uses.forEach(
        (substance, times) -> {
          if (times > most && uses(plan, substance)) {
            reasons.add(
                String.format(
                    Locale.ROOT,
                    "%s for the %s time in a row breeds resistant mites",
                    substance,
                    times == 3 ? "third" : times + "th"));
          }
        });
    return reasons;
  }

  private static boolean uses(Plan plan, String substanceClass) {
    return plan.steps().stream()
        .anyMatch(
            step ->
                step instanceof PlanStep.Application a
                    && a.method().substanceClass().equals(substanceClass));
  }

  /** Each method of a plan needs most of its days within the temperatures at which it is used. */
  private List<String> weather(Plan plan) {
    double least = scenario.parameters().value(ParameterId.ADVICE_TEMPERATURE_DAYS);
    Map<String, List<PlanStep.Application>> byMethod = new TreeMap<>();
    for (PlanStep step : plan.steps()) {
      if (step instanceof PlanStep.Application a) {
        byMethod.computeIfAbsent(a.method().name(), name -> new ArrayList<>()).add(a);
      }
    }
    List<String> reasons = new ArrayList<>();
    byMethod.forEach(
        (name, applications) -> {
          double share = applications.stream().mapToDouble(this::shareInBand).average().orElse(1);
          if (share < least) {
            Method method = applications.get(0).method();
            reasons.add(
                name
                    + (tooCool(applications) ? ": too cold" : ": too hot")
                    + ", only "
                    + Math.round(100 * share)
                    + " % of its days lie "
                    + band(method));
          }
        });
    return reasons;
  }

  private static String band(Method method) {
    String low =
        method.coolLimit().isPresent()
            ? "above " + Math.round(method.coolLimit().getAsDouble()) + " C"
            : "";
    String high =
        method.hotLimit().isPresent()
            ? "below " + Math.round(method.hotLimit().getAsDouble()) + " C"
            : "";
    return low + (low.isEmpty() || high.isEmpty() ? "" : " and ") + high;
  }

  private boolean tooCool(List<PlanStep.Application> applications) {
    PlanStep.Application first = applications.get(0);
    double middle =
        (first.method().coolLimit().orElse(-100) + first.method().hotLimit().orElse(100)) / 2;
    return scenario.climate().temperature().at(first.date()) < middle;
  }

  /**
   * How much of an application's time is expected within the temperatures at which its method is
   * used.
   *
   * @param application an application
   * @return share of its days, over all weather that the climate may bring (fraction)
   */
  public double shareInBand(PlanStep.Application application) {
    LocalDate last =
        application.until().isAfter(scenario.end()) ? scenario.end() : application.until();
    double sum = 0;
    int days = 0;
    for (LocalDate date = application.date(); !date.isAfter(last); date = date.plusDays(1)) {
      sum += chance(application.method(), date);
      days++;
    }
    return days == 0 ? 1 : sum / days;
  }

  private double chance(Method method, LocalDate date) {
    Climate climate = scenario.climate();
    double middle = climate.temperature().at(date);
    double cool = method.coolLimit().orElse(Double.NEGATIVE_INFINITY);
    double hot = method.hotLimit().orElse(Double.POSITIVE_INFINITY);
    if (climate.temperature().measured(date)) {
      return middle >= cool && middle <= hot ? 1 : 0;
    }
    double sd =
        StrictMath.hypot(spread(ParameterId.WEATHER_OFFSET), spread(ParameterId.WEATHER_DAILY));
    return cumulative((hot - middle) / sd) - cumulative((cool - middle) / sd);
  }

  private static double spread(ParameterId id) {
    return ParameterCatalogue.shipped().get(id).spread().amount();
  }

  private static double cumulative(double z) {
    return z == Double.POSITIVE_INFINITY
        ? 1
        : z == Double.NEGATIVE_INFINITY ? 0 : NORMAL.cumulativeProbability(z);
  }
}
