package org.undercap.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;

class DayStepTest {

  private static ColonyLanes broodless(ModelParameters parameters, double bees, double mites) {
    ColonyLanes colony = ColonyLanes.empty(parameters);
    double sixth = bees / 6;
    colony.set(Part.HEALTHY_ADULTS, 0, sixth, sixth, sixth, sixth, sixth, sixth);
    colony.set(Part.MITES_ON_BEES, 0, mites);
    return colony;
  }

  private static DayStep step(double bees, double mites) {
    ModelParameters parameters = ModelParameters.of(ParameterSet.shipped());
    return new DayStep(broodless(parameters, bees, mites), parameters);
  }

  private static int day(DayStep step, double temperature, double arriving) {
    DayDrivers season = new DayDrivers();
    season.set(0, 0, new double[] {temperature}, new double[] {arriving});
    step.begin();
    return step.finish(season, 17);
  }

  @Test
  void broodlessDayByHand() {
    DayStep step = step(12_000, 100);
    assertEquals(0, day(step, 5, 2));
    assertEquals(12_000, step.flows().of(Flow.ADULTS, 0), 1e-9);
    assertEquals(0.10, step.flows().of(Flow.AGEING_SPEED, 0), 1e-12);
    assertEquals(102 * -StrictMath.expm1(-0.003), step.flows().of(Flow.DIED_NATURALLY, 0), 1e-12);
    assertEquals(102 * StrictMath.exp(-0.003), step.colony().mites(0), 1e-12);
    assertEquals(12_000 - 2000 * 6 * 0.10 / 28, step.colony().adults(0), 1e-9);
  }

  private static int finish(DayStep step) {
    DayDrivers season = new DayDrivers();
    season.set(0, 0, new double[] {5}, new double[] {0});
    return step.finish(season, 17);
  }

  @Test
  void cellsOpenAndDronesAgeByHand() {
    ParameterSet shipped = ParameterSet.shipped();
    ModelParameters parameters = ModelParameters.of(shipped);
    ColonyLanes colony = broodless(parameters, 12_000, 0);
    colony.set(Part.SEALED_WORKERS, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 60);
    colony.set(Part.SEALED_DRONES, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 40);
    colony.set(Part.ADULT_DRONES, 0, 100);
    DayStep step = new DayStep(colony, parameters);
    step.begin();
    finish(step);
    double sealedSurvival = shipped.value(ParameterId.BROOD_SURVIVAL_SEALED);
    double dronesLeft = 100 * StrictMath.exp(-shipped.value(ParameterId.DRONE_DEATH));
    assertEquals(60, step.flows().of(Flow.OPENED_CELLS, 0));
    assertEquals(60 * sealedSurvival, step.flows().of(Flow.EMERGED_HEALTHY, 0), 1e-12);
    assertEquals(dronesLeft + 40 * sealedSurvival, step.colony().total(Part.ADULT_DRONES, 0), 1e-9);
  }

  @Test
  void withTheBeesTheKeeperTakesTheirMitesAndTheDrones() {
    ParameterSet shipped = ParameterSet.shipped();
    ModelParameters parameters = ModelParameters.of(shipped);
    ColonyLanes colony = broodless(parameters, 9000, 100);
    colony.set(Part.WEAKENED_ADULTS, 0, 600, 600, 600, 600, 600, 0);
    colony.set(Part.ADULT_DRONES, 0, 200);
    DayStep step = new DayStep(colony, parameters);
    step.begin();
    step.effects().remove(0, 0, 0, 0.25);
    finish(step);
    assertEquals(25, step.flows().of(Flow.REMOVED, 0), 1e-12);
    assertEquals(75 * StrictMath.exp(-0.003), step.colony().mites(0), 1e-12);
    assertEquals(2250, step.colony().total(Part.WEAKENED_ADULTS, 0), 1e-9);
    double dronesLeft = 150 * StrictMath.exp(-shipped.value(ParameterId.DRONE_DEATH));
    assertEquals(dronesLeft, step.colony().total(Part.ADULT_DRONES, 0), 1e-9);
  }

  @Test
  void beesThatTheKeeperTookAreNotKilledToo() {
    DayStep step = step(12_000, 100);
    step.begin();
    step.effects().remove(0, 0, 0, 0.25);
    step.effects().harmBees(0, 0.1, 0, 0);
    finish(step);
    double killed = 9000 * -StrictMath.expm1(-0.1);
    assertEquals(killed, step.flows().of(Flow.ADULTS_KILLED, 0), 1e-9);
    double old = 1500 * 0.10 * 6 / 28;
    assertEquals((9000 - old) * StrictMath.exp(-0.1), step.colony().adults(0), 1e-9);
    step.begin();
    finish(step);
    assertEquals(0, step.flows().of(Flow.ADULTS_KILLED, 0));
  }

  @ParameterizedTest
  @CsvSource({
    "1510, 11.9, false",
    "1490, 11.9, true",
    "1490, 12.0, false",
    "510, 12.0, false",
    "490, 30, true"
  })
  void colonyIsLostWhenItHasTooFewBees(double bees, double temperature, boolean lost) {
    ModelParameters ageless =
        ModelParameters.of(ParameterSet.shipped().with(ParameterId.ADULT_LIFE_SUMMER, 1e9));
    DayStep step = new DayStep(broodless(ageless, bees, 0), ageless);
    assertEquals(lost ? 1 : 0, day(step, temperature, 0));
    assertEquals(lost, step.isLost(0));
    assertEquals(lost ? 17 : -1, step.lostOn(0));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY})
  void arrivalsThatCannotBeStopTheRun(double bad) {
    ModelException error = assertThrows(ModelException.class, () -> day(step(9000, 5), 20, bad));
    assertTrue(
        error.getMessage().startsWith("the account of mites does not close on day 17, colony 0"),
        error.getMessage());
  }

  @Test
  void temperatureThatCannotBeStopsTheRun() {
    ModelException error =
        assertThrows(ModelException.class, () -> day(step(9000, 5), Double.NaN, 0));
    assertEquals("on day 17 colony 0 has NaN adult bees", error.getMessage());
  }

  @Test
  void numbersOfColoniesMustAgree() {
    ModelParameters one = ModelParameters.of(ParameterSet.shipped());
    ColonyLanes two = ColonyLanes.empty(one).copies(0, 2);
    IllegalArgumentException error =
        assertThrows(IllegalArgumentException.class, () -> new DayStep(two, one));
    assertEquals("2 colonies, but 1 parameter sets", error.getMessage());
  }

  @ParameterizedTest
  @CsvSource({
    "AGEING_FLIGHT_HIGH, 7, ageing.flight.low is 7.0 and must be below ageing.flight.high",
    "DRONES_SIZE_HIGH, 6000, drones.sizeLow is 6000.0 and must be below drones.sizeHigh"
  })
  void boundsMustBeInOrder(ParameterId id, double value, String message) {
    ModelParameters bad = ModelParameters.of(ParameterSet.shipped().with(id, value));
    ColonyLanes colony = ColonyLanes.empty(bad);
    IllegalArgumentException error =
        assertThrows(IllegalArgumentException.class, () -> new DayStep(colony, bad));
    assertEquals("parameter " + message + ", which is " + value, error.getMessage());
  }
}
