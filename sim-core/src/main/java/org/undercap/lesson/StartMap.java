package org.undercap.lesson;

import java.time.LocalDate;
import java.time.Month;
import java.time.Period;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.undercap.lesson.LessonResult.Figures;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.Course;
import org.undercap.treatment.Method;
import org.undercap.treatment.MethodCatalogue;
import org.undercap.treatment.PlanStep;

/**
 * Parasitised winter brood by start date and method. Days on which a method is too cold or too hot
 * by its own limits are marked.
 */
public final class StartMap {
  private static final int WEEKS_TRIED = 12;

  /** Row of the map for a colony that is not treated. */
  public static final String UNTREATED = "untreated";

  /** Begin of the names of the figures that say how often a method is given, by row. */
  public static final String ROUNDS = "rounds";

  /** From here on harm is much (%). */
  public static final double MUCH = 10;

  /** From here on harm is written as {@link #MUCH}, with two figures (%). */
  private static final double WRITTEN_AS_MUCH = MUCH - 0.05;

  /** With so much of the harm of an untreated colony, a treatment spares little (fraction). */
  private static final double LITTLE_SPARED = 0.9;

  /** Differences below this are rounding of the run (fraction). */
  private static final double SAME = 1e-3;

  private static final List<String> METHODS =
      List.of(
          "thymol-gel",
          "formic-pads",
          "oxalic-sublimation",
          "oxalic-glycerine-strips",
          "amitraz-strips",
          "pyrethroid-strips");

  private final LessonPlace place;
  private final LessonRun colony;
  private final List<LocalDate> starts;
  private final List<Method> methods;
  private final boolean own;

  private StartMap(
      LessonPlace place,
      LessonRun colony,
      List<LocalDate> starts,
      List<Method> methods,
      boolean own) {
    this.place = place;
    this.colony = colony;
    this.starts = starts;
    this.methods = methods;
    this.own = own;
  }

  /**
   * A map for the colony of a scenario, whose first start date is its first day.
   *
   * @param scenario place and colony
   * @param mites all mites on the first day (mites), above 0
   * @param methods methods to try; the usual ones if empty
   * @return the map
   */
  public static StartMap of(Scenario scenario, double mites, List<Method> methods) {
    LocalDate date = scenario.start();
    List<LocalDate> starts =
        date.datesUntil(date.plusWeeks(WEEKS_TRIED).plusDays(1), Period.ofWeeks(2)).toList();
    LessonPlace place = LessonPlace.of(scenario);
    LessonRun colony = LessonRun.of(place, LessonPlace.colony(scenario, mites), date);
    return new StartMap(place, colony, starts, methods.isEmpty() ? usualMethods() : methods, true);
  }

  static StartMap usual(LessonPlace place) {
    LessonRun season = LessonRun.of(place, place.on(Month.MARCH, 1), SetUps.number("season.mites"));
    List<LocalDate> starts = new ArrayList<>();
    for (Month month : List.of(Month.JULY, Month.AUGUST, Month.SEPTEMBER, Month.OCTOBER)) {
      starts.add(place.on(month, 1));
      starts.add(place.on(month, 15));
    }
    return new StartMap(place, season, starts, usualMethods(), false);
  }

  private static List<Method> usualMethods() {
    return METHODS.stream().map(MethodCatalogue.shipped()::get).toList();
  }

