package org.undercap.cli.report;

import java.time.LocalDate;
import java.util.Optional;
import org.undercap.comparison.CentralRun;
import org.undercap.comparison.Comparison;
import org.undercap.simulation.DailyTable;

/** What a reader learns from the charts, in a sentence without a full stop. */
final class ChartWords {
  private ChartWords() {}

  /** The finding of the chart of mites on 100 bees. */
  static String infestation(Answer answer) {
    LocalDate date = date(answer.comparison());
    return "Mites on 100 bees on "
        + DateWords.brief(date)
        + ", in a typical season: "
        + each(answer, run -> per100(run.table(), date));
  }

  /** A finding for readers who cannot see the chart, which says itself what it shows. */
  static String alternative(String finding) {
    return finding + ".";
  }

  /** The finding of the chart of all mites. */
  static String plans(Answer answer) {
    LocalDate date = date(answer.comparison());
    return "All mites on "
        + DateWords.brief(date)
        + ", in a typical season: "
        + each(answer, run -> all(run, date));
  }

  private interface Told {
    String of(CentralRun run);
  }

  private static String each(Answer answer, Told told) {
    int chosen = answer.advice().chosen();
    int nothing = answer.nothing();
    String first = part(answer, chosen, told);
    return chosen == nothing ? first : first + ", " + part(answer, nothing, told);
  }

  private static String part(Answer answer, int place, Told told) {
    String name = answer.name(place);
    return told.of(answer.comparison().runs().get(place))
        + (name.startsWith("\"") ? " under " + name : " when nothing is done");
  }

  /** Midwinter if it lies in the run, else the last day. */
  private static LocalDate date(Comparison comparison) {
    Optional<LocalDate> midwinter = comparison.dates().midwinter();
    return midwinter.orElse(comparison.scenario().end());
  }

  private static String per100(DailyTable table, LocalDate date) {
    int day = day(table, date);
    return day < 0 ? "colony lost" : Figures.plain(table.mitesPer100Bees(day));
  }

  private static String all(CentralRun run, LocalDate date) {
    int day = day(run.table(), date);
    return day < 0 ? "colony lost" : Figures.whole(run.table().mites(day));
  }

  private static int day(DailyTable table, LocalDate date) {
    long day = date.toEpochDay() - table.start().toEpochDay();
    return day < table.days() ? (int) day : -1;
  }
}
