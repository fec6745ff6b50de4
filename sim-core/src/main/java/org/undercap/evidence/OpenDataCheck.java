package org.undercap.evidence;

import static java.time.Month.NOVEMBER;
import static java.time.Month.OCTOBER;
import static java.time.Month.SEPTEMBER;
import static org.undercap.evidence.ColonyRun.on;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.undercap.internal.CsvResource;
import org.undercap.internal.CsvRow;
import org.undercap.model.Cohorts;
import org.undercap.model.ColonyLanes;
import org.undercap.model.Hazard;
import org.undercap.model.Part;
import org.undercap.simulation.DayObserver;
import org.undercap.simulation.SimulationDay;

/**
 * The colonies with amitraz strips of the open data in {@code amitraz-thymol-trial.csv}, repeated
 * by one colony with the mean bees, sealed brood and mites of the first count.
 *
 * <p>Mites are counted in the model as in the trial: those on the bees, and one for each infested
 * worker cell, however many mothers sit in it. The published change is the mean over the colonies
 * of each colony's own change; it has no untreated group, so that growth and arrivals in the same
 * weeks are part of it. None arrive in the model.
 */
final class OpenDataCheck {
  private static final String GROUP = "amitraz strips";
  private static final LocalDate FIRST_COUNT = on(SEPTEMBER, 19);
  private static final LocalDate TREATED = on(SEPTEMBER, 23);
  private static final LocalDate DAY_21 = on(OCTOBER, 14);
  private static final LocalDate DAY_42 = on(NOVEMBER, 4);

  private OpenDataCheck() {}

  static Map<String, Consumer<Findings>> all() {
    return Map.of("amitraz-open-data", OpenDataCheck::amitraz);
  }

  private static void amitraz(Findings findings) {
    List<CsvRow> before =
        CsvResource.read(OpenDataCheck.class, "amitraz-thymol-trial.csv").stream()
            .filter(row -> row.text("group").equals(GROUP) && row.text("day").equals("0"))
            .toList();
    Counts counts = new Counts();
    ColonyRun.in("humid-subtropical")
        .from(FIRST_COUNT)
        .scaled(colony -> bringTo(colony, before))
        .treat("amitraz-strips", TREATED)
        .until(DAY_42, counts);
    findings.show("day 0", counts.first, "mites");
    findings.judge("day 21", 100 * (counts.day21 / counts.first - 1));
    findings.judge("day 42", 100 * (counts.day42 / counts.first - 1));
    findings.remark("no mites arrive; humid-subtropical is the nearest shipped climate");
  }

  private static double mean(List<CsvRow> rows, String column) {
    return rows.stream().mapToDouble(row -> row.number(column)).average().orElseThrow();
  }

  private static void bringTo(ColonyLanes colony, List<CsvRow> counted) {
    double sealed = mean(counted, "capped_worker_cells");
    double brood = colony.brood(0) * sealed / colony.total(Part.SEALED_WORKERS, 0);
    colony.scaleTo(0, mean(counted, "adult_bees"), brood, colony.mites(0));
    double wanted = mean(counted, "total_mites");
    double low = 0;
    double high = 100 * wanted;
    while (high - low > 1e-9 * wanted) {
      double middle = (low + high) / 2;
      colony.scaleMites(0, middle);
      if (counted(colony) < wanted) {
        low = middle;
      } else {
        high = middle;
      }
    }
  }

  /** Mites on the bees, and one for each infested worker cell. */
  private static double counted(ColonyLanes colony) {
    Cohorts cells = colony.sealedWorkerCells();
    Cohorts mothers = colony.mothersInWorkerCells();
    double sum = colony.total(Part.MITES_ON_BEES, 0);
    for (int age = 0; age < cells.ages(); age++) {
      double inCohort = cells.row(age)[0];
      if (inCohort > 0) {
        sum += inCohort * Hazard.fraction(mothers.row(age)[0] / inCohort);
      }
    }
    return sum;
  }

  /** Counts as the trial did, on its days. */
  private static final class Counts implements DayObserver {
    private double first;
    private double day21;
    private double day42;

    @Override
    public void dayBegins(SimulationDay day) {
      LocalDate date = day.date();
      if (date.equals(FIRST_COUNT)) {
        first = counted(day.colony());
      } else if (date.equals(DAY_21)) {
        day21 = counted(day.colony());
      } else if (date.equals(DAY_42)) {
        day42 = counted(day.colony());
      }
    }
  }
}
