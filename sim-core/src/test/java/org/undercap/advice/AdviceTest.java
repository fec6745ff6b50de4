package org.undercap.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.undercap.climate.Spell;
import org.undercap.comparison.Comparison;
import org.undercap.ensemble.EnsembleSettings;
import org.undercap.ensemble.Scenarios;
import org.undercap.ensemble.StartMites;
import org.undercap.scenario.Scenario;

class AdviceTest {
  private static final EnsembleSettings SETTINGS = new EnsembleSettings(128, 1, 2);

  private static Advice advise(Scenario scenario) {
    StartMites mites = StartMites.of(scenario);
    return Advice.of(
        Comparison.of(scenario, mites.median(), mites.belief(), SETTINGS, done -> {}),
        mites.belief());
  }

  private static String reasons(Scenario scenario, String plan) {
    return scenario.plans().stream()
        .filter(p -> p.name().equals(plan))
        .map(p -> String.join("; ", new RuledOut(scenario).reasons(p)))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void onTheCoolCoastInAutumnTheGelIsTooCold() {
    Scenario coast = Scenarios.shipped("saltmere-garth");
    assertTrue(reasons(coast, "Gel twice").contains("too cold"), reasons(coast, "Gel twice"));
    Advice advice = advise(coast);
    assertEquals("Vapour now, dribble in December", advice.chosenPlan().name());
    assertTrue(advice.followup().isPresent());
  }

  /**
   * The same coast without vapour: in a warm autumn the gel is right, and the answer tells at which
   * warmth it turns.
   */
  @Test
  void inAWarmAutumnTheGelIsRightAndTheFlipPointSaysWhen() {
    Scenario coast = Scenarios.shipped("saltmere-garth");
    Scenario noVapour =
        coast.withPlans(
            coast.plans().stream()
                .filter(p -> p.name().startsWith("Gel") || p.name().startsWith("Dribble"))
                .toList());
    Advice cool = advise(noVapour);
    assertEquals("Dribble in December", cool.chosenPlan().name());
    FlipPoint warmer =
        cool.flips().stream()
            .filter(f -> f.what().equals("temperature") && f.instead().isPresent())
            .findFirst()
            .orElseThrow();
    assertTrue(
        warmer.change().contains("warmer") && warmer.instead().orElseThrow().startsWith("Gel"),
        warmer.toString());
    Scenario warm =
        noVapour.withClimate(
            noVapour
                .climate()
                .withTemperature(
                    new Spell(
                        noVapour.climate().temperature(),
                        noVapour.start(),
                        noVapour.start().plusDays(55),
                        5)));
    assertTrue(advise(warm).chosenPlan().name().startsWith("Gel"), "in a warm autumn");
  }

  @Test
  void aSyntheticClassRestsAfterTwoUses() {
    Scenario flat = Scenarios.shipped("wairepo-flat");
    assertTrue(reasons(flat, "Pyrethroid strips again").contains("third time in a row"));
    assertEquals("", reasons(flat, "Amitraz strips"));
  }

  @Test
  void supersListsAndOrganicSchemesRulePlansOut() {
    String plans =
        Scenarios.plan("Gel", "2026-08-10", "thymol-gel")
            + Scenarios.plan("Strips", "2026-08-25", "amitraz-strips");
    String count = "mites: {in-colony: 1000}\n";
    Scenario supers =
        Scenarios.of(
            """
            undercap: 1
            name: Supers
            site: {climate: central-european}
            colony:
              date: 2026-08-05
              bees: 20000
              brood: 24000 cells
              supers-until: 2026-08-20
            """
                + count
                + "plans:\n"
                + plans);
    assertTrue(reasons(supers, "Gel").contains("honey supers are on until 2026-08-20"));
    assertEquals("", reasons(supers, "Strips"));
    Scenario organic = Scenarios.august(count + "organic: true", plans);
    assertTrue(reasons(organic, "Strips").contains("organic"));
    Scenario listed = Scenarios.august(count + "allowed: [amitraz-strips]", plans);
    assertTrue(reasons(listed, "Gel").contains("not on your list"));
    assertEquals("", reasons(listed, "Strips"));
  }

  @Test
  void doingNothingIsNeverRuledOut() {
    Scenario frost =
        Scenarios.of(
            """
            undercap: 1
            name: Frost
            site: {climate: continental-cold}
            colony: {date: 2026-12-01, bees: 12000, brood: none seen}
            mites: {in-colony: 500}
            plans:
            """
                + Scenarios.plan("Gel", "2026-12-05", "thymol-gel"));
    Advice advice = advise(frost);
    assertEquals(List.of(0), advice.order());
    assertTrue(advice.followup().isEmpty());
  }

  @Test
  void theFollowupTellsSuccessFromFailure() {
    Scenario august =
        Scenarios.august(
            "mites: {counts: [{wash: {date: 2026-08-05, bees: 300, mites: 12, method: alcohol}}]}",
            Scenarios.plan("Strips", "2026-08-08", "pyrethroid-strips"));
    Followup followup = advise(august).followup().orElseThrow();
    assertEquals(LocalDate.of(2026, 9, 25), followup.date());
    assertTrue(followup.untreated() > followup.expected().alarm(), followup.toString());
    assertTrue(followup.noticed() > 0.9);
  }

  @Test
  void aSingleSmallSampleTheTropicsAndAfricanizedBeesAreDeclined() {
    assertTrue(
        Refusal.of(Scenarios.shipped("serra-do-ipe-roxo"))
            .orElseThrow()
            .text()
            .contains("Africanized"));
    Scenario few =
        Scenarios.august(
            "mites: {counts: [{wash: {date: 2026-08-05, bees: 20, mites: 1, method: alcohol}}]}",
            Scenarios.plan("Gel", "2026-08-10", "thymol-gel"));
    assertTrue(Refusal.of(few).orElseThrow().text().contains("fewer than 50 bees"));
    assertTrue(Refusal.of(Scenarios.shipped("saltmere-garth")).isEmpty());
  }
}
