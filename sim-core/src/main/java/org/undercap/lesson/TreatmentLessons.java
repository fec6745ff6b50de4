package org.undercap.lesson;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.undercap.lesson.LessonResult.Figures;
import org.undercap.simulation.DailyTable;
import org.undercap.treatment.PlanStep;

/** Lessons about what a treatment reaches. */
final class TreatmentLessons {
  static final String VAPOUR = "oxalic-sublimation";
  static final String DRIBBLE = "oxalic-dribble";
  static final String GEL = "thymol-gel";

  private static final int SIX_WEEKS = 42;
  private static final int FOUR_WEEKS = 28;
  private static final int A_WEEK = 7;

  private TreatmentLessons() {}

  static LessonResult fourDates(LessonPlace place) {
    List<LocalDate> dates =
        List.of(
            place.on(Month.AUGUST, 15),
            place.on(Month.SEPTEMBER, 15),
            place.on(Month.OCTOBER, 15),
            place.on(Month.NOVEMBER, 15));
    Panel.Builder panel =
        Panel.bars("percent-of-mites", dates.stream().map(LocalDate::toString).toList());
    Figures figures = new Figures();
    List<Double> killed = new ArrayList<>();
    int days = LessonRun.method(VAPOUR).profile().release().days();
    for (int i = 0; i < dates.size(); i++) {
      LocalDate date = dates.get(i);
      LessonCourse course =
          LessonRun.of(place, date, SetUps.number("trial.mites"))
              .treat(VAPOUR, date)
              .until(date.plusDays(days));
      double share = course.killed(date, date.plusDays(days)) / course.mites(date);
      double onBees = course.shareOnBees(date);
      killed.add(share);
      Bar.reached(i, share, onBees).forEach(panel::bar);
      figures.put("killed" + (i + 1), share).put("onBees" + (i + 1), onBees);
      figures.put("date" + (i + 1), date);
    }
    LocalDate winterBeesUntil =
        LessonRun.of(place, dates.get(0), SetUps.number("trial.mites"))
            .until(dates.get(3))
            .seasonDates(place.climate())
            .winterBeesUntil();
    boolean holds =
        IntStream.range(1, killed.size()).allMatch(i -> killed.get(i) > killed.get(i - 1))
            && killed.get(0) < 0.5
            && dates.get(3).isAfter(winterBeesUntil);
    return figures.result(place, holds, panel.build());
  }

  static LessonResult countClimbs(LessonPlace place) {
    LocalDate treated = place.on(Month.AUGUST, 15);
    LocalDate last = treated.plusDays(FOUR_WEEKS);
    LessonRun colony = LessonRun.of(place, treated, SetUps.number("trial.mites"));
    LessonCourse none = colony.until(last);
    LessonCourse once = colony.treat(VAPOUR, treated).until(last);
    DailyTable table = once.table();
    int low = 0;
    for (int day = 1; day < table.days(); day++) {
      low = table.mitesPer100Bees(day) < table.mitesPer100Bees(low) ? day : low;
    }
    double before = once.per100(treated);
    double lowest = table.mitesPer100Bees(low);
    double end = once.per100(last);
    Panel panel =
        Panel.numbers("days-after-treatment", "mites-per-100-bees")
            .line(per100("untreated", none))
            .line(per100("treated-once", once))
            .build();
    return new Figures()
        .put("before", before)
        .put("lowest", lowest)
        .put("lowDay", low)
        .put("end", end)
        .put("back", (end - lowest) / (before - lowest))
        .put("under", 1 - once.shareOnBees(treated))
        .put("treated", treated)
        .result(place, lowest < 0.6 * before && end > before, panel);
  }

  private static Series per100(String key, LessonCourse course) {
    DailyTable table = course.table();
    List<Double> days = IntStream.range(0, table.days()).mapToObj(day -> (double) day).toList();
    return Series.of(
        key, days, IntStream.range(0, table.days()).mapToObj(table::mitesPer100Bees).toList());
  }

  static LessonResult gelWarmth(LessonPlace place) {
    LocalDate first = place.on(Month.AUGUST, 15);
    LocalDate last = first.plusDays(SIX_WEEKS);
    int apart = LessonRun.method(GEL).usual().course().everyDays();
    Panel.Builder panel =
        Panel.numbers("days-after-first-tray", "percent-of-untreated")
            .span("first-tray", 0, 0)
            .span("second-tray", apart, apart)
            .level("untreated", 100);
    Figures figures = new Figures();
    List<Double> left = new ArrayList<>();
    List<Double> afterAWeek = new ArrayList<>();
    for (double celsius : SetUps.numbers("gel.temperatures")) {
      LessonRun colony = LessonRun.of(place, first, SetUps.number("trial.mites")).at(celsius);
      DailyTable none = colony.until(last).table();
      DailyTable gel = colony.treatAsUsual(GEL, first).until(last).table();
      List<Double> days = IntStream.range(0, gel.days()).mapToObj(day -> (double) day).toList();
      List<Double> shares = days.stream().map(d -> share(gel, none, d.intValue())).toList();
      panel.line(new Series("at-temperature", OptionalDouble.of(celsius), days, shares));
      left.add(shares.get(shares.size() - 1) / 100);
      afterAWeek.add(shares.get(A_WEEK) / 100);
      figures.put("t" + left.size(), celsius).put("left" + left.size(), left.get(left.size() - 1));
    }
    boolean warmerIsStronger =
        IntStream.range(1, left.size()).allMatch(i -> left.get(i) < left.get(i - 1));
    return figures
        .put("weekMiddle", afterAWeek.get(2))
        .put("weekWarmest", afterAWeek.get(afterAWeek.size() - 1))
        .put("first", first)
        .result(
            place,
            warmerIsStronger
                && left.get(0) > 2 * left.get(2)
                && afterAWeek.get(2) > 2 * left.get(2),
            panel.build());
  }

  private static double share(DailyTable treated, DailyTable none, int day) {
    return 100 * treated.mites(day) / none.mites(day);
  }

  static LessonResult broodlessWindow(LessonPlace place) {
    LocalDate caged = place.on(Month.JULY, 10);
    int days = SetUps.whole("caging.days");
    LocalDate dribbled = caged.plusDays(days);
    LocalDate over = dribbled.plusDays(LessonRun.method(DRIBBLE).profile().release().days());
    LessonRun colony = LessonRun.of(place, caged, SetUps.number("trial.mites"));
    LessonCourse alone = colony.treat(DRIBBLE, dribbled).until(over);
    LessonCourse window =
        colony
            .doing(new PlanStep.LayingStop(caged, days, true))
            .treat(DRIBBLE, dribbled)
            .until(over);
    double killedAlone = alone.killed(dribbled, over) / alone.mites(dribbled);
    double killedWindow = window.killed(dribbled, over) / window.mites(dribbled);
    double onBeesAlone = alone.shareOnBees(dribbled);
    double onBeesWindow = window.shareOnBees(dribbled);
    Panel.Builder panel = Panel.bars("percent-of-mites", List.of("queen-laying", "queen-caged"));
    Bar.reached(0, killedAlone, onBeesAlone).forEach(panel::bar);
    Bar.reached(1, killedWindow, onBeesWindow).forEach(panel::bar);
    return new Figures()
        .put("days", days)
        .put("alone", killedAlone)
        .put("window", killedWindow)
        .put("onBeesAlone", onBeesAlone)
        .put("onBeesWindow", onBeesWindow)
        .put("caged", caged)
        .put("dribbled", dribbled)
        .result(place, killedWindow > 0.85 && killedAlone < killedWindow - 0.2, panel.build());
  }
}
