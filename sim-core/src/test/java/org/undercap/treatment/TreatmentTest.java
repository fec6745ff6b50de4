package org.undercap.treatment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.simulation.Intervention;
import org.undercap.treatment.TrialColony.Seen;

class TreatmentTest {
  private static final Circumstances USUAL = Circumstances.usual(1650);

  private static PlanStep.Application apply(String method, int day, double dose) {
    return new PlanStep.Application(
        TrialColony.START.plusDays(day), MethodCatalogue.shipped().get(method), dose);
  }

  private static double hazard(String method, Circumstances circumstances) {
    return TrialColony.see(List.of(apply(method, 0, 1)), circumstances).get(0).onBees();
  }

  private static Circumstances with(boolean openFloor, boolean humid, Map<String, Double> share) {
    return new Circumstances(openFloor, humid, share, 1650, ParameterSet.shipped());
  }

  @Test
  void actsFromTheDayOfApplicationUntilItsRelease() {
    List<Seen> days = TrialColony.see(List.of(apply("pyrethroid-strips", 3, 1)), USUAL);
    for (int day = 0; day < 50; day++) {
      int age = day - 3;
      double expected = age < 0 || age >= 42 ? 0 : 0.28 * Math.min(1, (age + 1) / 3.0);
      assertEquals(expected, days.get(day).onBees(), 1e-12, "day " + day);
      assertEquals(0, days.get(day).inCells(), "day " + day);
    }
  }

  @Test
  void applicationsAddUpBeforeTheResponse() {
    Release tray = new Release.Decay(10, 1, 28);
    Method gel = MethodCatalogue.shipped().get("thymol-gel");
    List<Seen> days =
        TrialColony.see(List.of(apply("thymol-gel", 14, 0.5), apply("thymol-gel", 0, 1)), USUAL);
    double vapour = gel.profile().temperature().factor(TrialColony.TEMPERATURE);
    double amount = (tray.at(15) + 0.5 * tray.at(1)) * vapour;
    double concentration = StrictMath.pow(10 * amount, 4);
    double relative = concentration / (concentration + 1296);
    assertEquals(0.35 * relative, days.get(15).onBees(), 1e-12);
  }

  @Test
  void reachesUnderTheCappingsInItsRatio() {
    List<Seen> days = TrialColony.see(List.of(apply("formic-pads", 0, 1)), USUAL);
    for (int day = 0; day < 7; day++) {
      assertTrue(days.get(day).onBees() > 0);
      assertEquals(0.42 * days.get(day).onBees(), days.get(day).inCells(), 1e-15);
    }
    assertEquals(0, days.get(7).onBees());
  }

  @ParameterizedTest
  @CsvSource({
    "amitraz-strips, amitraz, 0.25",
    "pyrethroid-strips, pyrethroid, 0.9",
    "formic-pads, formic acid, 1",
    "thymol-gel, thymol, 0.5"
  })
  void resistantMitesAreSpared(String method, String substanceClass, double share) {
    double expected = (1 - share) * hazard(method, USUAL);
    Circumstances resistant = with(false, false, Map.of(substanceClass, share));
    assertEquals(expected, hazard(method, resistant), 1e-15);
    Circumstances other = with(false, false, Map.of("another class", share));
    assertEquals(hazard(method, USUAL), hazard(method, other));
  }

  @Test
  void resistanceDoesNotSpareTheBees() {
    List<PlanStep.Application> pads = List.of(apply("formic-pads", 0, 1));
    Seen spared = TrialColony.see(pads, with(false, false, Map.of("formic acid", 1.0))).get(0);
    Seen usual = TrialColony.see(pads, USUAL).get(0);
    assertEquals(0, spared.onBees());
    assertEquals(0, spared.inCells());
    assertEquals(usual.beesKilled(), spared.beesKilled());
    assertEquals(usual.eggs(), spared.eggs());
    assertTrue(usual.beesKilled() > 0);
  }

  @ParameterizedTest
  @CsvSource({
    "formic-pads, 0.6",
    "formic-dispenser, 0.6",
    "amitraz-strips, 1",
    "oxalic-sublimation, 1"
  })
  void openFloorWeakensWhatEvaporates(String method, double factor) {
    double open = hazard(method, with(true, false, Map.of()));
    assertEquals(factor * hazard(method, USUAL), open, 1e-15);
  }

