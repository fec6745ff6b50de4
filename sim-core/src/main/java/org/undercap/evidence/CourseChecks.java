package org.undercap.evidence;

import static java.time.Month.APRIL;
import static java.time.Month.MARCH;
import static java.time.Month.SEPTEMBER;
import static org.undercap.evidence.ColonyRun.on;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.function.Consumer;
import org.undercap.climate.Climate;
import org.undercap.climate.Hemisphere;
import org.undercap.climate.MonthlyNormals;
import org.undercap.climate.MonthlyTable;
import org.undercap.climate.SeasonDay;
import org.undercap.treatment.PlanStep;

/** How long an untreated colony lives. */
final class CourseChecks {
  private static final int YEARS = 10;

  private CourseChecks() {}

  static Map<String, Consumer<Findings>> all() {
    return Map.of(
        "untreated-nordic", CourseChecks::nordic,
        "untreated-central", CourseChecks::central);
  }

  private static void central(Findings findings) {
    ColonyRun run = ColonyRun.in("central-european").from(on(MARCH, 1)).mites(20);
    findings.judge("", yearsAlive(run.until(on(MARCH, 1).plusYears(YEARS))));
  }

  private static void nordic(Findings findings) {
    LocalDate first = on(APRIL, 15);
    ColonyRun run = ColonyRun.in(southEastFinland()).from(first).mites(6);
    for (int year = 0; year < YEARS; year++) {
      LocalDate stop = on(SEPTEMBER, 10).plusYears(year);
      int days = (int) ChronoUnit.DAYS.between(stop, first.plusYears(year + 1L));
      run.doing(new PlanStep.LayingStop(stop, days, false));
    }
    findings.judge("", yearsAlive(run.until(first.plusYears(YEARS))));
    findings.remark("6 mites on 15 April; laying and temperatures are assumptions");
  }

  private static Climate southEastFinland() {
    return new Climate(
        "south-east-finland",
        "south-east Finland 61 N",
        Hemisphere.NORTH,
        new MonthlyNormals(new MonthlyTable(SetUps.numbers("finland.temperature"))),
        new MonthlyTable(SetUps.numbers("finland.eggs")),
        new MonthlyTable(SetUps.numbers("finland.drones")));
  }

  /** Years until the colony is lost, infinite if it lives. */
  private static double yearsAlive(Course course) {
    return course.table().lost()
        ? (double) course.table().days() / SeasonDay.DAYS
        : Double.POSITIVE_INFINITY;
  }
}
