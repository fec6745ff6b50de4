package org.undercap.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercap.parameter.ParameterSet;

class ColonyLanesTest {
  private static final ModelParameters ONE = ModelParameters.of(ParameterSet.shipped());

  private static ColonyLanes colony() {
    ColonyLanes colony = ColonyLanes.empty(ONE);
    colony.set(Part.HEALTHY_ADULTS, 0, 1000, 900, 800, 700, 600, 500);
    colony.set(Part.WEAKENED_ADULTS, 0, 50, 40, 30, 20, 10, 0);
    colony.set(Part.WORKER_EGGS, 0, 300, 310, 320);
    colony.set(Part.WORKER_LARVAE, 0, 290, 280, 270, 260, 250, 240);
    colony.set(Part.SEALED_WORKERS, 0, 12, 11, 10, 9, 8, 7, 6, 5, 4, 3, 2, 1);
    colony.set(Part.MITES_IN_WORKER_CELLS, 0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12);
    colony.set(Part.DRONE_EGGS, 0, 3, 2, 1);
    colony.set(Part.DRONE_LARVAE, 0, 7, 6, 5, 4, 3, 2, 1);
    colony.set(Part.SEALED_DRONES, 0, 14, 13, 12, 11, 10, 9, 8, 7, 6, 5, 4, 3, 2, 1);
    colony.set(Part.MITES_IN_DRONE_CELLS, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 8, 12);
    colony.set(Part.MITES_ON_BEES, 0, 22);
    colony.set(Part.ADULT_DRONES, 0, 40);
    return colony;
  }

  @Test
  void totalsAreSumsOverAges() {
    ColonyLanes colony = colony();
    assertEquals(4650, colony.adults(0));
    assertEquals(4500, colony.total(Part.HEALTHY_ADULTS, 0));
    assertEquals(150, colony.total(Part.WEAKENED_ADULTS, 0));
    assertEquals(930 + 1590 + 78 + 6 + 28 + 105, colony.brood(0));
    assertEquals(78 + 20 + 22, colony.mites(0));
  }

  @Test
  void scalingKeepsTheShape() {
    ColonyLanes colony = colony();
    ColonyLanes before = colony();
    colony.scaleTo(0, 9300, 2 * before.brood(0), 360);
    assertEquals(9300, colony.adults(0), 1e-9);
    assertEquals(2 * before.brood(0), colony.brood(0), 1e-9);
    assertEquals(360, colony.mites(0), 1e-9);
    for (Part part : Part.values()) {
      boolean mites = part.name().startsWith("MITES");
      assertEquals((mites ? 3 : 2) * before.total(part, 0), colony.total(part, 0), 1e-9, "" + part);
    }
    assertEquals(2 * 12, colony.sealedWorkerCells().row(0)[0], 1e-12);
    assertEquals(3 * 12, colony.mothersInWorkerCells().row(11)[0], 1e-12);
  }

  @Test
  void moreBroodForEachBeeMeansMoreMitesInCells() {
    ColonyLanes colony = colony();
    colony.scaleTo(0, 4650, 2 * colony().brood(0), 100);
    double onBees = 22.0 / (22 + 2 * (78 + 20));
    assertEquals(100 * onBees, colony.total(Part.MITES_ON_BEES, 0), 1e-9);
  }

  @Test
  void withoutBroodAllMitesAreOnTheBees() {
    ColonyLanes colony = colony();
    colony.scaleTo(0, 4650, 0, 100);
    assertEquals(0, colony.brood(0));
    assertEquals(100, colony.total(Part.MITES_ON_BEES, 0), 1e-12);
    assertEquals(colony.total(Part.MITES_ON_BEES, 0), colony.mites(0));
  }

  @Test
  void scalingToNoMitesTakesThemAll() {
    ColonyLanes colony = colony();
    colony.scaleMites(0, 0);
    assertEquals(0, colony.mites(0));
    colony.scaleMites(0, 0);
    assertEquals(0, colony.mites(0));
  }

  @Test
  void cannotScaleWhatIsNotThere() {
    ColonyLanes empty = ColonyLanes.empty(ONE);
    String bees = message(() -> empty.scaleTo(0, 1000, 0, 0));
    assertEquals(
        "1000.0 adult bees asked for, but a colony of this season has none to scale", bees);
    ColonyLanes broodless = colony();
    broodless.scaleTo(0, 1000, 0, 10);
    assertTrue(message(() -> broodless.scaleTo(0, 1000, 5, 10)).startsWith("5.0 brood cells"));
    broodless.scaleMites(0, 0);
    assertTrue(message(() -> broodless.scaleMites(0, 5)).startsWith("5.0 mites"));
  }

  private static String message(Runnable runnable) {
    return assertThrows(IllegalArgumentException.class, runnable::run).getMessage();
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesImpossibleNumbers(double bad) {
    ColonyLanes colony = colony();
    assertThrows(IllegalArgumentException.class, () -> colony.scaleTo(0, bad, 1, 1));
    assertThrows(IllegalArgumentException.class, () -> colony.scaleTo(0, 1, bad, 1));
    assertThrows(IllegalArgumentException.class, () -> colony.scaleTo(0, 1, 1, bad));
    assertThrows(IllegalArgumentException.class, () -> colony.scaleMites(0, bad));
    assertThrows(IllegalArgumentException.class, () -> colony.addMitesOnBees(0, bad * 100));
    assertThrows(IllegalArgumentException.class, () -> colony.setQueenQuality(0, bad));
    assertThrows(IllegalArgumentException.class, () -> colony.set(Part.ADULT_DRONES, 0, bad));
  }

  @Test
  void refusesOtherNumbersOfAges() {
    ColonyLanes colony = colony();
    assertEquals(
        "5 stages given, 6 expected",
        message(() -> colony.set(Part.HEALTHY_ADULTS, 0, new double[5])));
    assertEquals(
        "11 cohorts given, 12 expected",
        message(() -> colony.set(Part.SEALED_WORKERS, 0, new double[11])));
  }

  @Test
  void copiesShareNothing() {
    ColonyLanes colony = colony();
    ColonyLanes three = colony.copies(0, 3);
    colony.scaleTo(0, 1, 0, 0);
    assertEquals(3, three.lanes());
    for (int lane = 0; lane < 3; lane++) {
      for (Part part : Part.values()) {
        assertEquals(colony().total(part, 0), three.total(part, lane), part.toString());
      }
    }
    three.scaleMites(1, 500);
    assertEquals(120, three.mites(0), 1e-12);
    assertEquals(500, three.mites(1), 1e-12);
    assertEquals(120, three.copy().mites(2), 1e-12);
  }

  @Test
  void pickedColoniesAreCopies() {
    ColonyLanes two = colony().copies(0, 2);
    two.scaleMites(1, 500);
    ColonyLanes picked = two.pick(1, 0, 1);
    two.scaleMites(1, 7);
    assertEquals(3, picked.lanes());
    assertEquals(500, picked.mites(0), 1e-12);
    assertEquals(120, picked.mites(1), 1e-12);
    assertEquals(500, picked.mites(2), 1e-12);
    assertEquals(1, picked.sealedDroneCells().row(13)[1]);
    assertEquals(12, picked.mothersInDroneCells().row(13)[1]);
  }
}
