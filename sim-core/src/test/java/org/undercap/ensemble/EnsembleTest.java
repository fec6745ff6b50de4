package org.undercap.ensemble;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.apache.commons.math3.stat.descriptive.moment.Variance;
import org.junit.jupiter.api.Test;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;

class EnsembleTest {
  private static final Scenario SCENARIO =
      Scenarios.august(
          "mites: {counts: [{wash: {date: 2026-08-05, bees: 300, mites: 9, method: alcohol}}]}",
          Scenarios.plan("Gel", "2026-08-10", "thymol-gel")
              + Scenarios.plan("Pads", "2026-08-10", "formic-pads"));
  private static final MiteBelief BELIEF = StartMites.of(SCENARIO).belief();

  private static List<PlanResult> run(int members, long seed, int threads, List<Plan> plans) {
    return new Ensemble(SCENARIO, BELIEF, new EnsembleSettings(members, seed, threads))
        .run(plans, List.of(), done -> {});
  }

  @Test
  void sameResultsForAnyNumberOfThreads() {
    List<PlanResult> one = run(200, 1, 1, SCENARIO.plans());
    List<PlanResult> three = run(200, 1, 3, SCENARIO.plans());
    for (int plan = 0; plan < one.size(); plan++) {
      for (Outcome outcome : Outcome.values()) {
        assertArrayEquals(
            one.get(plan).outcomes().of(outcome),
            three.get(plan).outcomes().of(outcome),
            outcome.header());
      }
      for (Series series : Series.values()) {
        assertArrayEquals(
            one.get(plan).bands().quantile(series, 0.9),
            three.get(plan).bands().quantile(series, 0.9),
            series.header());
      }
    }
  }

  @Test
  void anotherSeedGivesOtherMembersButTheSameStory() {
    double[] first = run(256, 1, 2, SCENARIO.plans()).get(0).outcomes().of(Outcome.MITES_AT_END);
    double[] second = run(256, 2, 2, SCENARIO.plans()).get(0).outcomes().of(Outcome.MITES_AT_END);
    assertFalse(Arrays.equals(first, second));
    assertEquals(
        Quantiles.of(first, 0.5)[0],
        Quantiles.of(second, 0.5)[0],
        0.1 * Quantiles.of(first, 0.5)[0]);
  }

  @Test
  void anotherPlanChangesNothingInTheOthers() {
    double[] together = run(64, 1, 1, SCENARIO.plans()).get(2).outcomes().of(Outcome.MITES_AT_END);
    double[] alone =
        run(64, 1, 1, List.of(SCENARIO.plans().get(2))).get(0).outcomes().of(Outcome.MITES_AT_END);
    assertArrayEquals(together, alone);
  }

  @Test
  void pairsAreComparedMoreSharplyThanStrangers() {
    List<PlanResult> plans = run(512, 1, 2, SCENARIO.plans());
    double[] gel = plans.get(1).outcomes().of(Outcome.WINTER_BROOD_PARASITISED);
    double[] pads = plans.get(2).outcomes().of(Outcome.WINTER_BROOD_PARASITISED);
    double[] strangers =
        run(512, 99, 2, SCENARIO.plans()).get(2).outcomes().of(Outcome.WINTER_BROOD_PARASITISED);
    double paired = variance(difference(gel, pads));
    double unpaired = variance(difference(gel, strangers));
    System.out.printf("variance of the difference: paired %.3g, unpaired %.3g%n", paired, unpaired);
    assertTrue(paired < 0.5 * unpaired, paired + " against " + unpaired);
  }

  private static double[] difference(double[] a, double[] b) {
    double[] d = new double[a.length];
    Arrays.setAll(d, i -> a[i] - b[i]);
    return d;
  }

  private static double variance(double[] x) {
    return new Variance().evaluate(x);
  }

  @Test
  void bandsAgreeWithTheMembers() {
    PlanResult nothing = run(300, 1, 2, SCENARIO.plans()).get(0);
    double[] start = nothing.outcomes().of(Outcome.MITES_PER_100_START);
    for (double share : new double[] {0.1, 0.5, 0.9}) {
      double exact = Quantiles.of(start, share)[0];
      assertEquals(
          exact, nothing.bands().quantile(Series.MITES_PER_100_BEES, share)[0], 0.03 * exact);
    }
  }

  @Test
  void mitesOnBeesOfADayAreThoseOfTheRun() {
    LocalDate date =
        SeasonDates.of(SCENARIO.climate(), SCENARIO.start(), SCENARIO.end(), SCENARIO.parameters())
            .countDates()
            .get(0);
    Ensemble ensemble = new Ensemble(SCENARIO, BELIEF, new EnsembleSettings(70, 1, 1));
    List<Plan> plans = List.of(SCENARIO.plans().get(1));
    PlanResult result = ensemble.run(plans, List.of(date), done -> {}).get(0);
    double[] perBee = result.washes().on(date);
    double[] per100 = result.outcomes().of(Outcome.MITES_PER_100_FIRST);
    for (int member = 0; member < per100.length; member++) {
      assertEquals(per100[member], 100 * perBee[member], 1e-9);
    }
    LocalDate before = SCENARIO.start().minusDays(1);
    assertThrows(
        IllegalArgumentException.class, () -> ensemble.run(plans, List.of(before), done -> {}));
    assertThrows(IllegalArgumentException.class, () -> result.washes().on(before));
  }

  @Test
  void progressCountsEachMemberOnce() {
    AtomicInteger done = new AtomicInteger();
    new Ensemble(SCENARIO, BELIEF, new EnsembleSettings(130, 1, 2))
        .run(List.of(Plan.doNothing()), List.of(), done::addAndGet);
    assertEquals(130, done.get());
  }

  @Test
  void aLostColonyHasTheWorstOutcomes() {
    Scenario heavy =
        Scenarios.of(
            """
            undercap: 1
            name: Heavy
            site: {climate: central-european}
            colony: {date: 2026-07-01, bees: 20000, brood: 30000 cells}
            mites: {in-colony: 15000}
            """);
    PlanResult result =
        new Ensemble(heavy, MiteBelief.known(15000), new EnsembleSettings(20, 1, 1))
            .run(heavy.plans(), List.of(), done -> {})
            .get(0);
    assertEquals(1, result.outcomes().mean(Outcome.LOST), 0.2);
    assertEquals(0, result.outcomes().median(Outcome.BEES_AFTER_WINTER));
    assertEquals(1, result.outcomes().median(Outcome.WINTER_BROOD_PARASITISED));
    assertTrue(Double.isNaN(result.outcomes().median(Outcome.MITES_AT_END)), "no clean colony");
    assertEquals(0, result.bands().quantile(Series.ADULTS, 0.5)[heavy.days() - 1]);
  }

  @Test
  void settingsOutOfRangeAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new EnsembleSettings(0, 1, 1));
    assertThrows(IllegalArgumentException.class, () -> new EnsembleSettings(10, 1, 0));
  }
}