  /**
   * The map as a lesson.
   *
   * @return map and figures; the finding holds if each method does best in the first half of the
   *     dates and never better with a start later than its best one, if on some date all methods
   *     spare most of the brood, and if on the last one none does much better than nothing
   */
  public LessonResult lesson() {
    LocalDate last = starts.get(starts.size() - 1).plusWeeks(16);
    double none = 100 * colony.until(last).parasitisedWinterBrood(place.climate());
    List<List<Double>> harm = new ArrayList<>();
    for (Method method : methods) {
      harm.add(starts.stream().map(start -> harm(usual(method, start), last)).toList());
    }
    int bestRow = 0;
    int latestBest = 0;
    boolean laterIsWorse = true;
    for (int row = 0; row < harm.size(); row++) {
      int best = harm.get(row).indexOf(Collections.min(harm.get(row)));
      latestBest = Math.max(latestBest, best);
      laterIsWorse &= best < starts.size() / 2 && risesFrom(harm.get(row), best);
      bestRow = Collections.min(harm.get(row)) < Collections.min(harm.get(bestRow)) ? row : bestRow;
    }
    int bestBy = latestBest;
    while (bestBy > 0 && Collections.max(onDate(harm, bestBy)) >= WRITTEN_AS_MUCH) {
      bestBy--;
    }
    double best = Collections.min(harm.get(bestRow));
    double leastLate = Collections.min(onDate(harm, starts.size() - 1));
    double mostInTime = Collections.max(onDate(harm, bestBy));
    Method vapour = LessonRun.method(TreatmentLessons.VAPOUR);
    Figures figures = new Figures().comparing(methods.get(bestRow).id());
    for (int row = 0; row < methods.size(); row++) {
      figures.put(ROUNDS + row, usual(methods.get(row), starts.get(0)).size());
    }
    return figures
        .put("own", own ? 1 : 0)
        .put("bestDate", starts.get(harm.get(bestRow).indexOf(best)))
        .put("best", best / 100)
        .put("worst", Collections.max(harm.stream().map(Collections::max).toList()) / 100)
        .put("none", none / 100)
        .put("bestBy", starts.get(bestBy))
        .put("leastInTime", Collections.min(onDate(harm, bestBy)) / 100)
        .put("mostInTime", mostInTime / 100)
        .put("leastLate", leastLate / 100)
        .put("oneRound", harm(new Course(1, 0).of(vapour, starts.get(bestBy)), last) / 100)
        .put("allRounds", harm(usual(vapour, starts.get(bestBy)), last) / 100)
        .put("first", starts.get(0))
        .put("last", starts.get(starts.size() - 1))
        .result(
            place,
            laterIsWorse && mostInTime < WRITTEN_AS_MUCH && leastLate > LITTLE_SPARED * none,
            panel(harm, none));
  }

  private static List<Double> onDate(List<List<Double>> harm, int column) {
    return harm.stream().map(row -> row.get(column)).toList();
  }

  private static List<PlanStep> usual(Method method, LocalDate start) {
    return method.usual().withBrood().of(method, start);
  }

  private double harm(List<PlanStep> treatment, LocalDate last) {
    return 100 * colony.doing(treatment).until(last).parasitisedWinterBrood(place.climate());
  }

  private Panel panel(List<List<Double>> harm, double none) {
    List<String> rows = new ArrayList<>(methods.stream().map(Method::id).toList());
    rows.add(UNTREATED);
    Panel.Builder panel =
        Panel.map(
            "start-of-treatment",
            "percent-of-brood",
            starts.stream().map(LocalDate::toString).toList(),
            rows);
    for (int row = 0; row < rows.size(); row++) {
      for (int column = 0; column < starts.size(); column++) {
        boolean treated = row < methods.size();
        double value = treated ? harm.get(row).get(column) : none;
        String mark = treated ? mark(methods.get(row), starts.get(column), column) : "";
        panel.cell(new Cell(column, row, value, mark));
      }
    }
    return panel.build();
  }

  /** Whether values never fall from a place in the list on, and end higher. */
  private static boolean risesFrom(List<Double> values, int from) {
    for (int i = from + 1; i < values.size(); i++) {
      if (values.get(i) < values.get(i - 1) * (1 - SAME)) {
        return false;
      }
    }
    return values.get(values.size() - 1) > values.get(from);
  }

  private String mark(Method method, LocalDate start, int column) {
    double celsius = place.climate().temperature().at(start);
    if (celsius < method.coolLimit().orElse(Double.NEGATIVE_INFINITY)
        || celsius > method.hotLimit().orElse(Double.POSITIVE_INFINITY)) {
      return "outside-limits";
    }
    return own && column == 0 ? "today" : "";
  }
}
