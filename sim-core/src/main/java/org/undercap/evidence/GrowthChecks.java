package org.undercap.evidence;

import static java.time.Month.DECEMBER;
import static java.time.Month.JULY;
import static java.time.Month.JUNE;
import static java.time.Month.MARCH;
import static org.undercap.evidence.ColonyRun.on;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.IntPredicate;
import org.undercap.analysis.FrozenColony;
import org.undercap.analysis.GrowthRates;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.climate.MonthlyTable;
import org.undercap.model.ColonyLanes;
import org.undercap.model.Part;
import org.undercap.parameter.ParameterSet;

/** How fast the mites grow. */
final class GrowthChecks {
  private static final List<String> CLIMATES =
      List.of("central-european", "temperate-oceanic", "cool-oceanic");

  private GrowthChecks() {}

  static Map<String, Consumer<Findings>> all() {
    return Map.of(
        "growth-brood-season", GrowthChecks::broodSeason,
        "growth-doubling", GrowthChecks::doubling,
        "growth-one-winter-mite", GrowthChecks::oneWinterMite,
        "growth-eigenvalue", GrowthChecks::eigenvalue,
        "growth-return-summer", GrowthChecks::returnInSummer,
        "growth-rebound", GrowthChecks::rebound);
  }

  /** Least-squares slope of the logarithm of all mites over the season (per day). */
  private static double rate(Climate climate) {
    return GrowthRates.overSeason(climate, ParameterSet.shipped()).rate();
  }

  private static double rate(String climate) {
    return rate(ClimateCatalogue.shipped().get(climate));
  }

  private static void broodSeason(Findings findings) {
    CLIMATES.forEach(climate -> findings.judge(climate, rate(climate)));
    MonthlyTable noDrones = new MonthlyTable(Collections.nCopies(12, 0.0));
    Climate central = ClimateCatalogue.shipped().get(CLIMATES.get(0)).withDroneShare(noDrones);
    findings.show("central-european without drone brood", rate(central), "per day");
    findings.remark("least-squares slope over the days");
  }

  private static void doubling(Findings findings) {
    CLIMATES.forEach(climate -> findings.judge(climate, StrictMath.log(2) / rate(climate)));
  }

  private static void oneWinterMite(Findings findings) {
    Climate central = ClimateCatalogue.shipped().get(CLIMATES.get(0));
    findings.judge(
        "", GrowthRates.overSeason(central, ParameterSet.shipped()).autumnPerWinterMite());
  }

  private static void returnInSummer(Findings findings) {
    findings.judge("", daysToThree("none"));
    findings.show("with many colonies nearby", daysToThree("dense"), "days");
    findings.remark("nothing arrives in the run that is judged");
  }

  /** Days from 0.25 to 3 mites per 100 bees from 1 July on. */
  private static double daysToThree(String arrivals) {
    LocalDate first = on(JULY, 1);
    Course course =
        ColonyRun.in("humid-subtropical")
            .from(first)
            .arriving(arrivals)
            .scaled(colony -> bringTo(colony, 0.25))
            .until(first.plusYears(1));
    return daysUntil(course, day -> course.table().mitesPer100Bees(day) >= 3);
  }

  private static void bringTo(ColonyLanes colony, double per100Bees) {
    double now = 100 * colony.total(Part.MITES_ON_BEES, 0) / colony.adults(0);
    colony.scaleMites(0, colony.mites(0) * per100Bees / now);
  }

  private static void rebound(Findings findings) {
    LocalDate treated = on(JUNE, 10);
    double mites = SetUps.number("season.mites");
    ColonyLanes colony =
        ColonyRun.in("temperate-oceanic")
            .from(on(MARCH, 1))
            .mites(mites)
            .until(treated.minusDays(1))
            .end();
    double before = colony.mites(0);
    colony.scaleMites(0, (1 - 0.80) * before);
    Course after = ColonyRun.in("temperate-oceanic").from(treated).from(colony, on(DECEMBER, 31));
    findings.judge("", daysUntil(after, day -> after.table().mites(day) >= before));
  }

  /** Days until something is so, NaN if never. */
  private static double daysUntil(Course course, IntPredicate holds) {
    for (int day = 0; day < course.table().days(); day++) {
      if (holds.test(day)) {
        return day;
      }
    }
    return Double.NaN;
  }

  private static void eigenvalue(Findings findings) {
    FrozenColony frozen =
        new FrozenColony(
            ColonyRun.in("central-european").from(on(JUNE, 15)).firstDay(), ParameterSet.shipped());
    double matrix = frozen.growthByMatrix();
    double run = frozen.growthByRun(400);
    findings.show("matrix", matrix, "per day");
    findings.show("run", run, "per day");
    findings.judge("difference", Math.abs(matrix - run));
    findings.remark("bees and brood of central-european on 15 June");
  }
}
