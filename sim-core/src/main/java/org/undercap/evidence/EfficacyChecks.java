package org.undercap.evidence;

import static java.time.Month.AUGUST;
import static java.time.Month.DECEMBER;
import static java.time.Month.JULY;
import static org.undercap.evidence.ColonyRun.on;

import java.time.LocalDate;
import java.util.Map;
import java.util.function.Consumer;
import org.undercap.model.Hazard;
import org.undercap.treatment.EfficacyProfile;
import org.undercap.treatment.MethodCatalogue;
import org.undercap.treatment.PlanStep;

/**
 * What treatments kill. Where a finding gives neither place nor day, the colony stands in the
 * central European climate and the treatment begins on 1 August.
 */
final class EfficacyChecks {
  private static final String CENTRAL = "central-european";
  private static final LocalDate SUMMER = on(AUGUST, 1);
  private static final LocalDate WINTER = on(DECEMBER, 11);
  private static final double WARM = 20;

  private EfficacyChecks() {}

  static Map<String, Consumer<Findings>> all() {
    return Map.of(
        "oxalic-broodless", findings -> broodless(findings, "oxalic-dribble"),
        "oxalic-sublimation-broodless", findings -> broodless(findings, "oxalic-sublimation"),
        "oxalic-in-august", EfficacyChecks::oxalicInAugust,
        "thymol-in-cells", EfficacyChecks::underCappings,
        "formic-dispenser", findings -> formic(findings, "formic-dispenser", 21),
        "formic-pads", findings -> formic(findings, "formic-pads", 14),
        "amitraz-t90", EfficacyChecks::amitraz,
        "pyrethroid-susceptible", EfficacyChecks::pyrethroid,
        "caging-oxalic", EfficacyChecks::caging,
        "powdered-sugar", EfficacyChecks::sugar);
  }

  private static ColonyRun trial(String climate, LocalDate first) {
    return ColonyRun.in(climate).from(first).mites(SetUps.number("trial.mites"));
  }

  private static double critical(ColonyRun run, LocalDate first, int days) {
    return CriticalTest.percent(run.until(first.plusDays(days)), first, days);
  }

  private static void broodless(Findings findings, String method) {
    int days = 14;
    findings.judge("", critical(trial(CENTRAL, WINTER).treat(method, WINTER), WINTER, days));
    findings.remark("test of 14 days");
  }

  private static void oxalicInAugust(Findings findings) {
    LocalDate day = on(AUGUST, 15);
    for (String method : new String[] {"oxalic-dribble", "oxalic-sublimation"}) {
      int acting = MethodCatalogue.shipped().get(method).profile().release().days();
      Course course = trial(CENTRAL, day).treat(method, day).until(day.plusDays(acting));
      double killed = course.sum(day, day.plusDays(acting - 1L), course::killed);
      findings.judge(method, 100 * killed / course.mites(day));
    }
    findings.remark("killed, of all mites on the day of the treatment");
  }

  private static void underCappings(Findings findings) {
    findings.judge("formic pads", inCells("formic-pads"));
    findings.judge("thymol gel", inCells("thymol-gel"));
    findings.remark("mites sealed in before the first day and still on the last of seven, at 20 C");
  }

  /** Share of the mites under the cappings killed in seven days at 20 C (%). */
  private static double inCells(String method) {
    EfficacyProfile profile = MethodCatalogue.shipped().get(method).profile();
    double hazard = 0;
    for (int age = 0; age < 7; age++) {
      double amount = profile.release().at(age) * profile.temperature().factor(WARM);
      hazard += profile.response().hazard(amount, 1) * profile.inCellRatio();
    }
    return 100 * Hazard.fraction(hazard);
  }

  private static void formic(Findings findings, String method, int days) {
    ColonyRun run = trial(CENTRAL, SUMMER).at(WARM).treat(method, SUMMER);
    findings.judge("", critical(run, SUMMER, days));
  }

  private static void amitraz(Findings findings) {
    String method = "amitraz-strips";
    int days = MethodCatalogue.shipped().get(method).carrierDays();
    Course course = trial(CENTRAL, SUMMER).treat(method, SUMMER).until(SUMMER.plusDays(days));
    findings.judge("", CriticalTest.daysUntil(course, SUMMER, days, 0.90));
    findings.remark(
        "days until nine tenths of what is killed while the strips hang and left then are killed");
  }

  private static void pyrethroid(Findings findings) {
    ColonyRun run = trial(CENTRAL, SUMMER).treat("pyrethroid-strips", SUMMER);
    findings.judge("", critical(run, SUMMER, 42));
  }

  private static void caging(Findings findings) {
    LocalDate caged = on(JULY, 1);
    int days = 25;
    LocalDate released = caged.plusDays(days);
    ColonyRun run =
        trial("mediterranean", caged)
            .doing(new PlanStep.LayingStop(caged, days, true))
            .treat("oxalic-dribble", released);
    findings.judge("", critical(run, released, (int) SetUps.number("caging.followUp")));
    findings.remark("test of 7 days from the dribble on, before new brood is sealed");
  }

  private static void sugar(Findings findings) {
    LocalDate first = on(JULY, 1);
    int times = 6;
    LocalDate end = first.plusWeeks(times);
    ColonyRun run = trial(CENTRAL, first);
    double untreated = run.until(end).mites(end);
    for (int week = 0; week < times; week++) {
      run.treat("powdered-sugar", first.plusWeeks(week));
    }
    findings.judge("", 100 * (1 - run.until(end).mites(end) / untreated));
    findings.remark("all mites a week after the last dusting");
  }
}
