package org.undercap.monitoring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.climate.SeasonDay;
import org.undercap.model.ColonyLanes;
import org.undercap.model.ModelParameters;
import org.undercap.model.Part;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.simulation.DailyDrivers;
import org.undercap.simulation.DailyTable;
import org.undercap.simulation.Simulator;
import org.undercap.simulation.StartShape;

class MiteEstimateTest {

  private static final Climate CLIMATE = ClimateCatalogue.shipped().get("central-european");
  private static final ParameterSet SET = ParameterSet.shipped();
  private static final LocalDate SUMMER = LocalDate.of(2026, 7, 10);
  private static final double BEES = 20_000;
  private static final double BROOD = 25_000;

  private static double estimate(Count... counts) {
    return MiteEstimate.of(CLIMATE, SET, SUMMER, BEES, BROOD, List.of(counts)).orElseThrow();
  }

  private static ColonyLanes colony(double mites) {
    ColonyLanes colony = StartShape.at(CLIMATE, SeasonDay.of(SUMMER), ModelParameters.of(SET));
    colony.scaleTo(0, BEES, BROOD, mites);
    return colony;
  }

  @Test
  void aWashIsDividedByRecoveryAndByTheShareOfMitesOnBees() {
    double onBees = colony(1000).total(Part.MITES_ON_BEES, 0) / 1000;
    double recovery = SET.value(ParameterId.COUNT_RECOVERY_WASH);
    double expected = BEES * 9 / 300 / recovery / onBees;
    assertEquals(expected, estimate(new Wash(SUMMER, 300, 9, WashMethod.ALCOHOL)), 1e-6 * expected);
  }

  @Test
  void sugarFindsFewerMitesThanAlcohol() {
    double sugar = estimate(new Wash(SUMMER, 300, 9, WashMethod.SUGAR));
    double alcohol = estimate(new Wash(SUMMER, 300, 9, WashMethod.ALCOHOL));
    assertEquals(0.95 / 0.90, sugar / alcohol, 1e-9);
  }

  @Test
  void aBoardGivesBackTheMitesThatFellOnIt() {
    double mites = 1500;
    DailyDrivers drivers = DailyDrivers.of(CLIMATE, SUMMER, 5, day -> 0, 1);
    DailyTable table = DailyTable.of(drivers, 0);
    new Simulator(ModelParameters.of(SET), drivers).run(colony(mites), List.of(), List.of(table));
    double fall = 0;
    for (int day = 0; day < 5; day++) {
      fall += table.miteFall(day);
    }
    double caught = fall * SET.value(ParameterId.COUNT_CAPTURE_BOARD);
    assertEquals(mites, estimate(new Board(SUMMER, 5, caught)), 0.01);
  }

  @Test
  void droneCellsGiveBackTheMitesInThem() {
    double mites = 4000;
    ColonyLanes colony = colony(mites);
    double perCell =
        colony.total(Part.MITES_IN_DRONE_CELLS, 0) / colony.total(Part.SEALED_DRONES, 0);
    double infested = 1 - 1 / Math.pow(1 + perCell / 2, 2);
    int opened = 5000;
    int found = (int) Math.round(opened * infested);
    assertEquals(mites, estimate(new DroneCells(SUMMER, opened, found)), 0.01 * mites);
  }

  @Test
  void severalCountsAreJoinedByTheirWeight() {
    Count few = new Wash(SUMMER, 300, 0, WashMethod.ALCOHOL);
    Count many = new Wash(SUMMER, 300, 12, WashMethod.ALCOHOL);
    double twice = estimate(few, many);
    assertEquals(estimate(new Wash(SUMMER, 600, 12, WashMethod.ALCOHOL)), twice, 1e-6 * twice);
    assertEquals(estimate(many) / 2, twice, 1e-6 * twice);
  }

  @Test
  void noMitesFoundMeansNoMites() {
    assertEquals(0, estimate(new Board(SUMMER, 3, 0)));
  }

  @Test
  void droneCellsTellNothingWithoutDrones() {
    LocalDate winter = LocalDate.of(2026, 12, 20);
    OptionalDouble mites =
        MiteEstimate.of(CLIMATE, SET, winter, 9000, 0, List.of(new DroneCells(winter, 50, 5)));
    assertTrue(mites.isEmpty());
  }

  @Test
  void countsThatCannotBeAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Wash(SUMMER, 0, 1, WashMethod.SOAP));
    assertThrows(IllegalArgumentException.class, () -> new Wash(SUMMER, 300, -1, WashMethod.SOAP));
    assertThrows(IllegalArgumentException.class, () -> new Board(SUMMER, 1, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new DroneCells(SUMMER, 10, 11));
  }
}
