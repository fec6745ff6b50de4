package org.undercap.lesson;

import java.time.LocalDate;
import java.time.Month;
import org.undercap.lesson.LessonResult.Figures;
import org.undercap.simulation.DailyColumn;

/** Lessons about mites that arrive from other colonies. */
final class ArrivalLessons {
  private static final String COLLAPSING = "collapsing";
  private static final String STRIPS = "amitraz-strips";
  private static final int SIX_WEEKS = 42;

  private ArrivalLessons() {}

  static LessonResult slowRelease(LessonPlace place) {
    LocalDate from = place.on(Month.SEPTEMBER, 1);
    LocalDate to = from.plusDays(SIX_WEEKS);
    LessonRun quiet = LessonRun.of(place, from, SetUps.number("autumn.mites"));
    LessonRun robbed = quiet.arriving(COLLAPSING, from, to);
    double quietOnce = left(quiet.treat(TreatmentLessons.VAPOUR, from), to);
    double robbedOnce = left(robbed.treat(TreatmentLessons.VAPOUR, from), to);
    double quietSlow = left(quiet.treat(STRIPS, from), to);
    double robbedSlow = left(robbed.treat(STRIPS, from), to);
    double arrived = robbed.until(to).sum(DailyColumn.MITES_ARRIVED, from, to);
    return new Figures()
        .put("arrived", arrived)
        .put("once", robbedOnce)
        .put("slow", robbedSlow)
        .put("quietOnce", quietOnce)
        .put("quietSlow", quietSlow)
        .put("extraOnce", robbedOnce - quietOnce)
        .put("extraSlow", robbedSlow - quietSlow)
        .put("from", from)
        .put("to", to)
        .result(
            place,
            robbedOnce - quietOnce > 2 * (robbedSlow - quietSlow),
            panel(quiet, "no-arrivals", from, to),
            panel(robbed, "arrivals-for-six-weeks", from, to));
  }

  private static double left(LessonRun run, LocalDate to) {
    return run.until(to).mites(to);
  }

  private static Panel panel(LessonRun colony, String name, LocalDate from, LocalDate to) {
    LessonCourse none = colony.until(to);
    LessonCourse once = colony.treat(TreatmentLessons.VAPOUR, from).until(to);
    LessonCourse slow = colony.treat(STRIPS, from).until(to);
    return Panel.dates("mites")
        .named(name)
        .line(none.series("nothing", none.table()::mites, from, to))
        .line(once.series("single-dose", once.table()::mites, from, to))
        .line(slow.series("slow-release", slow.table()::mites, from, to))
        .build();
  }

  static LessonResult collapse(LessonPlace place) {
    LocalDate from = place.on(Month.AUGUST, 1);
    LocalDate treated = place.on(Month.AUGUST, 5);
    LocalDate gelOut = treated.plusDays(SIX_WEEKS);
    LocalDate fall = place.on(Month.SEPTEMBER, 20);
    LocalDate quietAgain = place.on(Month.OCTOBER, 15);
    LocalDate last = place.on(Month.NOVEMBER, 1);
    LessonRun colony =
        LessonRun.of(place, from, SetUps.number("autumn.mites"))
            .treatAsUsual(TreatmentLessons.GEL, treated);
    LessonCourse quiet = colony.until(last);
    LessonCourse robbed = colony.arriving(COLLAPSING, fall, quietAgain).until(last);
    Panel panel =
        Panel.dates("mites-per-100-bees")
            .line(quiet.series("quiet-neighbours", quiet.table()::mitesPer100Bees, gelOut, last))
            .line(
                robbed.series("neighbour-collapses", robbed.table()::mitesPer100Bees, gelOut, last))
            .span("robbing", fall, quietAgain)
            .build();
    return new Figures()
        .put("arrived", robbed.sum(DailyColumn.MITES_ARRIVED, from, last))
        .put("before", robbed.per100(fall))
        .put("quiet", quiet.per100(last))
        .put("robbed", robbed.per100(last))
        .put("times", robbed.per100(last) / quiet.per100(last))
        .put("gelOut", gelOut)
        .put("fall", fall)
        .put("last", last)
        .result(place, robbed.per100(last) > 2 * quiet.per100(last), panel);
  }
}
