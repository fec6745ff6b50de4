package org.undercap.planning;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.undercap.advice.RuledOut;
import org.undercap.comparison.Ranking;
import org.undercap.ensemble.Outcome;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.Courses;

class PlanSearchTest {
  private static PlanSearch.Result search(Scenario scenario, int schedules, int threads) {
    SearchSettings settings =
        new SearchSettings(schedules, 8, 20, Facts.settings(32, threads), Optional.empty());
    return PlanSearch.of(scenario, Facts.mites(scenario), settings);
  }

  @Test
  void keepsToTheRules() {
    Scenario scenario = Facts.with("organic: true\n");
    PlanSearch.Result result = search(scenario, 300, 1);
    RuledOut rules = new RuledOut(scenario);
    assertFalse(result.front().isEmpty());
    for (TriedSchedule tried : result.front()) {
      Schedule schedule = tried.schedule();
      assertTrue(schedule.courses().size() <= 3);
      assertTrue(schedule.courses().stream().allMatch(c -> c.method().organic()));
      assertEquals(List.of(), rules.reasons(schedule.plan()));
      assertEquals(List.of(), Courses.unusual(schedule.steps()));
      assertFalse(Courses.closerThan(schedule.steps(), 14));
      assertTrue(Courses.coursesOfOneClass(schedule.steps()) <= 2);
    }
  }

  @Test
  void theBestIsBetterThanNothingAndNoOtherOnTheFrontBeatsIt() {
    PlanSearch.Result result = search(Facts.small(), 300, 1);
    double best = result.front().get(0).outcomes().median(Ranking.HARM);
    assertTrue(best < result.untreated().median(Ranking.HARM) - 0.05);
    List<TriedSchedule> front = result.front();
    for (int one = 0; one < front.size(); one++) {
      for (int other = 0; other < front.size(); other++) {
        assertFalse(
            one != other && beats(front.get(one), front.get(other)),
            front.get(one).schedule().plan() + " beats " + front.get(other).schedule().plan());
      }
    }
  }

  private static boolean beats(TriedSchedule one, TriedSchedule other) {
    List<Double> mine = one.aims(Outcome.MITES_AT_MIDWINTER, 1.25, false);
    List<Double> theirs = other.aims(Outcome.MITES_AT_MIDWINTER, 1.25, false);
    boolean noWorse = true;
    for (int aim = 0; aim < mine.size(); aim++) {
      noWorse &= mine.get(aim) <= theirs.get(aim);
    }
    return noWorse;
  }

  @Test
  void nothingBeginsBeforeTheFirstDayOnWhichTheKeeperCanTreat() {
    Scenario scenario = Facts.small();
    LocalDate from = scenario.start().plusDays(10);
    SearchSettings settings = SearchSettings.usual(60, Facts.settings(32, 1)).withFrom(from);
    PlanSearch.Result result = PlanSearch.of(scenario, Facts.mites(scenario), settings);
    assertFalse(result.front().isEmpty());
    for (TriedSchedule tried : result.front()) {
      tried.schedule().steps().forEach(s -> assertFalse(s.date().isBefore(from), s.toString()));
    }
    SearchSettings before = settings.withFrom(scenario.start().minusDays(1));
    assertThrows(
        IllegalArgumentException.class,
        () -> PlanSearch.of(scenario, Facts.mites(scenario), before));
  }

  @Test
  void countsWhatItTried() {
    PlanSearch.Result result = search(Facts.small(), 300, 1);
    assertTrue(result.tried() <= 300, "tried " + result.tried());
    assertTrue(result.tried() > 250, "the room is used: " + result.tried());
    assertEquals(4, result.rounds().size());
    assertFalse(result.rounds().get(0).complete(), "300 are too few for all single courses");
    assertFalse(result.rounds().get(2).complete());
    assertEquals(8, result.rounds().get(0).members());
    assertEquals(32, result.rounds().get(3).members());
    assertEquals(32, result.front().get(0).outcomes().of(Ranking.HARM).length);
  }

  @Test
  void aSmallListIsSearchedCompletely() {
    Scenario scenario = Facts.with("allowed: [formic-dispenser]\ncosts: {formic-dispenser: 8}\n");
    PlanSearch.Result result = search(scenario, 2000, 1);
    assertTrue(result.rounds().stream().allMatch(SearchRound::complete));
    assertTrue(result.withoutCost().isEmpty());
    TriedSchedule best = result.front().get(0);
    assertEquals(
        8.0 * best.schedule().courses().size(), best.cost().orElseThrow(), "cost of all courses");
    assertEquals(15.0 * best.schedule().courses().size(), best.schedule().minutes());
  }

  @Test
  void nothingBeginsWhileSupersAreOn() {
    LocalDate until = LocalDate.of(2026, 9, 1);
    Scenario scenario = Facts.supersUntil(until);
    PlanSearch.Result result = search(scenario, 150, 1);
    assertFalse(result.front().isEmpty());
    for (TriedSchedule tried : result.front()) {
      assertTrue(tried.schedule().courses().stream().allMatch(c -> c.date().isAfter(until)));
    }
  }

  @Test
  void aRunThatEndsBeforeMidwinterIsJudgedByItsLastDay() {
    PlanSearch.Result result = search(Facts.with("horizon: 2026-10-30\n"), 60, 1);
    assertEquals(Outcome.MITES_AT_END, result.scope().mitesLeft());
    assertEquals(LocalDate.of(2026, 10, 30), result.scope().mitesLeftOn());
  }

  @Test
  void threadsDoNotMatter() {
    PlanSearch.Result one = search(Facts.small(), 200, 1);
    PlanSearch.Result two = search(Facts.small(), 200, 2);
    assertEquals(
        one.front().stream().map(t -> t.schedule()).toList(),
        two.front().stream().map(t -> t.schedule()).toList());
    for (int i = 0; i < one.front().size(); i++) {
      assertArrayEquals(
          one.front().get(i).outcomes().of(Ranking.HARM),
          two.front().get(i).outcomes().of(Ranking.HARM));
    }
  }
}
