package org.undercap.lesson;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.undercap.lesson.LessonResult.Figures;

/**
 * Resistance over some years: each year the engine runs a colony of susceptible and one of
 * resistant mites, and the share of resistant mites of the next year is that among the mites left,
 * those that arrived from neighbours and are susceptible included. Each spring begins with the same
 * number of mites, so that only resistance differs.
 */
final class ResistanceLesson {
  private static final String SAME = "pyrethroid-strips";
  private static final String OTHER = "amitraz-strips";

  private ResistanceLesson() {}

  /**
   * One year under one method.
   *
   * @param susceptible mites left in winter of a colony of susceptible mites
   * @param resistant mites left of a colony of resistant mites
   * @param arrived mites left of those that arrived, which are susceptible
   * @param killed share of the susceptible mites killed (fraction)
   */
  private record Season(double susceptible, double resistant, double arrived, double killed) {
    /** Share of mites resistant to this method next year (fraction). */
    double next(double share) {
      double left = share * resistant;
      return left / (left + (1 - share) * susceptible + arrived);
    }

    /** Share of mites resistant to another method next year (fraction). */
    double nextOfOther(double share) {
      return share * susceptible / (susceptible + arrived);
    }
  }

  static LessonResult teach(LessonPlace place) {
    Season strips = season(place, SAME);
    Season others = season(place, OTHER);
    int years = SetUps.whole("resistance.years");
    double start = SetUps.number("resistance.start");
    List<Double> numbers = new ArrayList<>();
    List<Double> always = new ArrayList<>();
    List<Double> rotated = new ArrayList<>();
    double resistAlways = start;
    double resistFirst = start;
    double resistSecond = start;
    for (int year = 1; year <= years; year++) {
      numbers.add((double) year);
      always.add(100 * strips.killed * (1 - resistAlways));
      resistAlways = strips.next(resistAlways);
      if (year % 2 == 1) {
        rotated.add(100 * strips.killed * (1 - resistFirst));
        resistFirst = strips.next(resistFirst);
        resistSecond = strips.nextOfOther(resistSecond);
      } else {
        rotated.add(100 * others.killed * (1 - resistSecond));
        resistSecond = others.next(resistSecond);
        resistFirst = others.nextOfOther(resistFirst);
      }
    }
    Panel panel =
        Panel.numbers("year", "percent-killed")
            .line(Series.of("same-strips", numbers, always))
            .line(Series.of("rotation", numbers, rotated))
            .build();
    double sameLast = always.get(years - 1) / 100;
    double rotatedLast = rotated.get(years - 1) / 100;
    return new Figures()
        .put("start", start)
        .put("years", years)
        .put("first", always.get(0) / 100)
        .put("sameLast", sameLast)
        .put("rotatedLast", rotatedLast)
        .put("resistantLast", resistAlways)
        .result(place, sameLast < 0.6 * always.get(0) / 100 && rotatedLast > sameLast, panel);
  }

  private static Season season(LessonPlace place, String method) {
    LocalDate treated = place.on(Month.AUGUST, 15);
    LocalDate last = place.on(Month.JANUARY, 1).plusYears(1);
    LessonRun colony = LessonRun.of(place, treated, SetUps.number("trial.mites"));
    LocalDate out = treated.plusDays(LessonRun.method(method).carrierDays());
    LessonCourse susceptible = colony.treat(method, treated).until(last);
    LessonCourse resistant =
        colony
            .resisting(Map.of(LessonRun.method(method).substanceClass(), 1.0))
            .treat(method, treated)
            .until(last);
    LessonCourse joined = colony.treat(method, treated).arriving("low", treated, last).until(last);
    double mites = susceptible.mites(treated) + susceptible.born(treated, out);
    return new Season(
        susceptible.mites(last),
        resistant.mites(last),
        joined.mites(last) - susceptible.mites(last),
        susceptible.killed(treated, out) / mites);
  }
}
