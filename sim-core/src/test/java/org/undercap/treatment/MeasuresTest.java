package org.undercap.treatment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercap.simulation.DailyColumn;
import org.undercap.simulation.DailyTable;

/** Measures without a substance. */
class MeasuresTest {
  private static final LocalDate START = TrialColony.START;
  private static final DailyTable UNTOUCHED = TrialColony.table();

  /** Eggs that the colony would lay from a potential, by the formula. */
  private static double eggs(DailyTable table, int day, double potential) {
    double bees = table.adults(day);
    return potential * bees / (bees + 5000);
  }

  private static double eggs(DailyTable table, int day) {
    return eggs(table, day, TrialColony.potentialEggs(day));
  }

  private static void assertEggs(double expected, DailyTable table, int day) {
    assertEquals(expected, table.at(DailyColumn.EGGS_LAID, day), 1e-9, "eggs on day " + day);
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void layingStopsForItsDaysOnly(boolean caged) {
    DailyTable table = TrialColony.table(new PlanStep.LayingStop(START.plusDays(2), 5, caged));
    for (int day = 0; day < 10; day++) {
      assertEggs(day >= 2 && day < 7 ? 0 : eggs(table, day), table, day);
    }
  }

  @Test
  void droneCombRemovalTakesDroneBroodAndItsMites() {
    DailyTable table = TrialColony.table(new PlanStep.DroneCombRemoval(START, 0.9));
    assertEquals(
        0.9 * table.at(DailyColumn.MITES_IN_DRONE_CELLS, 0),
        table.at(DailyColumn.MITES_REMOVED, 0),
        1e-9);
    assertTrue(table.at(DailyColumn.MITES_REMOVED, 0) > 0);
    assertEquals(0, table.at(DailyColumn.MITES_REMOVED, 1));
    double left = table.at(DailyColumn.LARVAE_DRONE, 1);
    assertEquals(0.1 * UNTOUCHED.at(DailyColumn.LARVAE_DRONE, 1), left, 1e-9);
    assertEquals(
        UNTOUCHED.at(DailyColumn.SEALED_WORKER, 1), table.at(DailyColumn.SEALED_WORKER, 1), 1e-9);
  }

  @Test
  void droneFrameDrawsEggsIntoDroneCells() {
    DailyTable table = TrialColony.table(new PlanStep.DroneFrame(START, START.plusDays(1), 5));
    double usual = UNTOUCHED.at(DailyColumn.EGGS_DRONE, 1);
    double extra = table.at(DailyColumn.EGGS_DRONE, 1) - usual;
    double laid = UNTOUCHED.at(DailyColumn.EGGS_LAID, 0);
    double workersLess =
        UNTOUCHED.at(DailyColumn.EGGS_WORKER, 1) - table.at(DailyColumn.EGGS_WORKER, 1);
    assertEquals(extra, workersLess, 1e-9);
    assertEquals(laid, table.at(DailyColumn.EGGS_LAID, 0), 1e-9);
    assertEquals(4 * TrialColony.droneShare(0) * laid, extra, 1e-9);
  }

  @Test
  void broodRemovalTakesItsShareOfAllBrood() {
    DailyTable table = TrialColony.table(new PlanStep.BroodRemoval(START, 0.3));
    assertEquals(0.3 * table.mitesInCells(0), table.at(DailyColumn.MITES_REMOVED, 0), 1e-9);
    for (DailyColumn brood : List.of(DailyColumn.LARVAE_WORKER, DailyColumn.LARVAE_DRONE)) {
      assertEquals(0.7 * UNTOUCHED.at(brood, 1), table.at(brood, 1), 1e-9, brood.header());
    }
  }

  @Test
  void shookSwarmLosesAllBroodAndLaysLessForTenDays() {
    DailyTable table = TrialColony.table(new PlanStep.ShookSwarm(START.plusDays(1)));
    assertEquals(table.mitesInCells(1), table.at(DailyColumn.MITES_REMOVED, 1), 1e-9);
    assertEquals(0, table.mitesInCells(2));
    assertEquals(table.at(DailyColumn.EGGS_LAID, 1), table.brood(2), 1e-9);
    for (int day = 0; day < 15; day++) {
      assertEggs((day >= 1 && day < 11 ? 0.7 : 1) * eggs(table, day), table, day);
    }
  }

  @Test
  void splitTakesBeesBroodAndTheirMites() {
    DailyTable table = TrialColony.table(new PlanStep.Split(START, 0.4, 0.5, 6));
    double removed = 0.4 * table.at(DailyColumn.MITES_ON_BEES, 0) + 0.5 * table.mitesInCells(0);
    assertEquals(removed, table.at(DailyColumn.MITES_REMOVED, 0), 1e-9);
    assertEquals(
        0.5 * UNTOUCHED.at(DailyColumn.LARVAE_WORKER, 1),
        table.at(DailyColumn.LARVAE_WORKER, 1),
        1e-9);
    double emerged =
        UNTOUCHED.at(DailyColumn.WORKERS_EMERGED_HEALTHY, 0)
            + UNTOUCHED.at(DailyColumn.WORKERS_EMERGED_WEAKENED, 0);
    assertEquals(0.6 * (UNTOUCHED.adults(1) - emerged) + 0.5 * emerged, table.adults(1), 1e-6);
    for (int day = 0; day < 10; day++) {
      assertEggs(day < 6 ? 0 : eggs(table, day), table, day);
    }
  }

  @Test
  void splitThatKeepsTheQueenGoesOnLaying() {
    DailyTable table = TrialColony.table(new PlanStep.Split(START, 0.4, 0.5, 0));
    assertEggs(eggs(table, 0), table, 0);
    assertEggs(eggs(table, 1), table, 1);
  }

  /** At 13.2 C the effect of feeding is 0.82 of its full size. */
  @Test
  void lateFeedingKeepsLayingUntilTenDaysAfter() {
    LocalDate first = START.plusDays(65);
    DailyTable table = TrialColony.table(new PlanStep.LateFeeding(first, first.plusDays(2)));
    double kept = 0.20 * 1650 * (13.2 - 5) / 10;
    assertTrue(kept > TrialColony.potentialEggs(65) && kept < TrialColony.potentialEggs(50));
    for (int day = 50; day < 90; day++) {
      boolean fed = day >= 65 && day < 78;
      double potential = TrialColony.potentialEggs(day);
      assertEggs(eggs(table, day, fed ? kept : potential), table, day);
    }
  }

  @Test
  void feedingDoesNotMakeACagedQueenLay() {
    DailyTable table =
        TrialColony.table(
            new PlanStep.LateFeeding(START, START.plusDays(5)),
            new PlanStep.LayingStop(START, 3, true));
    assertEggs(0, table, 2);
    assertEggs(eggs(table, 3), table, 3);
  }

  @Test
  void refusesWhatCannotBe() {
    LocalDate before = START.minusDays(1);
    assertThrows(IllegalArgumentException.class, () -> new PlanStep.DroneFrame(START, before, 1));
    assertThrows(IllegalArgumentException.class, () -> new PlanStep.LateFeeding(START, before));
    assertThrows(IllegalArgumentException.class, () -> new PlanStep.LayingStop(START, 0, true));
    assertThrows(IllegalArgumentException.class, () -> new PlanStep.Split(START, 1.1, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> new PlanStep.Split(START, 0, 0, -1));
    for (double bad : new double[] {-0.1, 1.1, Double.NaN}) {
      assertThrows(IllegalArgumentException.class, () -> new PlanStep.DroneCombRemoval(START, bad));
      assertThrows(IllegalArgumentException.class, () -> new PlanStep.BroodRemoval(START, bad));
    }
  }

  @Test
  void stepsTellTheirLastDay() {
    Method strips = MethodCatalogue.shipped().get("amitraz-strips");
    assertEquals(START.plusDays(69), new PlanStep.Application(START, strips, 1).until());
    assertEquals(START.plusDays(23), new PlanStep.LayingStop(START, 24, true).until());
    assertEquals(START.plusDays(29), new PlanStep.Split(START, 0.5, 0.5, 30).until());
    assertEquals(START, new PlanStep.Split(START, 0.5, 0.5, 0).until());
    assertEquals(START, new PlanStep.BroodRemoval(START, 0.5).until());
  }
}
