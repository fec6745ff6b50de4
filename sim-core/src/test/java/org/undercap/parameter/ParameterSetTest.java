package org.undercap.parameter;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class ParameterSetTest {

  private final ParameterSet shipped = ParameterSet.shipped();

  @ParameterizedTest
  @EnumSource
  void shippedValuesAreThoseOfTheCatalogue(ParameterId id) {
    Parameter parameter = ParameterCatalogue.shipped().get(id);
    double[] values = shipped.values(id);
    assertEquals(parameter.values().size(), values.length);
    for (int i = 0; i < values.length; i++) {
      assertEquals(parameter.values().get(i), values[i]);
      assertEquals(values[i], shipped.value(id, i));
    }
  }

  @Test
  void infinityIsAValueOfDispersion() {
    assertEquals(Double.POSITIVE_INFINITY, shipped.value(ParameterId.DISPERSION_WORKER));
    ParameterSet poisson = shipped.with(ParameterId.DISPERSION_DRONE, Double.POSITIVE_INFINITY);
    assertEquals(Double.POSITIVE_INFINITY, poisson.value(ParameterId.DISPERSION_DRONE));
  }

  @Test
  void oneValueOfSeveralNeedsItsIndex() {
    assertThrows(
        IllegalArgumentException.class, () -> shipped.value(ParameterId.BROOD_WORKER_DAYS));
    assertThrows(
        IllegalArgumentException.class, () -> shipped.value(ParameterId.BROOD_WORKER_DAYS, 3));
    assertThrows(
        IllegalArgumentException.class, () -> shipped.value(ParameterId.BROOD_WORKER_DAYS, -1));
  }

  @Test
  void changesReturnCopies() {
    ParameterSet study = shipped.with(ParameterId.INVASION_WORKER, 5);
    assertEquals(5, study.value(ParameterId.INVASION_WORKER));
    assertEquals(0.56, shipped.value(ParameterId.INVASION_WORKER));
    assertEquals(6.49, study.value(ParameterId.INVASION_DRONE));
  }

  @Test
  void arraysCannotReachInside() {
    double[] days = {3, 5, 11};
    ParameterSet study = shipped.with(ParameterId.BROOD_WORKER_DAYS, days);
    days[0] = 9;
    study.values(ParameterId.BROOD_WORKER_DAYS)[1] = 9;
    study.changed().get(ParameterId.BROOD_WORKER_DAYS)[2] = 9;
    assertArrayEquals(new double[] {3, 5, 11}, study.values(ParameterId.BROOD_WORKER_DAYS));
  }

  @Test
  void tellsWhatChanged() {
    assertTrue(shipped.changed().isEmpty());
    ParameterSet study = shipped.with(ParameterId.ADULT_WEIGHT, 0.12);
    assertEquals(1, study.changed().size());
    assertArrayEquals(new double[] {0.12}, study.changed().get(ParameterId.ADULT_WEIGHT));
    assertTrue(study.with(ParameterId.ADULT_WEIGHT, 0.113).changed().isEmpty());
  }

  @Test
  void equalValuesAreEqualSets() {
    ParameterSet study = shipped.with(ParameterId.ADULT_WEIGHT, 0.12);
    assertNotEquals(shipped, study);
    assertEquals(shipped, study.with(ParameterId.ADULT_WEIGHT, 0.113));
    assertEquals(study.hashCode(), shipped.with(ParameterId.ADULT_WEIGHT, 0.12).hashCode());
  }

  @Test
  void theNumberOfValuesIsFixed() {
    IllegalArgumentException error =
        assertThrows(
            IllegalArgumentException.class,
            () -> shipped.with(ParameterId.BROOD_WORKER_DAYS, 3, 6));
    assertEquals("brood.worker.days needs 3 values, 2 were given", error.getMessage());
  }

  @ParameterizedTest
  @EnumSource
  void noParameterAcceptsNanOrMinusInfinity(ParameterId id) {
    for (double bad : new double[] {Double.NaN, Double.NEGATIVE_INFINITY}) {
      double[] values = shipped.values(id);
      values[values.length - 1] = bad;
      assertThrows(IllegalArgumentException.class, () -> shipped.with(id, values));
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.01, 1.01})
  void fractionsStayFractions(double bad) {
    IllegalArgumentException error =
        assertThrows(
            IllegalArgumentException.class,
            () -> shipped.with(ParameterId.EMERGENCE_LOSS_MOTHER_WORKER, bad));
    assertEquals(
        "emergence.loss.mother.worker is " + bad + "; each value must be in [0, 1]",
        error.getMessage());
  }

  @Test
  void domainsAreWiderThanRanges() {
    assertEquals(
        -5, shipped.with(ParameterId.WEATHER_OFFSET, -5).value(ParameterId.WEATHER_OFFSET));
    assertEquals(0, shipped.with(ParameterId.DRONE_DEATH, 0).value(ParameterId.DRONE_DEATH));
    assertThrows(
        IllegalArgumentException.class, () -> shipped.with(ParameterId.ADULT_LIFE_SUMMER, 0));
    assertThrows(
        IllegalArgumentException.class, () -> shipped.with(ParameterId.ADULT_LIFE_STAGES, 5.5));
    assertThrows(
        IllegalArgumentException.class, () -> shipped.with(ParameterId.ADULT_LIFE_STAGES, 0));
    assertThrows(
        IllegalArgumentException.class,
        () -> shipped.with(ParameterId.INVASION_WORKER, Double.POSITIVE_INFINITY));
  }
}
