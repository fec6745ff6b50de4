package org.undercap.evidence;

import static java.time.Month.AUGUST;
import static java.time.Month.DECEMBER;
import static java.time.Month.JANUARY;
import static java.time.Month.JUNE;
import static java.time.Month.MARCH;
import static java.time.Month.NOVEMBER;
import static java.time.Month.OCTOBER;
import static org.undercap.evidence.ColonyRun.on;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.undercap.climate.SeasonDay;
import org.undercap.parameter.ParameterSet;
import org.undercap.simulation.DailyColumn;

/** Bees of a colony without mites. */
final class BeeChecks {
  private static final List<String> TEMPERATE =
      List.of(
          "temperate-oceanic",
          "cool-oceanic",
          "central-european",
          "continental-cold",
          "continental-warm-summer",
          "southern-temperate");

  private BeeChecks() {}

  static Map<String, Consumer<Findings>> all() {
    return Map.of(
        "winter-life", BeeChecks::life,
        "winter-bees-loss", BeeChecks::winterLoss,
        "spring-trough", BeeChecks::springTrough,
        "summer-peak", BeeChecks::summerPeak);
  }

  /** Two years without mites from 1 January on. */
  private static Course healthy(String climate) {
    return ColonyRun.in(climate).until(on(DECEMBER, 31).plusYears(1));
  }

  private static void life(Findings findings) {
    Course course = healthy("central-european");
    BeeLife life = new BeeLife(course, ParameterSet.shipped());
    findings.judge("emerging in June", course.mean(on(JUNE, 1), on(JUNE, 30), life::mean), "days");
    findings.judge("emerging on 1 October", life.mean(course.day(on(OCTOBER, 1))), "days");
  }

  private static void winterLoss(Findings findings) {
    for (String climate : List.of("continental-warm-summer", "central-european")) {
      Course course = healthy(climate);
      LocalDate march = on(MARCH, 1).plusYears(1);
      double spring = course.mean(march, march.plusDays(30), course.table()::adults);
      double autumn = course.mean(on(NOVEMBER, 1), on(NOVEMBER, 30), course.table()::adults);
      findings.judge(climate, spring / autumn);
    }
    findings.remark("means of the months");
  }

  private static void springTrough(Findings findings) {
    Course course = healthy("continental-cold");
    LocalDate january = on(JANUARY, 1).plusYears(1);
    LocalDate june = on(JUNE, 15).plusYears(1);
    int trough = course.day(january);
    for (int day = trough; day <= course.day(june); day++) {
      trough = course.table().adults(day) < course.table().adults(trough) ? day : trough;
    }
    findings.judge("fewest adults on day", SeasonDay.of(course.date(trough)), "of the year");
    findings.judge("bees of the autumn before on 15 June", autumnBees(course, june), "%");
  }

  /** Bees that emerged from August to December of the first year, of all adults on a date (%). */
  private static double autumnBees(Course course, LocalDate date) {
    BeeLife life = new BeeLife(course, ParameterSet.shipped());
    int lastAged = course.day(date) - 1;
    double living =
        course.sum(
            on(AUGUST, 1),
            on(DECEMBER, 31),
            day ->
                course.table().at(DailyColumn.WORKERS_EMERGED_HEALTHY, day)
                    * life.living(day, lastAged));
    return 100 * living / course.adults(date);
  }

  private static void summerPeak(Findings findings) {
    for (String climate : TEMPERATE) {
      Course course = healthy(climate);
      double peak = 0;
      for (int day = 0; day < SeasonDay.DAYS; day++) {
        peak = Math.max(peak, course.table().adults(day));
      }
      findings.judge(climate, peak);
    }
  }
}
