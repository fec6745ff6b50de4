package org.undercap.treatment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;

/** What every kind of step can do, whatever it is. */
class StepsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 5, 1);
  private static final Method PADS = MethodCatalogue.shipped().get("formic-pads");
  private static final List<PlanStep> EVERY_KIND =
      List.of(
          new PlanStep.Application(DAY, PADS, 1),
          new PlanStep.LayingStop(DAY, 21, true),
          new PlanStep.LayingStop(DAY, 21, false),
          new PlanStep.DroneCombRemoval(DAY, 0.9),
          new PlanStep.DroneFrame(DAY, DAY.plusDays(20), 3),
          new PlanStep.BroodRemoval(DAY, 0.5),
          new PlanStep.ShookSwarm(DAY),
          new PlanStep.Split(DAY, 0.5, 0.4, 28),
          new PlanStep.LateFeeding(DAY, DAY.plusDays(9)));

  @Test
  void movedStepIsTheSameOnOtherDays() {
    for (PlanStep step : EVERY_KIND) {
      PlanStep later = step.moved(7);
      assertEquals(step.getClass(), later.getClass());
      assertEquals(step.date().plusDays(7), later.date(), step.words());
      assertEquals(step.until().plusDays(7), later.until(), step.words());
      assertEquals(step.words(), later.words());
      assertNotEquals(step, later);
      assertEquals(step, later.moved(-7));
      assertTrue(!step.until().isBefore(step.date()), step.words());
    }
  }

  @Test
  void everyKindHasItsWords() {
    Set<String> words = new HashSet<>();
    EVERY_KIND.forEach(step -> words.add(step.words()));
    assertEquals(EVERY_KIND.size(), words.size(), words.toString());
    assertTrue(words.stream().noneMatch(String::isBlank), words.toString());
  }

  @Test
  void everyKindTakesItsTime() {
    ParameterSet shipped = ParameterSet.shipped();
    List<Double> expected =
        List.of(
            PADS.minutes(),
            shipped.value(ParameterId.WORK_QUEEN_CAGING),
            shipped.value(ParameterId.WORK_REQUEENING),
            shipped.value(ParameterId.WORK_DRONE_COMB),
            0.0,
            shipped.value(ParameterId.WORK_BROOD_REMOVAL),
            shipped.value(ParameterId.WORK_SHOOK_SWARM),
            shipped.value(ParameterId.WORK_SPLIT),
            0.0);
    assertEquals(expected, EVERY_KIND.stream().map(step -> Work.minutes(step, shipped)).toList());
    assertTrue(expected.stream().mapToDouble(minutes -> minutes).sum() > 0);
  }

  @Test
  void treatmentSlowsLayingAsItsProfileSays() {
    EfficacyProfile profile = PADS.profile();
    double amount = profile.release().at(0) * profile.temperature().factor(TrialColony.TEMPERATURE);
    double slowed = 1 - profile.sideEffects().laying() * profile.response().relative(amount);
    assertTrue(slowed < 1, "the profile slows laying");
    Circumstances usual = Circumstances.usual(1650);
    List<PlanStep> pads = List.of(new PlanStep.Application(TrialColony.START, PADS, 1));
    double without = TrialColony.see(List.of(), usual).get(0).eggs();
    assertEquals(slowed * without, TrialColony.see(pads, usual).get(0).eggs(), 1e-9 * without);
  }
}
