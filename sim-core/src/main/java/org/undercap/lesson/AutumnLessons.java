package org.undercap.lesson;

import java.time.LocalDate;
import java.time.Month;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.DoubleStream;
import org.undercap.ensemble.SeasonDates;
import org.undercap.lesson.LessonResult.Figures;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.simulation.DailyTable;
import org.undercap.treatment.PlanStep;

/** Lessons about the brood of autumn. */
final class AutumnLessons {
  private static final String STRIPS = "amitraz-strips";

  private static final int FOUR_WEEKS = 28;

  /** A smaller difference between two treatments is not seen, nor worth a rule (fraction). */
  private static final double SEEN = 0.05;

  private AutumnLessons() {}

  static LessonResult waiting(LessonPlace place) {
    LocalDate first = place.on(Month.AUGUST, 1);
    LocalDate latest = place.on(Month.OCTOBER, 10);
    LocalDate midwinter = place.on(Month.JANUARY, 1).plusYears(1);
    LessonRun colony = LessonRun.of(place, place.on(Month.MARCH, 1), SetUps.number("season.mites"));
    List<Double> days = new ArrayList<>();
    List<Double> parasitised = new ArrayList<>();
    List<Double> left = new ArrayList<>();
    List<Double> hidden = new ArrayList<>();
    for (LocalDate start : first.datesUntil(latest.plusDays(1), Period.ofWeeks(1)).toList()) {
      LessonCourse course = colony.treat(STRIPS, start).until(midwinter);
      days.add((double) start.toEpochDay());
      parasitised.add(100 * course.parasitisedWinterBrood(place.climate()));
      left.add(course.mites(midwinter));
      hidden.add(1 - course.shareOnBees(start.plusDays(FOUR_WEEKS)));
    }
    int last = days.size() - 1;
    SeasonDates season = colony.until(midwinter).seasonDates(place.climate());
    Figures figures =
        new Figures()
            .put("harmFirst", parasitised.get(0) / 100)
            .put("harmLast", parasitised.get(last) / 100)
            .put("leftFirst", Math.rint(left.get(0)))
            .put("leftLast", Math.rint(left.get(last)))
            .put("hiddenFirst", hidden.get(0))
            .put("hiddenLast", hidden.get(last))
            .put("first", first)
            .put("latest", LocalDate.ofEpochDay(days.get(last).longValue()))
            .put("midwinter", midwinter)
            .put("winterBeesFrom", rearedFrom(season))
            .put("winterBeesUntil", season.winterBeesUntil());
    return figures.result(
        place,
        parasitised.get(last) > 1.3 * parasitised.get(0)
            && left.get(last) < left.get(0)
            && hidden.get(last) < hidden.get(0),
        starts("harm-to-winter-bees", "percent-of-brood", "parasitised", days, parasitised),
        starts("mites-left", "mites", "mites-left", days, left));
  }

  /** Day on which the egg of the first winter bee is laid. */
  private static LocalDate rearedFrom(SeasonDates season) {
    double days =
        DoubleStream.of(ParameterSet.shipped().values(ParameterId.BROOD_WORKER_DAYS)).sum();
    return season.winterBeesFrom().minusDays((long) days);
  }

  private static Panel starts(
      String name, String unit, String line, List<Double> days, List<Double> values) {
    return Panel.starts(unit).named(name).line(Series.of(line, days, values)).build();
  }

  static LessonResult lateSyrup(LessonPlace place) {
    LocalDate from = place.on(Month.SEPTEMBER, 1);
    LocalDate fedFrom = place.on(Month.SEPTEMBER, 20);
    LocalDate fedUntil = place.on(Month.OCTOBER, 20);
    LocalDate treated = place.on(Month.NOVEMBER, 10);
    LocalDate last = place.on(Month.NOVEMBER, 30);
    LessonRun colony =
        LessonRun.of(place, from, SetUps.number("autumn.mites"))
            .treat(TreatmentLessons.VAPOUR, treated);
    LessonCourse plain = colony.until(last);
    LessonCourse fed = colony.doing(new PlanStep.LateFeeding(fedFrom, fedUntil)).until(last);
    LocalDate judged = treated.plusDays(4);
    double killedPlain = plain.killed(treated, judged) / plain.mites(treated);
    double killedFed = fed.killed(treated, judged) / fed.mites(treated);
    Panel.Builder panel = Panel.bars("percent-of-mites", List.of("no-syrup", "late-syrup"));
    Bar.reached(0, killedPlain, plain.shareOnBees(treated)).forEach(panel::bar);
    Bar.reached(1, killedFed, fed.shareOnBees(treated)).forEach(panel::bar);
    return new Figures()
        .put("broodMore", fed.brood(treated) / plain.brood(treated) - 1)
        .put("broodPlain", plain.brood(treated))
        .put("broodFed", fed.brood(treated))
        .put("underPlain", 1 - plain.shareOnBees(treated))
        .put("underFed", 1 - fed.shareOnBees(treated))
        .put("killedPlain", killedPlain)
        .put("killedFed", killedFed)
        .put("fedFrom", fedFrom)
        .put("fedUntil", fedUntil)
        .put("treated", treated)
        .result(
            place,
            fed.brood(treated) > 1.1 * plain.brood(treated) && killedPlain - killedFed > SEEN,
            panel.build());
  }

  static LessonResult autumnRise(LessonPlace place) {
    LocalDate from = place.on(Month.AUGUST, 1);
    LocalDate to = place.on(Month.OCTOBER, 15);
    LessonCourse course = LessonRun.of(place, from, SetUps.number("autumn.mites")).until(to);
    DailyTable table = course.table();
    Panel panel =
        Panel.dates("times-the-first-day")
            .line(times("mites-per-100-bees", course, table::mitesPer100Bees, from, to))
            .line(
                times(
                    "mites-on-bees",
                    course,
                    day -> table.mites(day) - table.mitesInCells(day),
                    from,
                    to))
            .line(times("all-mites", course, table::mites, from, to))
            .line(times("adult-bees", course, table::adults, from, to))
            .build();
    double mites = course.mites(to) / course.mites(from);
    double per100 = course.per100(to) / course.per100(from);
    return new Figures()
        .put("mites", mites)
        .put("bees", course.adults(to) / course.adults(from))
        .put("per100", per100)
        .put("per100First", course.per100(from))
        .put("per100Last", course.per100(to))
        .put("onBeesFirst", course.shareOnBees(from))
        .put("onBeesLast", course.shareOnBees(to))
        .put("onBees", course.shareOnBees(to) / course.shareOnBees(from))
        .put("from", from)
        .put("to", to)
        .result(place, per100 > 1.5 * mites, panel);
  }

  /** A daily value against that of the first day. */
  private static Series times(
      String key, LessonCourse course, IntToDoubleFunction value, LocalDate from, LocalDate to) {
    double first = value.applyAsDouble(0);
    return course.series(key, day -> value.applyAsDouble(day) / first, from, to);
  }
}
