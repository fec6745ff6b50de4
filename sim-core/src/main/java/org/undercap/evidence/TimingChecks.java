package org.undercap.evidence;

import static java.time.Month.APRIL;
import static java.time.Month.AUGUST;
import static java.time.Month.DECEMBER;
import static java.time.Month.JUNE;
import static java.time.Month.MARCH;
import static java.time.Month.OCTOBER;
import static java.time.Month.SEPTEMBER;
import static org.undercap.evidence.ColonyRun.on;
import static org.undercap.parameter.ParameterId.WINTER_BEES_DAYS;
import static org.undercap.parameter.ParameterId.WINTER_BEES_LAYING_SHARE;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.IntToDoubleFunction;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.climate.SeasonDay;
import org.undercap.hive.ThresholdCatalogue;
import org.undercap.parameter.ParameterSet;
import org.undercap.simulation.DailyColumn;
import org.undercap.simulation.DailyTable;
import org.undercap.treatment.MethodCatalogue;

/** When to treat. */
final class TimingChecks {
  private static final String CENTRAL = "central-european";
  private static final String STRIPS = "pyrethroid-strips";
  private static final int STRIP_DAYS = MethodCatalogue.shipped().get(STRIPS).carrierDays();

  private static final String NOTHING = "none";

  private TimingChecks() {}

  static Map<String, Consumer<Findings>> all() {
    return Map.of(
        "late-versus-early", TimingChecks::lateVersusEarly,
        "one-good-treatment", TimingChecks::oneGoodTreatment,
        "winter-brood-infestation", TimingChecks::winterBrood,
        "temperature-thymol", TimingChecks::thymol);
  }

  private static void lateVersusEarly(Findings findings) {
    double never = decemberBees(NOTHING);
    double june = decemberBees(NOTHING, on(JUNE, 15));
    double august = decemberBees(NOTHING, on(AUGUST, 15));
    double october = decemberBees(NOTHING, on(OCTOBER, 15));
    findings.show("never", never, "bees");
    findings.show("June", june, "bees");
    findings.show("August", august, "bees");
    findings.show("October", october, "bees");
    findings.require("August best", august > Math.max(june, october));
    findings.require("all better than none", Math.min(june, Math.min(august, october)) > never);
    findings.show("June with many colonies nearby", decemberBees("dense", on(JUNE, 15)), "bees");
    findings.show(
        "August with many colonies nearby", decemberBees("dense", on(AUGUST, 15)), "bees");
    findings.remark(
        "pyrethroid strips in mid-month; humid-subtropical; nothing arrives in the runs that are"
            + " judged");
  }

  private static double decemberBees(String arrivals, LocalDate... treated) {
    LocalDate last = on(DECEMBER, 1);
    double bees = SetUps.number("package.bees");
    double mites = SetUps.number("package.mites");
    return ColonyRun.in("humid-subtropical")
        .from(on(APRIL, 1))
        .arriving(arrivals)
        .scaled(colony -> colony.scaleTo(0, bees, 0, mites))
        .treat(STRIPS, treated)
        .until(last)
        .adults(last);
  }

  private static void oneGoodTreatment(Findings findings) {
    LocalDate late = on(AUGUST, 15);
    LocalDate spring = on(APRIL, 15).plusYears(1);
    LocalDate[] always =
        late.datesUntil(late.plusYears(1), Period.ofDays(STRIP_DAYS)).toArray(LocalDate[]::new);
    double none = aYearLater();
    double once = aYearLater(late);
    double twice = aYearLater(late, spring);
    double continuous = aYearLater(always);
    double limit = augustLimit();
    findings.show("none", none, "per 100 bees");
    findings.show("once", once, "per 100 bees");
    findings.show("twice", twice, "per 100 bees");
    findings.show("continuous", continuous, "per 100 bees");
    findings.require("none is worst", none > Math.max(once, Math.max(twice, continuous)));
    findings.require("once is below the August limit of the source", once < limit);
    findings.require("none is above it", none > limit);
    findings.remark(
        "pyrethroid strips from 15 August on, continental-warm-summer; as good means that no"
            + " treatment would be due a year later either");
  }

  /** Mites on bees a year after the late treatment (mites per 100 bees); infinite if it died. */
  private static double aYearLater(LocalDate... treated) {
    LocalDate late = on(AUGUST, 15);
    LocalDate last = late.plusYears(1);
    Course course =
        ColonyRun.in("continental-warm-summer")
            .from(late)
            .mites(SetUps.number("trial.mites"))
            .treat(STRIPS, treated)
            .until(last);
    return course.table().lost() ? Double.POSITIVE_INFINITY : course.mitesPer100Bees(last);
  }

