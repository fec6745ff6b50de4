package org.undercap.advice;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.undercap.climate.Climate;
import org.undercap.parameter.ParameterCatalogue;
import org.undercap.parameter.ParameterId;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Quantities;
import org.undercap.scenario.Scenario;
import org.undercap.scenario.WorkLimits;
import org.undercap.treatment.Courses;
import org.undercap.treatment.Method;
import org.undercap.treatment.PlanStep;

/**
 * What speaks against a plan whatever the mites do: the weather, honey supers, the user's lists,
 * the same substances again, cost and time beyond what the user can spend.
 */
public final class RuledOut {
  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);
  private static final List<String> ORDINALS =
      List.of("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth");

  /**
   * The first days of a vapour are its strongest: too much heat then kills brood and queens (days;
   * assumption, common practice).
   */
  private static final int FIRST_DAYS = 3;

  /** Days of a long treatment whose weather counts (days; assumption, common practice). */
  private static final int BAND_DAYS = 28;

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
    return objections(plan).stream().map(Objection::words).toList();
  }

  /**
   * Reasons that rule a plan out, with what the keeper can change.
   *
   * @param plan the plan
   * @return the reasons, each once; empty if nothing rules it out
   */
  public List<Objection> objections(Plan plan) {
    Set<Objection> reasons = new LinkedHashSet<>();
    for (PlanStep step : plan.steps()) {
      if (step instanceof PlanStep.Application application) {
        reasons.addAll(lists(application.method()));
        reasons.addAll(supers(plan, application));
      }
    }
    reasons.addAll(weather(plan));
    reasons.addAll(repeats(plan));
    reasons.addAll(tooOften(plan));
    reasons.addAll(tooDear(plan));
    return List.copyOf(reasons);
  }

  private List<Objection> lists(Method method) {
    List<Objection> reasons = new ArrayList<>();
    boolean listed =
        scenario.allowed().isEmpty()
            || scenario.allowed().stream().anyMatch(m -> m.id().equals(method.id()));
    if (!listed) {
      reasons.add(
          Objection.curable(
              method.name() + " is not on your list of allowed treatments",
              "put it on the list if you can get it and its label allows this use"));
    }
    if (scenario.organic() && !method.organic()) {
      reasons.add(Objection.lasting(method.name() + " is usually not allowed in organic schemes"));
    }
    return reasons;
  }

  private List<Objection> supers(Plan plan, PlanStep.Application application) {
    Optional<LocalDate> until = scenario.supersUntil(plan);
    if (until.isEmpty() && scenario.hive().supersOn()) {
      return List.of(
          Objection.curable(
              "honey supers are on, and the scenario does not say until when",
              "say when they come off, as supers-until in the scenario"));
    }
    return until
        .filter(day -> !application.date().isAfter(day))
        .map(
            day ->
                Objection.curable(
                    "honey supers are on until "
                        + day
                        + ", and "
                        + application.method().name()
                        + " would begin before",
                    "begin after that day, or take the honey off earlier"))
        .map(List::of)
        .orElse(List.of());
  }

  private List<Objection> tooDear(Plan plan) {
    List<Objection> reasons = new ArrayList<>();
    WorkLimits limits = scenario.keeper().limits();
    double cost = scenario.leastCost(plan);
    if (cost > limits.cost().orElse(Double.POSITIVE_INFINITY)) {
      reasons.add(
          Objection.curable(
              (scenario.cost(plan).isPresent() ? "it costs " : "it costs at least ")
                  + said(cost)
                  + ", and your limit is "
                  + said(limits.cost().getAsDouble()),
              "raise your limit of cost if you can"));
    }
    double minutes = scenario.minutes(plan);
    if (minutes > limits.minutes().orElse(Double.POSITIVE_INFINITY)) {
      reasons.add(
          Objection.curable(
              "it takes "
                  + said(minutes)
                  + " minutes, and your limit is "
                  + said(limits.minutes().getAsDouble()),
              "raise your limit of minutes if you can"));
    }
    return reasons;
  }

  private static String said(double number) {
    return Quantities.format(number);
  }

  /** Methods of the catalogue are not repeated more than is usual; users know their own. */
  private List<Objection> repeats(Plan plan) {
    if (scenario.study()) {
      return List.of();
    }
    return Courses.unusual(plan.steps()).stream()
        .filter(method -> !scenario.ownMethods().contains(method))
        .map(
            method ->
                Objection.curable(
                    method.name() + " is repeated sooner or more often than is usual",
                    "use it "
                        + method.usual().words()
                        + "; where your label allows more, write it as a treatment of your own"))
        .toList();
  }

  /**
   * Courses of one synthetic class of substances in a row, those already done first. Organic acids
   * and thymol between them are no rest: the class comes back to the same mites.
   */
  private List<Objection> tooOften(Plan plan) {
    double most = scenario.parameters().value(ParameterId.ROTATION_MOST_TIMES);
    Map<String, Integer> inARow = new TreeMap<>(scenario.keeper().treatedBefore());
    List<List<PlanStep.Application>> courses = new ArrayList<>(Courses.of(doneAnd(plan)));
    courses.sort(Comparator.comparing(course -> course.get(0).date()));
    Map<String, String> reasons = new TreeMap<>();
    for (List<PlanStep.Application> course : courses) {
      Method method = course.get(0).method();
      String substances = method.substanceClass();
      if (!method.organic()) {
        inARow.keySet().retainAll(Set.of(substances));
        int times = inARow.merge(substances, 1, Integer::sum);
        if (times > most && plan.steps().contains(course.get(course.size() - 1))) {
          reasons.put(
              substances,
              substances + " for the " + ordinal(times) + " time in a row breeds resistant mites");
        }
      }
    }
    return reasons.values().stream().map(Objection::lasting).toList();
  }

  private List<PlanStep> doneAnd(Plan plan) {
    List<PlanStep> steps = new ArrayList<>(scenario.done().steps());
    steps.addAll(plan.steps());
    return steps;
  }

  private static String ordinal(int number) {
    return number <= ORDINALS.size() ? ORDINALS.get(number - 1) : number + "th";
  }

  /** Each method of a plan needs most of its days within the temperatures at which it is used. */
  private List<Objection> weather(Plan plan) {
    double least = scenario.parameters().value(ParameterId.ADVICE_TEMPERATURE_DAYS);
    Map<String, List<PlanStep.Application>> byMethod = new TreeMap<>();
    for (PlanStep step : plan.steps()) {
      if (step instanceof PlanStep.Application a) {
        byMethod.computeIfAbsent(a.method().name(), name -> new ArrayList<>()).add(a);
      }
    }
    List<Objection> reasons = new ArrayList<>();
    byMethod.forEach(
        (name, applications) -> {
          double share = applications.stream().mapToDouble(this::shareInBand).average().orElse(1);
          if (share < least) {
            Method method = applications.get(0).method();
            reasons.add(
                Objection.lasting(
                    name
                        + (tooCool(applications) ? ": too cold" : ": too hot")
                        + ", only "
                        + Math.round(100 * share)
                        + " % of its "
                        + (applications.stream().anyMatch(RuledOut::isLong)
                            ? "first " + BAND_DAYS + " "
                            : "")
                        + "days have a daily mean "
                        + band(method)));
          } else {
            applications.stream()
                .flatMap(a -> hotStart(a).stream())
                .findFirst()
                .ifPresent(reasons::add);
          }
        });
    return reasons;
  }

  /** A day among the first of an application that is likelier than not too hot for its method. */
  private Optional<Objection> hotStart(PlanStep.Application application) {
    if (application.method().hotLimit().isEmpty()) {
      return Optional.empty();
    }
    double limit = application.method().hotLimit().getAsDouble();
    LocalDate first = application.date();
    return first
        .datesUntil(first.plusDays(FIRST_DAYS))
        .filter(date -> !date.isAfter(application.until()) && !date.isAfter(scenario.end()))
        .filter(date -> scenario.climate().temperature().at(date) > limit)
        .findFirst()
        .map(
            date ->
                Objection.curable(
                    application.method().name()
                        + ": too hot at its begin, the daily mean "
                        + (scenario.climate().temperature().measured(date)
                            ? "of " + date + " is"
                            : "is then usually")
                        + " above "
                        + said(limit)
                        + " C",
                    "begin it in cooler days"));
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
   * How much of an application's time, the first four weeks if it is longer, is expected within the
   * temperatures at which its method is used.
   *
   * @param application an application
   * @return share of its days, over all weather that the climate may bring (fraction)
   */
  public double shareInBand(PlanStep.Application application) {
    LocalDate until = isLong(application) ? lastOfBand(application) : application.until();
    LocalDate last = until.isAfter(scenario.end()) ? scenario.end() : until;
    double sum = 0;
    int days = 0;
    for (LocalDate date = application.date(); !date.isAfter(last); date = date.plusDays(1)) {
      sum += chance(application.method(), date);
      days++;
    }
    return days == 0 ? 1 : sum / days;
  }

  private static LocalDate lastOfBand(PlanStep.Application application) {
    return application.date().plusDays(BAND_DAYS - 1);
  }

  private static boolean isLong(PlanStep.Application application) {
    return application.until().isAfter(lastOfBand(application));
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
