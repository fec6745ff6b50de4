package org.undercap.lesson;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import org.undercap.lesson.LessonResult.Figures;
import org.undercap.simulation.DailyColumn;

/** Where the mites of a treatment went: the account of six weeks, for several methods. */
final class LedgerLesson {
  private static final int SIX_WEEKS = 42;
  private static final List<String> ROWS =
      List.of("at-the-start", "new-mites", "killed", "left-at-the-end");

  private LedgerLesson() {}

  /** The account of one colony; it closes. */
  record Account(
      double onBees,
      double inCells,
      double killedOnBees,
      double killedInCells,
      double died,
      double born,
      double arrived,
      double leftOnBees,
      double leftInCells) {
    static Account of(LessonCourse course, LocalDate from, LocalDate to) {
      return new Account(
          course.mites(from) * course.shareOnBees(from),
          course.mites(from) * (1 - course.shareOnBees(from)),
          course.sum(DailyColumn.MITES_KILLED_ON_BEES, from, to),
          course.sum(DailyColumn.MITES_KILLED_IN_CELLS, from, to),
          course.sum(DailyColumn.MITES_DIED_NATURALLY, from, to)
              + course.sum(DailyColumn.MITES_LOST_AT_EMERGENCE, from, to),
          course.born(from, to),
          course.sum(DailyColumn.MITES_ARRIVED, from, to),
          course.mites(to) * course.shareOnBees(to),
          course.mites(to) * (1 - course.shareOnBees(to)));
    }

    double left() {
      return leftOnBees + leftInCells;
    }

    /** Share killed of all that were there, were born or arrived (fraction). */
    double killedOfAll() {
      return (killedOnBees + killedInCells) / (onBees + inCells + born + arrived);
    }

    List<Bar> bars() {
      List<Bar> bars = new ArrayList<>();
      bars.add(new Bar(0, "on-bees", 0, onBees));
      bars.add(new Bar(0, "in-cells", onBees, onBees + inCells));
      double at = onBees + inCells;
      double grown = born - died + arrived;
      at = grown < 0 ? down(bars, 1, "died", at, -grown) : up(bars, 1, at, grown);
      down(bars, 2, "killed-by-treatment", at, killedOnBees + killedInCells);
      bars.add(new Bar(3, "on-bees", 0, leftOnBees));
      bars.add(new Bar(3, "in-cells", leftOnBees, left()));
      return bars;
    }

    private static double down(List<Bar> bars, int row, String part, double at, double by) {
      bars.add(new Bar(row, part, Math.max(0, at - by), at));
      return at - by;
    }

    private static double up(List<Bar> bars, int row, double at, double by) {
      bars.add(new Bar(row, "more", at, at + by));
      return at + by;
    }
  }

  static LessonResult teach(LessonPlace place) {
    LocalDate from = place.on(Month.AUGUST, 15);
    LocalDate to = from.plusDays(SIX_WEEKS);
    LessonRun colony =
        LessonRun.of(place, from, SetUps.number("trial.mites")).arriving("low", from, to);
    List<String> methods = List.of("oxalic-sublimation", "thymol-gel", "formic-pads");
    IntFunction<LessonCourse> treated = i -> colony.treatAsUsual(methods.get(i), from).until(to);
    Figures figures = new Figures().put("start", SetUps.number("trial.mites"));
    List<Panel> panels = new ArrayList<>();
    List<Account> accounts = new ArrayList<>();
    for (int i = 0; i < methods.size(); i++) {
      Account account = Account.of(treated.apply(i), from, to);
      accounts.add(account);
      Panel.Builder panel = Panel.bars("mites", ROWS).named(methods.get(i));
      account.bars().forEach(panel::bar);
      panels.add(panel.build());
      figures
          .put("left" + (i + 1), account.left())
          .put("killed" + (i + 1), account.killedOfAll())
          .put("born" + (i + 1), account.born())
          .put("new" + (i + 1), account.born() - account.died() + account.arrived())
          .put("inCells" + (i + 1), account.killedInCells())
          .put("hidden", account.inCells());
    }
    double hidden =
        accounts.get(0).inCells() / (accounts.get(0).onBees() + accounts.get(0).inCells());
    Account once = accounts.get(0);
    return figures
        .put("hiddenShare", hidden)
        .put("from", from)
        .result(
            place,
            hidden > 0.5
                && once.killedInCells() == 0
                && accounts.get(2).killedInCells() > 0
                && once.left() > Math.max(accounts.get(1).left(), accounts.get(2).left()),
            panels.toArray(Panel[]::new));
  }
}
