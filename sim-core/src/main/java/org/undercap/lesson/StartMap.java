package org.undercap.lesson;

import java.time.LocalDate;
import java.time.Month;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import org.undercap.lesson.LessonResult.Figures;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.Method;
import org.undercap.treatment.MethodCatalogue;

/**
 * Parasitised winter brood by start date and method. Days on which a method is too cold or too hot
 * by its own limits are marked.
 */
public final class StartMap {
  private static final int WEEKS_TRIED = 12;

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
   *     dates and never better with a start later than its best one
   */
  public LessonResult lesson() {
    LocalDate last = starts.get(starts.size() - 1).plusWeeks(16);
    Panel.Builder panel =
        Panel.map(
            "start-of-treatment",
            "percent-of-brood",
            starts.stream().map(LocalDate::toString).toList(),
            methods.stream().map(Method::id).toList());
    boolean laterIsWorse = true;
    int bestBy = 0;
    double leastLate = Double.POSITIVE_INFINITY;
    double best = Double.POSITIVE_INFINITY;
    Method bestMethod = methods.get(0);
    LocalDate bestDate = starts.get(0);
    double worst = 0;
    for (int row = 0; row < methods.size(); row++) {
      Method method = methods.get(row);
      List<Double> harm = new ArrayList<>();
      for (int column = 0; column < starts.size(); column++) {
        LocalDate start = starts.get(column);
        LessonCourse course =
            colony.doing(method.usual().withBrood().of(method, start)).until(last);
        harm.add(100 * course.parasitisedWinterBrood(place.climate()));
        panel.cell(new Cell(column, row, harm.get(column), mark(method, start, column)));
      }
      double least = harm.stream().min(Double::compare).orElseThrow();
      int bestColumn = harm.indexOf(least);
      laterIsWorse &= bestColumn < harm.size() / 2 && risesFrom(harm, bestColumn);
      bestBy = Math.max(bestBy, bestColumn);
      leastLate = Math.min(leastLate, harm.get(harm.size() - 1));
      if (least < best) {
        best = least;
        bestMethod = method;
        bestDate = starts.get(bestColumn);
      }
      worst = Math.max(worst, harm.stream().max(Double::compare).orElseThrow());
    }
    double none = colony.until(last).parasitisedWinterBrood(place.climate());
    return new Figures()
        .comparing(bestMethod.id())
        .put("own", own ? 1 : 0)
        .put("bestDate", bestDate)
        .put("best", best / 100)
        .put("worst", worst / 100)
        .put("none", none)
        .put("bestBy", starts.get(bestBy))
        .put("leastLate", leastLate / 100)
        .put("first", starts.get(0))
        .put("last", starts.get(starts.size() - 1))
        .result(place, laterIsWorse, panel.build());
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
