package org.undercap.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.undercap.climate.Climate;
import org.undercap.climate.Spell;
import org.undercap.comparison.Comparison;
import org.undercap.comparison.Ranking;
import org.undercap.ensemble.EnsembleSettings;
import org.undercap.ensemble.Scenarios;
import org.undercap.ensemble.SeasonDates;
import org.undercap.ensemble.Series;
import org.undercap.ensemble.StartMites;
import org.undercap.scenario.Plan;
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
    Plan gel = plan(coast, "Gel twice");
    double warmer = WeatherTurn.degrees(coast, gel).orElseThrow();
    assertTrue(warmer > 0 && warmer <= 3, "the gel needs " + warmer + " C more");
    assertTrue(reasons(warmed(coast, warmer), "Gel twice").isEmpty(), "there it can be used");
    assertTrue(reasons(warmed(coast, warmer - 0.5), "Gel twice").contains("too cold"));
    assertTrue(WeatherTurn.degrees(coast, plan(coast, "Dribble in December")).isEmpty());
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
    String chosen = advise(warmed(noVapour, 5)).chosenPlan().name();
    assertTrue(chosen.startsWith("Gel"), "in a warm autumn");
  }

  private static Plan plan(Scenario scenario, String name) {
    return scenario.plans().stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
  }

  /** The first eight weeks warmer. */
  private static Scenario warmed(Scenario scenario, double degrees) {
    Climate climate = scenario.climate();
    return scenario.withClimate(
        climate.withTemperature(
            new Spell(
                climate.temperature(), scenario.start(), scenario.start().plusDays(55), degrees)));
  }

  /** Heat in the first days of formic acid rules it out though most of its days are cool enough. */
  @Test
  void aHeatWaveInTheFirstDaysRulesFormicAcidOut() {
    Scenario august =
        Scenarios.august(
            "mites: {in-colony: 1500}",
            Scenarios.plan("Pads", "2026-08-10", "formic-pads")
                + Scenarios.plan("Strips", "2026-08-10", "amitraz-strips"));
    assertEquals("", reasons(august, "Pads"));
    LocalDate begin = LocalDate.of(2026, 8, 10);
    for (int day = 0; day < 3; day++) {
      Scenario hot = august.withClimate(warmOn(august, begin.plusDays(day)));
      String words = reasons(hot, "Pads");
      assertTrue(
          words.contains("too hot at its begin, the daily mean is then usually above 25 C"), words);
      assertEquals("", reasons(hot, "Strips"));
    }
    assertEquals("", reasons(august.withClimate(warmOn(august, begin.plusDays(3))), "Pads"));
  }

  private static Climate warmOn(Scenario scenario, LocalDate day) {
    Climate climate = scenario.climate();
    return climate.withTemperature(new Spell(climate.temperature(), day, day, 12));
  }

  @Test
  void aSyntheticClassRestsAfterTwoUses() {
    Scenario flat = Scenarios.shipped("wairepo-flat");
    assertTrue(reasons(flat, "Pyrethroid strips again").contains("third time in a row"));
    assertEquals("", reasons(flat, "Amitraz strips"));
  }

  @Test
  void restIsCountedByCoursesNotByNeighboursInTheFile() {
    String plans =
        """
          - name: Amitraz after oxalic acid
            steps:
              - {date: 2026-08-10, treatment: oxalic-sublimation}
              - {date: 2026-08-25, treatment: amitraz-strips}
          - name: Three years
            steps:
              - {date: 2028-08-10, treatment: pyrethroid-strips}
              - {date: 2026-08-10, treatment: pyrethroid-strips}
              - {date: 2027-08-10, treatment: pyrethroid-strips}
        """;
    Scenario scenario =
        Scenarios.august(
            "mites: {in-colony: 1000}\nhorizon: 2028-12-31\ntreated-before: {amitraz: 1}", plans);
    assertEquals("", reasons(scenario, "Amitraz after oxalic acid"));
    assertTrue(
        reasons(scenario, "Three years").contains("third time in a row"),
        reasons(scenario, "Three years"));
  }

  @Test
  void oneMayNotRepeatMoreThanIsUsualButForAStudy() {
    String plan =
        """
          - name: Dribbles
            steps:
              - {date: 2026-08-10, treatment: oxalic-dribble}
              - {date: 2026-08-12, treatment: oxalic-dribble}
        """;
    String mites = "mites: {in-colony: 1000}";
    assertTrue(
        reasons(Scenarios.august(mites, plan), "Dribbles").contains("more often than is usual"));
    assertEquals("", reasons(Scenarios.august(mites + "\nstudy: true", plan), "Dribbles"));
  }

  @Test
  void supersWithoutAnEndRuleOutAllTreatments() {
    Scenario supers =
        Scenarios.of(
            """
            undercap: 1
            name: Supers
            site: {climate: central-european}
            colony: {date: 2026-08-05, bees: 20000, brood: 24000 cells, supers: on}
            mites: {in-colony: 1000}
            plans:
            """
                + Scenarios.plan("Gel", "2026-08-10", "thymol-gel"));
    assertTrue(reasons(supers, "Gel").contains("does not say until when"));
    Scenario off =
        Scenarios.of(
            """
            undercap: 1
            name: Supers
            site: {climate: central-european}
            colony: {date: 2026-08-05, bees: 20000, brood: 24000 cells, supers-until: 2026-09-10}
            mites: {in-colony: 1000}
            plans:
              - name: Honey off first
                supers-until: 2026-08-09
                steps: [{date: 2026-08-10, treatment: thymol-gel}]
              - {name: Too soon, steps: [{date: 2026-08-10, treatment: thymol-gel}]}
            """);
    assertEquals("", reasons(off, "Honey off first"));
    assertTrue(reasons(off, "Too soon").contains("honey supers are on until 2026-09-10"));
  }

  @Test
  void aPlanThatKillsTheColonyComesLast() {
    Scenario scenario =
        Scenarios.august(
            "mites: {in-colony: 1500}",
            "  - name: Away with all brood\n    steps:\n"
                + "      - {date: 2026-08-06, measure: queen-caging, days: 200}\n"
                + "      - {date: 2026-08-08, measure: brood-removal, share: 100 %}\n"
                + Scenarios.plan("Strips", "2026-08-08", "pyrethroid-strips"));
    Advice advice = advise(scenario);
    assertEquals(List.of(2, 0, 1), advice.order());
    assertEquals(Optional.of(Ranking.By.LOSSES), advice.behind().get(1));
  }

  /** The wash lies on the first day on which nine in ten no longer stay below the limit. */
  @Test
  void theNextWashComesWhenTheMitesMayReachTheLimit() {
    Scenario few =
        Scenarios.august(
            "mites: {in-colony: 150}\nthreshold: {mites-per-100-bees: 0.5}",
            Scenarios.plan("Strips", "2026-08-08", "pyrethroid-strips"));
    Advice advice = advise(few);
    NextWash wash = advice.nextWash().orElseThrow();
    double[] upper =
        advice.comparison().results().get(0).bands().quantile(Series.MITES_PER_100_BEES, 0.9);
    int day = (int) ChronoUnit.DAYS.between(few.start(), wash.date());
    assertTrue(day >= 14 && day <= 28, wash.toString());
    assertTrue(upper[day - 1] < 0.5, wash.toString());
    assertEquals(upper[day] >= 0.5, wash.mayReachLimit());
    assertEquals(2, wash.treatAt());
    assertEquals(Optional.of(1), wash.instead());
    assertEquals(0, advice.chosen());
    Scenario many =
        Scenarios.august(
            "mites: {in-colony: 3000}",
            Scenarios.plan("Strips", "2026-08-08", "pyrethroid-strips"));
    assertEquals(Optional.empty(), advise(many).nextWash());
    assertEquals(1, advise(many).chosen());
  }

  @Test
  void withoutMitesNothingNeedsToBeDone() {
    Scenario clean =
        Scenarios.august(
            "mites: {counts: [{wash: {date: 2026-08-05, bees: 300, mites: 0, method: alcohol}}]}\n"
                + "arrivals: none\nthreshold: {mites-per-100-bees: 3}",
            Scenarios.plan("Strips", "2026-08-08", "pyrethroid-strips"));
    Advice advice = advise(clean);
    assertTrue(advice.needless());
    assertEquals(0, advice.chosen());
    assertFalse(advise(clean.withMites(1500)).needless());
  }

  @Test
  void aRunWithoutWinterBeesIsJudgedByTheBroodThatEmerges() {
    Scenario spring =
        Scenarios.of(
            """
            undercap: 1
            name: Spring
            site: {climate: central-european}
            colony: {date: 2026-04-01, bees: 10000, brood: 8000 cells}
            horizon: 2026-06-30
            mites: {in-colony: 800}
            plans:
            """
                + Scenarios.plan("Strips", "2026-04-02", "pyrethroid-strips"));
    Advice advice = advise(spring);
    SeasonDates dates = advice.comparison().dates();
    assertEquals(SeasonDates.JudgedBrood.OF_THE_RUN, dates.judged());
    assertEquals(LocalDate.of(2026, 6, 30), dates.winterBeesUntil());
    assertEquals(1, advice.chosen());
    assertTrue(advice.comparison().results().get(0).outcomes().median(Ranking.HARM) > 0.05);
  }

  @Test
  void anotherWashIsWorthItOnlyIfItCanTurnTheChoice() {
    double[] shares = {0.01, 0.01, 0.2, 0.2};
    double[] weights = new double[4];
    assertEquals(0, WashValue.changes(shares, weights, () -> false));
    assertEquals(1, WashValue.changes(shares, weights, () -> true), 1e-3);
    assertEquals(
        0.5,
        WashValue.changes(shares, weights, () -> weights[0] > weights[2]),
        1e-3,
        "a result that speaks for few mites is met in two of four members");
  }

  /** A plan that lies as close to the best as anyone can see is no reversal. */
  @Test
  void aTieIsNeitherAFlipPointNorWorthAWash() {
    Scenario twins =
        Scenarios.august(
            "mites: {in-colony: 1500}",
            Scenarios.plan("Strips", "2026-08-10", "amitraz-strips")
                + Scenarios.plan("Same strips", "2026-08-10", "amitraz-strips"));
    Advice advice = advise(twins);
    assertEquals(0, advice.anotherWash().changes(), 1e-9);
    assertTrue(
        advice.flips().stream()
            .filter(flip -> !flip.what().equals("start"))
            .flatMap(flip -> flip.instead().stream())
            .noneMatch("Same strips"::equals),
        advice.flips().toString());
  }

  @Test
  void aFloorThatIsClosedMayTurnTheAdviceForWhatEvaporates() {
    String plans =
        Scenarios.plan("Gel", "2026-08-10", "thymol-gel")
            + Scenarios.plan("Pads", "2026-08-10", "formic-pads")
            + Scenarios.plan("Vapour", "2026-08-10", "oxalic-sublimation");
    Scenario closed = Scenarios.august("mites: {in-colony: 1500}", plans);
    FlipPoint open = floor(advise(closed));
    assertEquals("an open mesh floor", open.change());
    Scenario strips =
        Scenarios.august(
            "mites: {in-colony: 1500}", Scenarios.plan("Strips", "2026-08-10", "amitraz-strips"));
    assertTrue(
        advise(strips).flips().stream().noneMatch(flip -> flip.what().equals("floor")),
        "nothing evaporates");
  }

  @Test
  void aHumidPlaceIsTriedForStripsThatItWeakensOnly() {
    String mites = "mites: {in-colony: 1500}";
    String weakened = Scenarios.plan("Strips", "2026-08-10", "oxalic-glycerine-strips");
    FlipPoint humid =
        advise(Scenarios.august(mites, weakened)).flips().stream()
            .filter(flip -> flip.what().equals("humid"))
            .findFirst()
            .orElseThrow();
    assertEquals("a humid place", humid.change());
    String others = Scenarios.plan("Strips", "2026-08-10", "amitraz-strips");
    assertTrue(
        advise(Scenarios.august(mites, others)).flips().stream()
            .noneMatch(flip -> flip.what().equals("humid")));
  }

  private static FlipPoint floor(Advice advice) {
    return advice.flips().stream().filter(f -> f.what().equals("floor")).findFirst().orElseThrow();
  }

  /** Bees of a winter cluster do not walk over strips (common practice, no source). */
  @Test
  void stripsAreNotForAWinterCluster() {
    String plan = Scenarios.plan("Strips", "2026-12-10", "amitraz-strips");
    String words = reasons(Scenarios.august("mites: {in-colony: 1500}", plan), "Strips");
    assertTrue(words.contains("amitraz strips: too cold"), words);
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
  void aPlanThatIsTooDearWithoutAMissingPriceIsRuledOut() {
    Scenario dear =
        Scenarios.august(
            "mites: {in-colony: 1000}\ncosts: {amitraz-strips: 30}\nlimits: {cost: 20}",
            """
              - name: Both
                steps:
                  - {date: 2026-08-10, treatment: amitraz-strips}
                  - {date: 2026-12-20, treatment: oxalic-dribble}
            """
                + Scenarios.plan("Dribble", "2026-12-20", "oxalic-dribble"));
    assertEquals("it costs at least 30, and your limit is 20", reasons(dear, "Both"));
    assertEquals("", reasons(dear, "Dribble"));
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
