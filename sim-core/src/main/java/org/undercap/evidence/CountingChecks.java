package org.undercap.evidence;

import static java.time.Month.FEBRUARY;
import static java.time.Month.MARCH;
import static java.time.Month.MAY;
import static java.time.Month.NOVEMBER;
import static org.undercap.evidence.ColonyRun.on;

import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import org.undercap.monitoring.ExactIntervals;
import org.undercap.monitoring.Interval;

/** What counts tell. */
final class CountingChecks {
  private CountingChecks() {}

  static Map<String, Consumer<Findings>> all() {
    return Map.of(
        "fall-winter", findings -> fall(findings, NOVEMBER),
        "fall-summer", findings -> fall(findings, MAY),
        "wash-example", CountingChecks::wash,
        "brood-example", CountingChecks::brood,
        "detect-5-percent", CountingChecks::detection);
  }

  /** All mites for each mite that falls on a day, in four months. */
  private static void fall(Findings findings, Month firstMonth) {
    LocalDate first = on(MARCH, 1);
    Course course =
        ColonyRun.in("temperate-oceanic")
            .from(first)
            .mites(SetUps.number("season.mites"))
            .until(on(FEBRUARY, 28).plusYears(1));
    LocalDate month = on(firstMonth, 1);
    for (int i = 0; i < 4; i++, month = month.plusMonths(1)) {
      LocalDate last = month.plusMonths(1).minusDays(1);
      double mites = course.sum(month, last, course.table()::mites);
      double falling = course.sum(month, last, course.table()::miteFall);
      findings.judge(
          month.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH), mites / falling);
    }
    findings.remark("untreated from 1 March on; nothing arrives");
  }

  private static void wash(Findings findings) {
    findings.judge("", 100.0 * 43 / 310);
  }

  private static void brood(Findings findings) {
    Interval interval = ExactIntervals.clopperPearson(15, 212, 0.95);
    findings.judge("infested", 100.0 * 15 / 212);
    findings.judge("from", 100 * interval.low());
    findings.judge("to", 100 * interval.high());
  }

  private static void detection(Findings findings) {
    findings.judge("5 % with 95 %:", ExactIntervals.sampleToMeetOne(0.05, 0.95));
    findings.judge("1 % with 99 %:", ExactIntervals.sampleToMeetOne(0.01, 0.99));
  }
}
