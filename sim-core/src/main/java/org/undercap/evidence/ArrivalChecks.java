package org.undercap.evidence;

import static java.time.Month.JULY;
import static java.time.Month.MARCH;
import static java.time.Month.NOVEMBER;
import static org.undercap.evidence.ColonyRun.on;

import java.time.LocalDate;
import java.util.Map;
import java.util.function.Consumer;

/**
 * Mites from other colonies: a colony without mites on 31 July, into which mites come at an even
 * rate for 106 days.
 */
final class ArrivalChecks {
  private static final LocalDate CLEAN = on(JULY, 31);
  private static final int DAYS = 106;
  private static final double FEW_LOW = 72;
  private static final double FEW_HIGH = 248;
  private static final double MANY_LOW = 266;
  private static final double MANY_HIGH = 1171;
  private static final LocalDate AUTUMN = on(NOVEMBER, 15);
  private static final LocalDate SPRING = on(MARCH, 1).plusYears(1);

  private ArrivalChecks() {}

  static Map<String, Consumer<Findings>> all() {
    return Map.of(
        "arrivals-sparse", ArrivalChecks::sparse,
        "arrivals-bee-loss", ArrivalChecks::beeLoss);
  }

  private static Course invaded(double mites) {
    LocalDate last = CLEAN.plusDays(DAYS - 1L);
    return ColonyRun.in("central-european")
        .from(CLEAN)
        .arriving(date -> date.isAfter(last) ? 0 : mites / DAYS)
        .until(SPRING);
  }

  private static void sparse(Findings findings) {
    findings.judge("middle of the range", invaded((FEW_LOW + FEW_HIGH) / 2).mites(AUTUMN));
    findings.show("72 arriving", invaded(FEW_LOW).mites(AUTUMN), "mites");
    findings.show("248 arriving", invaded(FEW_HIGH).mites(AUTUMN), "mites");
    findings.remark("15 November; the middle of the published range of arrivals is judged");
  }

  private static void beeLoss(Findings findings) {
    double heavily = loss(invaded((MANY_LOW + MANY_HIGH) / 2));
    double lightly = loss(invaded((FEW_LOW + FEW_HIGH) / 2));
    findings.show("heavily invaded", heavily, "% lost");
    findings.show("lightly invaded", lightly, "% lost");
    findings.judge("", heavily / lightly);
    findings.remark("adult bees on 15 November and 1 March, middles of the ranges of arrivals");
  }

  private static double loss(Course course) {
    return 100 * (1 - course.adults(SPRING) / course.adults(AUTUMN));
  }
}
