package org.undercap.planning;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.comparison.Ranking;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.Method;

class TimingTest {
  private static final int MEMBERS = 32;

  private static Timing timing(Scenario scenario, int threads, String... methods) {
    List<Method> all = List.of(methods).stream().map(Facts::method).toList();
    StartDates dates = new StartDates(Facts.START, LocalDate.of(2026, 10, 24), 11);
    return Timing.of(scenario, Facts.mites(scenario), all, dates, Facts.settings(MEMBERS, threads));
  }

  private static double harm(StartOutcome start) {
    return start.outcomes().median(Ranking.HARM);
  }

  @ParameterizedTest
  @ValueSource(strings = {"thymol-gel", "thymol-wafer", "amitraz-strips", "formic-dispenser"})
  void aLaterStartNeverHarmsLess(String method) {
    Timing timing = timing(Facts.small(), 1, method);
    List<StartOutcome> starts = timing.courses().get(0).starts();
    assertEquals(8, starts.size());
    for (int i = 1; i < starts.size(); i++) {
      assertTrue(
          harm(starts.get(i)) >= harm(starts.get(i - 1)) - 1e-3,
          method + " from " + starts.get(i).date());
    }
    double untreated = timing.untreated().median(Ranking.HARM);
    assertTrue(harm(starts.get(0)) < untreated - 0.02, "an early start helps");
    assertTrue(harm(starts.get(starts.size() - 1)) <= untreated + 1e-3);
  }

  @Test
  void gelInAColderPlaceNeverHelpsMore() {
    Scenario warm = Facts.small();
    Climate climate = warm.climate();
    Scenario cold = warm.withClimate(climate.withTemperature(climate.temperature().warmer(-4)));
    Timing inWarmth = timing(warm, 1, "thymol-gel");
    Timing inCold = timing(cold, 1, "thymol-gel");
    for (int i = 0; i < inWarmth.courses().get(0).starts().size(); i++) {
      StartOutcome there = inWarmth.courses().get(0).starts().get(i);
      StartOutcome here = inCold.courses().get(0).starts().get(i);
      assertTrue(gain(inCold, here) <= gain(inWarmth, there) + 1e-3, "from " + there.date());
      assertTrue(here.shareInBand() <= there.shareInBand(), "from " + there.date());
    }
  }

  private static double gain(Timing timing, StartOutcome start) {
    return timing.untreated().median(Ranking.HARM) - harm(start);
  }

  @Test
  void threadsDoNotMatter() {
    Scenario scenario = Facts.small();
    Timing one = timing(scenario, 1, "thymol-wafer", "oxalic-sublimation");
    Timing two = timing(scenario, 2, "thymol-wafer", "oxalic-sublimation");
    assertEquals(3, one.courses().size(), "vapour once and four times");
    for (int course = 0; course < one.courses().size(); course++) {
      for (int i = 0; i < one.courses().get(course).starts().size(); i++) {
        assertArrayEquals(
            one.courses().get(course).starts().get(i).outcomes().of(Ranking.HARM),
            two.courses().get(course).starts().get(i).outcomes().of(Ranking.HARM));
      }
    }
    assertEquals(one.broodless().chances(), two.broodless().chances());
  }

  @Test
  void coldStartsAreRuledOutAndNeverTheLastInTime() {
    CourseTiming gel = timing(Facts.small(), 1, "thymol-gel").courses().get(0);
    LastStart last = gel.last().orElseThrow();
    StartOutcome late = gel.starts().get(gel.starts().size() - 1);
    assertFalse(late.ruledOut().isEmpty());
    assertTrue(late.shareInBand() < 0.1);
    assertTrue(
        gel.starts().stream()
            .filter(start -> start.date().equals(last.date()))
            .allMatch(start -> start.ruledOut().isEmpty()));
    assertTrue(last.chance() > 0.2 && last.chance() <= 1, "chance " + last.chance());
  }

  @Test
  void theLastStartInTimeKeepsHalfOfTheGain() {
    Timing timing = timing(Facts.small(), 1, "amitraz-strips");
    CourseTiming strips = timing.courses().get(0);
    double untreated = timing.untreated().median(Ranking.HARM);
    double best = harm(strips.starts().get(strips.best().orElseThrow()));
    double above = timing.inTime().above(untreated, best);
    assertTrue(above <= 0.02 && above <= (untreated - best) / 2 + 1e-12);
    for (StartOutcome start : strips.starts()) {
      boolean after = start.date().isAfter(strips.last().orElseThrow().date());
      if (after && start.ruledOut().isEmpty()) {
        assertTrue(harm(start) > best + above, "from " + start.date());
      }
    }
  }

  /** Winter bees have left their cells by then. */
  @Test
  void startsThatHelpNoWinterBeeAreNeverInTime() {
    Scenario scenario = Facts.small();
    LocalDate late = LocalDate.of(2026, 10, 20);
    CourseTiming dribble =
        Timing.of(
                scenario,
                Facts.mites(scenario),
                List.of(Facts.method("oxalic-dribble")),
                new StartDates(late, late.plusDays(20), 10),
                Facts.settings(MEMBERS, 1))
            .courses()
            .get(0);
    assertEquals(3, dribble.starts().size());
    assertTrue(dribble.best().isPresent());
    assertTrue(dribble.last().isEmpty());
  }

  @Test
  void broodIsGoneAroundMidwinter() {
    BroodlessTime time = timing(Facts.small(), 1, "powdered-sugar").broodless();
    LocalDate best = time.best().orElseThrow();
    assertTrue(best.isAfter(LocalDate.of(2026, 11, 1)), "best " + best);
    assertTrue(best.isBefore(LocalDate.of(2027, 1, 15)), "best " + best);
    assertFalse(time.first().orElseThrow().isAfter(best));
    assertFalse(time.last().orElseThrow().isBefore(best));
    assertEquals(0, time.chances().get(0), "in August there is brood");
  }

  @Test
  void broodIsNeverGoneInTheSubtropics() {
    Scenario scenario = Facts.small();
    Climate warm = ClimateCatalogue.shipped().get("humid-subtropical");
    BroodlessTime time = timing(scenario.withClimate(warm), 1, "oxalic-dribble").broodless();
    assertTrue(time.best().isEmpty() && time.first().isEmpty() && time.last().isEmpty());
    assertTrue(time.bestChance() < 0.8, "chance " + time.bestChance());
  }

  @Test
  void startsOutsideTheRunAreRefused() {
    Scenario scenario = Facts.small();
    StartDates early = new StartDates(Facts.START.minusDays(1), Facts.START, 1);
    assertThrows(IllegalArgumentException.class, () -> Timing.check(scenario, early));
    assertThrows(
        IllegalArgumentException.class,
        () -> new StartDates(Facts.START, Facts.START.minusDays(1), 1));
    assertThrows(IllegalArgumentException.class, () -> new StartDates(Facts.START, Facts.START, 0));
  }
}
