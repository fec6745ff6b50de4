package org.undercap.scenario.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.undercap.advice.RuledOut;
import org.undercap.comparison.CentralRun;
import org.undercap.ensemble.StartMites;
import org.undercap.monitoring.EstimateWarning;
import org.undercap.monitoring.MiteDistribution;
import org.undercap.monitoring.MiteEstimate;
import org.undercap.monitoring.WidthSource;
import org.undercap.scenario.Assumption;
import org.undercap.scenario.Problem;
import org.undercap.scenario.Reading;
import org.undercap.scenario.Scenario;

/** What was done before any plan, and counts that meet it. */
class HistoryTest {
  private static final String VAPOURS =
      "done: [{date: 2026-09-08, treatment: oxalic-sublimation, times: 3, every: 7 days}]\n";
  private static final String AUGUST = "{date: 2026-08-31, bees: 310, mites: 14, method: alcohol}";
  private static final String OCTOBER = "{date: 2026-10-02, bees: 305, mites: 9, method: alcohol}";

  private static Reading<Scenario> read(String rest) {
    String text =
        """
        undercap: 1
        name: History
        site: {climate: temperate-oceanic}
        """
            + rest;
    try {
      return ScenarioReader.read(
          "history.yaml", new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Scenario october(String done, String... washes) {
    return read(colony("2026-10-02") + done + washes(washes)).orThrow();
  }

  private static String colony(String date) {
    return "colony: {date: " + date + ", bees: 15000, brood: 15000 cells, supers: off}\n";
  }

  private static String washes(String... washes) {
    StringBuilder text = new StringBuilder("mites:\n  counts:\n");
    List.of(washes).forEach(wash -> text.append("    - wash: ").append(wash).append('\n'));
    return text.toString();
  }

  private static String board(String date, int days, int mites) {
    return "mites: {counts: [{board: {date: %s, days: %d, mites: %d}}]}\n"
        .formatted(date, days, mites);
  }

  private static MiteDistribution mites(Scenario scenario) {
    return StartMites.of(scenario).posterior().orElseThrow().mites();
  }

  private static double width(Scenario scenario) {
    MiteDistribution mites = mites(scenario);
    return StrictMath.log(mites.quantile(0.975) / mites.quantile(0.025));
  }

  @Test
  void stepsAreReadAsThoseOfPlansAndGoWithEveryPlan() {
    Scenario scenario = october(VAPOURS, AUGUST, OCTOBER);
    assertTrue(scenario.done().told());
    assertEquals(
        List.of("2026-09-08", "2026-09-15", "2026-09-22"),
        scenario.done().steps().stream().map(step -> step.date().toString()).toList());
    assertEquals(scenario.done().steps(), scenario.stepsUnder(scenario.plans().get(0)));
    assertEquals(scenario.done().steps(), scenario.countedColony().steps());
    assertEquals(LocalDate.parse("2026-10-02"), scenario.countedColony().date());
    assertEquals(15000, scenario.countedColony().bees());
    List<String> fields = scenario.assumptions().stream().map(Assumption::field).toList();
    assertTrue(fields.contains("done"), fields.toString());
  }

  @Test
  void anEarlierCountThroughTheTreatmentNarrowsTheEstimate() {
    double one = width(october(VAPOURS, OCTOBER));
    double both = width(october(VAPOURS, AUGUST, OCTOBER));
    assertTrue(both < 0.85 * one, both + " against " + one);
  }

  @Test
  void theTreatmentIsPartOfTheWidth() {
    MiteEstimate estimate =
        StartMites.of(october(VAPOURS, AUGUST, OCTOBER)).posterior().orElseThrow().estimate();
    assertTrue(estimate.widthShares().get(WidthSource.TREATMENT) > 0.02);
  }

  @Test
  void treatmentSinceTheCountLeavesFewerMites() {
    double treated = mites(october(VAPOURS, AUGUST)).median();
    double left = mites(october("done: []\n", AUGUST)).median();
    assertTrue(treated < 0.6 * left, treated + " against " + left);
  }

  @Test
  void anOldCountNeedsToKnowWhatWasDone() {
    Problem problem = read(colony("2026-10-02") + washes(AUGUST, OCTOBER)).problems().get(0);
    assertEquals("mites.counts", problem.field());
    assertTrue(problem.hint().contains("done:"), problem.hint());
  }

  @Test
  void aBoardDuringATreatmentIsReadByItsKill() {
    String done = "done: [{date: 2026-10-02, treatment: oxalic-sublimation}]\n";
    String fall = board("2026-10-09", 7, 300);
    double treated = mites(read(colony("2026-10-02") + done + fall).orThrow()).median();
    double natural = mites(read(colony("2026-10-02") + "done: []\n" + fall).orThrow()).median();
    assertTrue(treated < 0.7 * natural, treated + " against " + natural);
    assertTrue(treated > 300, "more than fell: " + treated);
  }

  @Test
  void laterCountsTellOnlyIfItIsKnownWhatWasDone() {
    String later = "{date: 2026-10-20, bees: 300, mites: 90, method: alcohol}";
    Scenario unknown = october("", OCTOBER, later);
    Scenario known = october("done: []\n", OCTOBER, later);
    assertEquals(1, unknown.countsThatTell().size());
    assertEquals(unknown.counts().subList(1, 2), unknown.laterCounts());
    assertEquals(2, known.countsThatTell().size());
    assertEquals(List.of(), known.laterCounts());
    assertTrue(mites(known).median() > 1.5 * mites(unknown).median());
    MiteEstimate estimate = StartMites.of(known).posterior().orElseThrow().estimate();
    assertEquals(LocalDate.parse("2026-10-02"), estimate.date());
    assertTrue(estimate.warnings().contains(EstimateWarning.CONFLICT));
  }

  @Test
  void stripsThatStillHangAct() {
    String strips = "done: [{date: 2026-09-20, treatment: amitraz-strips}]\n";
    double hanging = left(october(strips, OCTOBER).withMites(2000));
    double none = left(october("", OCTOBER).withMites(2000));
    assertTrue(hanging < 0.2 * none, hanging + " against " + none);
  }

  private static double left(Scenario scenario) {
    CentralRun run = CentralRun.of(scenario, 2000, scenario.plans()).get(0);
    return run.table().mites(60);
  }

  @Test
  void broodThatCouldNotBeLaidDoesNotEmptyTheBroodNestBefore() {
    String caged =
        "done: [{date: 2026-09-05, measure: queen-caging, days: 25},"
            + " {date: 2026-09-29, treatment: oxalic-dribble}]\n";
    String empty = "colony: {date: 2026-10-02, bees: 15000, brood: none seen, supers: off}\n";
    double treated = mites(read(empty + caged + washes(AUGUST)).orThrow()).median();
    double untreated = mites(october("done: []\n", AUGUST)).median();
    assertTrue(treated > 1 && treated < 0.3 * untreated, treated + " against " + untreated);
  }

  @Test
  void whatWasDoneCountsAsUsed() {
    String twice =
        "done: [{date: 2025-09-20, treatment: amitraz-strips},"
            + " {date: 2026-04-20, treatment: amitraz-strips}]\n";
    String plans =
        "plans: [{name: Again, steps: [{date: 2026-10-05, treatment: amitraz-strips}]}]\n";
    Scenario used = read(colony("2026-10-01") + twice + plans + washes(september())).orThrow();
    Scenario fresh = read(colony("2026-10-01") + plans + washes(september())).orThrow();
    assertEquals(
        List.of("amitraz for the third time in a row breeds resistant mites"),
        new RuledOut(used).reasons(used.plans().get(1)));
    assertEquals(List.of(), new RuledOut(used).reasons(used.plans().get(0)));
    assertEquals(List.of(), new RuledOut(fresh).reasons(fresh.plans().get(1)));
  }

  private static String september() {
    return "{date: 2026-09-30, bees: 305, mites: 9, method: alcohol}";
  }

  @Test
  void limitsOfCostAndTimeRuleOut() {
    String plans =
        "plans: [{name: Vapours, steps: [{date: 2026-10-05, treatment: oxalic-sublimation,"
            + " times: 3, every: 5 days}]}]\n";
    String costs = "costs: {oxalic-sublimation: 2}\n";
    assertEquals(List.of(), reasons(plans + costs + "limits: {cost: 6, minutes: 30}\n"));
    assertEquals(
        List.of("it costs 6, and your limit is 5", "it takes 30 minutes, and your limit is 29"),
        reasons(plans + costs + "limits: {cost: 5, minutes: 29}\n"));
    Scenario unknown =
        read(colony("2026-10-02") + plans + "limits: {cost: 5}\n" + washes(OCTOBER)).orThrow();
    assertTrue(unknown.assumptions().stream().anyMatch(it -> it.field().equals("limits.cost")));
  }

  private static List<String> reasons(String rest) {
    Scenario scenario = read(colony("2026-10-02") + rest + washes(OCTOBER)).orThrow();
    return new RuledOut(scenario).reasons(scenario.plans().get(1));
  }

  @Test
  void datesOfWhatWasDoneAreChecked() {
    List<Problem> problems =
        read(colony("2026-10-02")
                + "done: [{date: 2024-09-08, treatment: oxalic-sublimation}]\n"
                + washes(OCTOBER))
            .problems();
    assertEquals(List.of("done.date"), problems.stream().map(Problem::field).toList());
  }

  @Test
  void anotherSeedDrawsOtherPosteriors() {
    Scenario scenario = october(VAPOURS, AUGUST, OCTOBER);
    double one = StartMites.of(scenario, 1).median();
    assertEquals(one, StartMites.of(scenario).median());
    double other = StartMites.of(scenario, 2).median();
    assertTrue(other != one && Math.abs(other / one - 1) < 0.2, one + " and " + other);
  }
}
