package org.undercap.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.undercap.ensemble.EnsembleSettings;
import org.undercap.ensemble.MiteBelief;
import org.undercap.ensemble.Outcome;
import org.undercap.ensemble.PlanResult;
import org.undercap.ensemble.Scenarios;
import org.undercap.scenario.Scenario;

/** Which plan comes first, and the directions that must hold. */
class ComparisonTest {
  private static final EnsembleSettings SETTINGS = new EnsembleSettings(128, 1, 2);

  private static Comparison compare(Scenario scenario) {
    double mites = scenario.mitesInColony().orElseThrow();
    return Comparison.of(scenario, mites, MiteBelief.known(mites), SETTINGS, done -> {});
  }

  private static double harm(Comparison comparison, int plan) {
    return comparison.results().get(plan).outcomes().median(Ranking.HARM);
  }

  @Test
  void aLateTreatmentThatLeavesFewerMitesDoesNotComeFirst() {
    Comparison comparison =
        compare(
            Scenarios.august(
                "mites: {in-colony: 1500}",
                Scenarios.plan("Early", "2026-08-08", "pyrethroid-strips")
                    + Scenarios.plan("Late", "2026-10-10", "pyrethroid-strips")));
    PlanResult early = comparison.results().get(1);
    PlanResult late = comparison.results().get(2);
    assertTrue(
        late.outcomes().median(Outcome.MITES_AT_MIDWINTER)
            < early.outcomes().median(Outcome.MITES_AT_MIDWINTER),
        "the late treatment leaves fewer mites");
    assertEquals(List.of(1, 2, 0), comparison.ranking());
    assertTrue(comparison.betterIn(1, 2) > 0.95);
    assertEquals(1, comparison.betterIn(1, 2) + comparison.betterIn(2, 1), 1e-12);
  }

  @Test
  void laterStartsAreNeverBetter() {
    StringBuilder plans = new StringBuilder();
    for (String date : List.of("2026-08-10", "2026-08-24", "2026-09-07", "2026-09-21")) {
      plans.append(Scenarios.plan("Gel " + date, date, "thymol-gel"));
    }
    Comparison comparison = compare(Scenarios.august("mites: {in-colony: 1500}", plans.toString()));
    for (int plan = 2; plan <= 4; plan++) {
      assertTrue(harm(comparison, plan) > harm(comparison, plan - 1), "plan " + plan);
    }
  }

  @Test
  void moreArrivalsAndMoreMitesAreNeverBetter() {
    String plan = Scenarios.plan("Gel", "2026-08-10", "thymol-gel");
    double calm =
        harm(compare(Scenarios.august("mites: {in-colony: 800}\narrivals: none", plan)), 1);
    double dense =
        harm(compare(Scenarios.august("mites: {in-colony: 800}\narrivals: dense", plan)), 1);
    double heavy =
        harm(compare(Scenarios.august("mites: {in-colony: 1600}\narrivals: none", plan)), 1);
    assertTrue(dense > calm);
    assertTrue(heavy > calm);
  }

  @Test
  void colderGelIsNeverBetter() {
    Scenario warm =
        Scenarios.august(
            "mites: {in-colony: 1500}", Scenarios.plan("Gel", "2026-08-10", "thymol-gel"));
    Scenario cold =
        warm.withClimate(warm.climate().withTemperature(warm.climate().temperature().warmer(-5)));
    double atWarm = compare(warm).results().get(1).outcomes().median(Outcome.MITES_KILLED);
    double atCold = compare(cold).results().get(1).outcomes().median(Outcome.MITES_KILLED);
    assertTrue(atCold < atWarm, atCold + " against " + atWarm);
  }

  @Test
  void outcomesThatTheRunDoesNotReachAreNotTold() {
    Scenario shortRun =
        Scenarios.august(
            "mites: {in-colony: 800}\nhorizon: 40 days",
            Scenarios.plan("Gel", "2026-08-10", "thymol-gel"));
    Comparison comparison = compare(shortRun);
    assertTrue(
        !comparison.tells(Outcome.MITES_AT_MIDWINTER)
            && !comparison.tells(Outcome.BEES_AFTER_WINTER));
    assertTrue(comparison.tells(Outcome.WINTER_BROOD_PARASITISED));
  }
}