  @ParameterizedTest
  @CsvSource({"oxalic-glycerine-strips, 0.3", "amitraz-strips, 1", "oxalic-dribble, 1"})
  void humidPlacesWeakenSomeStrips(String method, double factor) {
    double humid = hazard(method, with(false, true, Map.of()));
    assertEquals(factor * hazard(method, USUAL), humid, 1e-15);
  }

  @Test
  void strengthIsAFactorOnTheHazard() {
    ParameterSet weak = ParameterSet.shipped().with(ParameterId.TREATMENT_STRENGTH, 0.5);
    Circumstances circumstances = new Circumstances(false, false, Map.of(), 1650, weak);
    assertEquals(0.5 * hazard("formic-pads", USUAL), hazard("formic-pads", circumstances), 1e-15);
    Treatment own = Treatment.of(List.of(apply("formic-pads", 0, 1)), USUAL).withStrength(0.25);
    double seen = TrialColony.watch(List.of(own)).get(0).onBees();
    assertEquals(0.25 * hazard("formic-pads", USUAL), seen, 1e-15);
  }

  @Test
  void strengthsMustBeNumbersThatCanBe() {
    Treatment gel = Treatment.of(List.of(apply("thymol-gel", 0, 1)), USUAL);
    assertThrows(IllegalArgumentException.class, () -> gel.withStrength(1, -0.1));
    assertThrows(IllegalArgumentException.class, () -> gel.withStrength(Double.NaN));
  }

  @Test
  void sideEffectsOfADoseAreSpreadOverItsPulse() {
    List<Seen> dribble = TrialColony.see(List.of(apply("oxalic-dribble", 0, 1)), USUAL);
    double[] shares = {0.7, 0.2, 0.1, 0};
    for (int day = 0; day < shares.length; day++) {
      Seen seen = dribble.get(day);
      double dead = -StrictMath.expm1(-0.03 * shares[day]);
      assertEquals(seen.bees() * dead, seen.beesKilled(), 1e-9, "day " + day);
    }
  }

  @Test
  void treatmentIsOfOneMethod() {
    List<PlanStep.Application> mixed =
        List.of(apply("thymol-gel", 0, 1), apply("thymol-wafer", 0, 1));
    assertThrows(IllegalArgumentException.class, () -> Treatment.of(mixed, USUAL));
    assertThrows(IllegalArgumentException.class, () -> Treatment.of(List.of(), USUAL));
  }

  /** A method that a user wrote under the name of a shipped one is another method. */
  @Test
  void methodsOfOneNameAreNotMixedUp() {
    ParameterSet weak = ParameterSet.shipped().with(ParameterId.THYMOL_TARGET, 12);
    PlanStep.Application other =
        new PlanStep.Application(
            TrialColony.START, MethodCatalogue.with(weak).get("thymol-gel"), 1);
    List<PlanStep.Application> mixed = List.of(apply("thymol-gel", 0, 1), other);
    assertThrows(IllegalArgumentException.class, () -> Treatment.of(mixed, USUAL));
  }

  @Test
  void treatmentsOfAPlanAreOnePerMethod() {
    List<PlanStep.Application> plan =
        List.of(
            apply("thymol-gel", 14, 1), apply("oxalic-dribble", 100, 1), apply("thymol-gel", 0, 1));
    List<String> ids = new ArrayList<>();
    for (Intervention intervention : Interventions.of(plan, USUAL)) {
      ids.add(((Treatment) intervention).method().id());
    }
    assertEquals(List.of("oxalic-dribble", "thymol-gel"), ids);
  }

  @Test
  void refusesImpossibleDosesAndCircumstances() {
    for (double bad : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThrows(IllegalArgumentException.class, () -> apply("thymol-gel", 0, bad));
      assertThrows(IllegalArgumentException.class, () -> Circumstances.usual(bad));
    }
    Stream.of(-0.1, 1.1, Double.NaN)
        .forEach(
            bad ->
                assertThrows(
                    IllegalArgumentException.class,
                    () -> with(false, false, Map.of("amitraz", bad))));
  }
}
