package org.undercap.lesson;

import java.time.LocalDate;
import java.time.Month;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.undercap.climate.Hemisphere;
import org.undercap.lesson.LessonResult.Figures;
import org.undercap.simulation.DailyColumn;
import org.undercap.simulation.DailyTable;
import org.undercap.treatment.PlanStep;

/** Lessons about the year of an untreated colony. */
final class SeasonLessons {
  private static final int YEAR_DAYS = 364;
  private static final int HALF_A_YEAR = 182;

  /** Two dates half a year apart may miss by so much, since months differ in length (days). */
  private static final int MIRROR_DAYS = 4;

  /** Lines over a whole year hold one day in five. */
  private static final int EVERY = 5;

  private SeasonLessons() {}

  private static LessonCourse untreatedYear(LessonPlace place) {
    LocalDate first = place.on(Month.JANUARY, 1);
    return LessonRun.of(place, first, SetUps.number("year.mites")).until(first.plusDays(YEAR_DAYS));
  }

  static LessonResult year(LessonPlace place) {
    LessonCourse course = untreatedYear(place);
    DailyTable table = course.table();
    LocalDate first = table.start();
    LocalDate last = course.date(table.days() - 1);
    LocalDate midsummer = place.on(Month.JULY, 1);
    LocalDate broodPeak = course.peak(table::brood);
    LocalDate mitePeak = course.peak(table::mites);
    long later = ChronoUnit.DAYS.between(broodPeak, mitePeak);
    double under = 1 - course.shareOnBees(midsummer);
    Panel bees =
        Panel.dates("bees-and-cells")
            .named("bees-and-brood")
            .area(course.series("adult-bees", table::adults, first, last, EVERY))
            .area(course.series("brood", table::brood, first, last, EVERY))
            .span("most-brood", broodPeak, broodPeak)
            .build();
    return new Figures()
        .put("start", SetUps.number("year.mites"))
        .put("broodPeak", broodPeak)
        .put("mitePeak", mitePeak)
        .put("weeks", later / 7.0)
        .put("under", under)
        .put("most", course.mites(mitePeak))
        .result(place, later >= 28 && under > 0.5, bees, mites(course, broodPeak, mitePeak));
  }

  private static Panel mites(LessonCourse course, LocalDate broodPeak, LocalDate mitePeak) {
    DailyTable table = course.table();
    LocalDate first = table.start();
    LocalDate last = course.date(table.days() - 1);
    return Panel.dates("mites")
        .named("mites")
        .line(
            course.series(
                "on-bees", day -> table.at(DailyColumn.MITES_ON_BEES, day), first, last, EVERY))
        .line(course.series("in-cells", table::mitesInCells, first, last, EVERY))
        .line(course.series("all-mites", table::mites, first, last, EVERY))
        .span("weeks-later", broodPeak, mitePeak)
        .span("most-mites", mitePeak, mitePeak)
        .build();
  }

  static LessonResult oneMite(LessonPlace place) {
    LocalDate first = place.on(Month.JANUARY, 1);
    int months = 11;
    LessonCourse course = LessonRun.of(place, first, 1).until(first.plusMonths(months));
    Figures figures = new Figures();
    List<String> rows = new ArrayList<>();
    List<Double> values = new ArrayList<>();
    for (int month = 0; month <= months; month++) {
      LocalDate date = first.plusMonths(month);
      rows.add(date.toString());
      values.add(course.mites(date));
      figures.put("month" + (month + 1), course.mites(date));
    }
    Panel.Builder panel = Panel.bars("mites", rows);
    for (int row = 0; row < rows.size(); row++) {
      panel.bar(new Bar(row, "all-mites", 0, values.get(row)));
    }
    LocalDate spring = place.on(Month.APRIL, 1);
    LocalDate summer = place.on(Month.AUGUST, 1);
    double growth = course.mites(summer) / course.mites(spring);
    double doublings = StrictMath.log(growth) / StrictMath.log(2);
    double days = ChronoUnit.DAYS.between(spring, summer) / doublings;
    boolean holds = course.mites(summer) >= 8 && doublings >= 3;
    return figures
        .put("doublings", doublings)
        .put("days", days)
        .put("summer", course.mites(summer))
        .put("last", values.get(months))
        .put("summerDate", summer)
        .put("springDate", spring)
        .put("lastDate", first.plusMonths(months))
        .result(place, holds, panel.build());
  }

  static LessonResult droneComb(LessonPlace place) {
    LocalDate first = place.on(Month.APRIL, 1);
    LocalDate hung = place.on(Month.APRIL, 20);
    LocalDate away = place.on(Month.JULY, 15);
    LocalDate last = place.on(Month.SEPTEMBER, 1);
    PlanStep frame = new PlanStep.DroneFrame(hung, away, SetUps.number("drone.factor"));
    List<PlanStep> cuts = new ArrayList<>();
    int every = SetUps.whole("drone.every");
    for (LocalDate cut = hung.plusDays(every); !cut.isAfter(away); cut = cut.plusDays(every)) {
      cuts.add(new PlanStep.DroneCombRemoval(cut, SetUps.number("drone.removed")));
    }
    LessonRun colony = LessonRun.of(place, first, SetUps.number("season.mites"));
    LessonCourse none = colony.until(last);
    LessonCourse cut = colony.doing(frame).doing(cuts).until(last);
    LessonCourse forgotten = colony.doing(frame).until(last);
    Panel.Builder panel =
        Panel.dates("mites")
            .line(none.series("no-drone-frame", none.table()::mites, first, last))
            .line(cut.series("frame-cut", cut.table()::mites, first, last))
            .line(forgotten.series("frame-forgotten", forgotten.table()::mites, first, last));
    for (PlanStep removal : cuts) {
      panel.span("comb-cut", removal.date(), removal.date());
    }
    return new Figures()
        .put("none", none.mites(last))
        .put("cut", cut.mites(last))
        .put("forgotten", forgotten.mites(last))
        .put("fewer", 1 - cut.mites(last) / none.mites(last))
        .put("times", forgotten.mites(last) / none.mites(last))
        .put("cuts", cuts.size())
        .put("last", last)
        .result(
            place,
            cut.mites(last) < 0.8 * none.mites(last)
                && forgotten.mites(last) > 1.1 * none.mites(last),
            panel.build());
  }

  static LessonResult northSouth(LessonPlace place) {
    boolean inNorth = place.climate().hemisphere() == Hemisphere.NORTH;
    LessonPlace north = inNorth ? place : place.mirrored();
    LessonPlace south = inNorth ? place.mirrored() : place;
    LessonCourse northern = untreatedYear(north);
    LessonCourse southern = untreatedYear(south);
    LocalDate northPeak = northern.peak(northern.table()::mites);
    LocalDate southPeak = southern.peak(southern.table()::mites);
    long apart = ChronoUnit.DAYS.between(northPeak, southPeak);
    return new Figures()
        .put("northPeak", northPeak)
        .put("southPeak", southPeak)
        .put("apart", (double) apart)
        .put("months", apart / 30.4)
        .result(
            place,
            Math.abs(apart - HALF_A_YEAR) <= MIRROR_DAYS,
            Panel.dates("mites")
                .line(allMites("year-north", northern))
                .line(allMites("year-south", southern))
                .span("most-mites-north", northPeak, northPeak)
                .span("most-mites-south", southPeak, southPeak)
                .build());
  }

  private static Series allMites(String key, LessonCourse course) {
    DailyTable table = course.table();
    LocalDate last = course.date(table.days() - 1);
    return course.series(key, table::mites, table.start(), last, EVERY);
  }
}