  /** The limit of the same trial for August (mites per 100 bees). */
  private static double augustLimit() {
    return ThresholdCatalogue.shipped().all().stream()
        .filter(limit -> limit.sourceKeys().contains("strange-sheppard-2001"))
        .filter(limit -> limit.season().equals("August"))
        .filter(limit -> limit.measure().equals("mites per 100 bees"))
        .mapToDouble(limit -> Double.parseDouble(limit.value()))
        .findFirst()
        .orElseThrow();
  }

  private static void winterBrood(Findings findings) {
    List<LocalDate> starts =
        List.of(
            on(AUGUST, 10), on(AUGUST, 24), on(SEPTEMBER, 7), on(SEPTEMBER, 21), on(OCTOBER, 5));
    LocalDate last = on(DECEMBER, 1);
    List<Double> parasitised = new ArrayList<>();
    List<Double> left = new ArrayList<>();
    for (LocalDate start : starts) {
      Course course = season().treat(STRIPS, start).until(last);
      parasitised.add(100 * parasitisedWinterBrood(course));
      left.add(course.mites(last));
    }
    int latest = starts.size() - 1;
    findings.show("10 August parasitised", parasitised.get(0), "%");
    findings.show("5 October parasitised", parasitised.get(latest), "%");
    findings.show("10 August left", left.get(0), "mites");
    findings.show("5 October left", left.get(latest), "mites");
    findings.require("parasitised winter brood rises", rises(parasitised));
    Collections.reverse(left);
    findings.require("mites left fall", rises(left));
    findings.show("thymol gel 10 August left", leftAfterGel(starts.get(0), last), "mites");
    findings.show("thymol gel 5 October left", leftAfterGel(starts.get(latest), last), "mites");
    findings.remark(
        "pyrethroid strips, central-european; thymol gel is only shown: late in the year it"
            + " is too cold for it");
  }

  private static ColonyRun season() {
    return ColonyRun.in(CENTRAL).from(on(MARCH, 1)).mites(SetUps.number("season.mites"));
  }

  private static double leftAfterGel(LocalDate start, LocalDate last) {
    return season().treat("thymol-gel", start, start.plusDays(14)).until(last).mites(last);
  }

  /**
   * Share of the worker cells emerging in the days before laying falls below a share of its yearly
   * peak that held a mite.
   */
  private static double parasitisedWinterBrood(Course course) {
    ParameterSet parameters = ParameterSet.shipped();
    Climate climate = ClimateCatalogue.shipped().get(CENTRAL);
    double least = parameters.value(WINTER_BEES_LAYING_SHARE) * climate.eggs().max();
    LocalDate end = on(AUGUST, 1);
    while (climate.potentialEggs(SeasonDay.of(end)) >= least) {
      end = end.plusDays(1);
    }
    LocalDate begin = end.minusDays((int) parameters.value(WINTER_BEES_DAYS));
    DailyTable table = course.table();
    IntToDoubleFunction cells =
        day ->
            table.at(DailyColumn.WORKERS_EMERGED_HEALTHY, day)
                / (1 - table.at(DailyColumn.PARASITISED_SHARE, day));
    double parasitised =
        course.sum(
            begin,
            end.minusDays(1),
            day -> cells.applyAsDouble(day) * table.at(DailyColumn.PARASITISED_SHARE, day));
    return parasitised / course.sum(begin, end.minusDays(1), cells);
  }

  private static boolean rises(List<Double> numbers) {
    for (int i = 1; i < numbers.size(); i++) {
      if (!(numbers.get(i) > numbers.get(i - 1))) {
        return false;
      }
    }
    return true;
  }

  private static void thymol(Findings findings) {
    LocalDate first = on(AUGUST, 15);
    double cold = thymol(first, 12);
    double mild = thymol(first, 18);
    double warm = thymol(first, 22);
    findings.show("12 C", cold, "%");
    findings.show("18 C", mild, "%");
    findings.show("22 C", warm, "%");
    findings.judge("12 C / 22 C", cold / warm);
    findings.require("12 C below 18 C", cold < mild);
    findings.remark("two trays 14 days apart from 15 August on, the same temperature every day");
  }

  private static double thymol(LocalDate first, double celsius) {
    Course course =
        ColonyRun.in(CENTRAL)
            .from(first)
            .mites(SetUps.number("trial.mites"))
            .at(celsius)
            .treat("thymol-gel", first, first.plusDays(14))
            .until(first.plusDays(28));
    return CriticalTest.percent(course, first, 28);
  }
}
