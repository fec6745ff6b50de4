package org.undercap.evidence;

import static java.time.Month.APRIL;
import static java.time.Month.AUGUST;
import static java.time.Month.JULY;
import static java.time.Month.JUNE;
import static java.time.Month.MARCH;
import static java.time.Month.SEPTEMBER;
import static org.undercap.evidence.ColonyRun.on;

import java.time.LocalDate;
import java.util.Map;
import java.util.function.Consumer;
import org.undercap.parameter.ParameterSet;
import org.undercap.simulation.DailyColumn;
import org.undercap.simulation.DailyTable;

/** Where the mites are, and how often they enter cells. */
final class BiologyChecks {
  private BiologyChecks() {}

  static Map<String, Consumer<Findings>> all() {
    return Map.of(
        "brood-share-season", BiologyChecks::broodShare,
        "total-to-adults", BiologyChecks::totalToAdults,
        "cell-entries", BiologyChecks::cellEntries);
  }

  private static ColonyRun untreated(String climate) {
    return ColonyRun.in(climate).from(on(MARCH, 1)).mites(SetUps.number("season.mites"));
  }

  private static void broodShare(Findings findings) {
    Course course = untreated("central-european").until(on(JULY, 31));
    DailyTable table = course.table();
    findings.judge(
        "mean of the days",
        course.mean(on(APRIL, 1), on(JULY, 31), day -> table.mitesInCells(day) / table.mites(day)));
  }

  private static void totalToAdults(Findings findings) {
    for (String climate : new String[] {"central-european", "humid-subtropical"}) {
      LocalDate last = on(SEPTEMBER, 30);
      Course course = untreated(climate).until(last);
      DailyTable table = course.table();
      findings.judge(
          climate,
          course.mean(
              on(AUGUST, 15),
              last,
              day -> table.mites(day) / table.at(DailyColumn.MITES_ON_BEES, day)));
    }
    findings.remark("means of the days");
  }

  private static void cellEntries(Findings findings) {
    Course before = untreated("central-european").until(on(JUNE, 1).minusDays(1));
    CellEntries entries = new CellEntries();
    ColonyRun.in("central-european").from(on(JUNE, 1)).from(before.end(), on(JUNE, 30), entries);
    findings.judge("", entries.ofWorkerCell(ParameterSet.shipped()));
    findings.remark("central-european; mean chances of the days of June");
  }
}
