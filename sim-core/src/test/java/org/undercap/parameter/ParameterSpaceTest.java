package org.undercap.parameter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.undercap.internal.ShiftedSobol;

class ParameterSpaceTest {
  private static final ParameterCatalogue CATALOGUE = ParameterCatalogue.shipped();

  @Test
  void everySpreadOfTheCatalogueGivesItsMomentsBack() {
    double[][] points = ShiftedSobol.points(1 << 9, 1, 4);
    for (Parameter parameter : CATALOGUE.all()) {
      if (parameter.spread().shape() == Spread.Shape.FIXED) {
        continue;
      }
      Prior prior = Prior.of(parameter);
      boolean log = prior.shape() == Prior.Shape.LOGNORMAL;
      double sum = 0;
      double squares = 0;
      for (double[] point : points) {
        double x = prior.quantile(point[0]);
        assertTrue(parameter.id().domain().accepts(x), parameter.id().id() + " " + x);
        double y = log ? StrictMath.log(x / parameter.value()) : x - parameter.value();
        sum += y / points.length;
        squares += y * y / points.length;
      }
      double deviation = StrictMath.sqrt(squares - sum * sum);
      if (prior.spread() > 0) {
        assertEquals(0, sum / prior.spread(), 0.01, parameter.id().id());
        assertEquals(1, deviation / prior.spread(), 0.01, parameter.id().id());
      } else {
        double range = prior.high() - prior.low();
        double mean = (prior.low() + 4 * parameter.value() + prior.high()) / 6;
        assertEquals(mean - parameter.value(), sum, 1e-3 * range, parameter.id().id());
        assertEquals(1, deviation / prior.deviation(), 0.01, parameter.id().id());
      }
    }
  }

  @Test
  void densityIsHighestAtTheCentreAndFallsAsTheSpreadSays() {
    Prior normal = Prior.of(CATALOGUE.get(ParameterId.REPRODUCTION_WORKER));
    assertEquals(0, normal.logDensity(1));
    assertEquals(-0.5, normal.logDensity(1.12), 1e-12);
    Prior lognormal = Prior.of(CATALOGUE.get(ParameterId.INVASION_WORKER));
    assertEquals(0, lognormal.logDensity(0.56));
    assertEquals(-2, lognormal.logDensity(0.56 * StrictMath.exp(-0.7)), 1e-12);
    Prior beta = Prior.of(CATALOGUE.get(ParameterId.COUNT_RECOVERY_WASH));
    assertEquals(0, beta.logDensity(0.95));
    assertTrue(beta.logDensity(0.94) < 0 && beta.logDensity(0.96) < 0);
    assertEquals(Double.NEGATIVE_INFINITY, beta.logDensity(0.90));
    assertEquals(Double.NEGATIVE_INFINITY, beta.logDensity(0.89));
    assertEquals(0, Prior.uniform(2, 3).logDensity(2.9));
    assertEquals(Double.NEGATIVE_INFINITY, Prior.uniform(2, 3).logDensity(Double.NaN));
  }

  @Test
  void deviationsAreThoseOfTheFormulas() {
    assertEquals(1 / StrictMath.sqrt(12), Prior.uniform(2, 3).deviation(), 1e-12);
    assertEquals(0.12, Prior.of(CATALOGUE.get(ParameterId.REPRODUCTION_WORKER)).deviation());
    // Beta(3, 3) has variance 1/28.
    Prior even = new Prior(Prior.Shape.BETA, 5, 0, 0, 10);
    assertEquals(10 / StrictMath.sqrt(28), even.deviation(), 1e-12);
  }

  @Test
  void betaWithItsModeAtABoundIsFine() {
    Prior edge = new Prior(Prior.Shape.BETA, 1, 0, 0, 1);
    assertEquals(0, edge.logDensity(1));
    assertEquals(4 * StrictMath.log(0.5), edge.logDensity(0.5), 1e-12);
    assertEquals(StrictMath.pow(0.5, 0.2), edge.quantile(0.5), 1e-8);
  }

  @Test
  void pointsBecomeParameters() {
    ParameterSpace space =
        ParameterSpace.empty()
            .withSpreadOf(ParameterId.REPRODUCTION_WORKER)
            .withRangeOf(ParameterId.AGEING_BROOD_WEIGHT)
            .with(ParameterId.LAYING_HALF_SATURATION, Prior.uniform(4000, 6000));
    assertEquals(3, space.dimensions());
    ParameterSet set = space.at(new double[] {0.5, 0.25, 0.75});
    assertEquals(1.0, set.value(ParameterId.REPRODUCTION_WORKER), 1e-12);
    assertEquals(0.3, set.value(ParameterId.AGEING_BROOD_WEIGHT), 1e-12);
    assertEquals(5500, set.value(ParameterId.LAYING_HALF_SATURATION), 1e-9);
    assertEquals(
        3, set.changed().size() + (set.value(ParameterId.REPRODUCTION_WORKER) == 1 ? 1 : 0));
    assertEquals(List.of(set, set), space.atAll(new double[][] {{.5, .25, .75}, {.5, .25, .75}}));
    assertEquals(
        2.5,
        space.withValues(new double[] {2.5, 0.4, 5000}).value(ParameterId.REPRODUCTION_WORKER));
  }

  @Test
  void whatCannotVaryIsRefused() {
    ParameterSpace empty = ParameterSpace.empty();
    for (ParameterId id :
        List.of(
            ParameterId.CROWDING_WORKER,
            ParameterId.ADULT_LIFE_STAGES,
            ParameterId.BROOD_WORKER_DAYS)) {
      assertThrows(IllegalArgumentException.class, () -> empty.withSpreadOf(id), id.id());
      assertThrows(IllegalArgumentException.class, () -> empty.withRangeOf(id), id.id());
    }
    assertThrows(
        IllegalArgumentException.class, () -> empty.withSpreadOf(ParameterId.AGEING_MINIMUM));
    assertThrows(
        IllegalArgumentException.class, () -> empty.withRangeOf(ParameterId.DISPERSION_WORKER));
    assertThrows(IllegalArgumentException.class, () -> empty.withRangeOf(ParameterId.DRONE_DEATH));
    ParameterSpace one = empty.withSpreadOf(ParameterId.ADULT_WEIGHT);
    assertThrows(IllegalArgumentException.class, () -> one.withRangeOf(ParameterId.ADULT_WEIGHT));
    assertThrows(IllegalArgumentException.class, () -> one.at(new double[] {0.5, 0.5}));
    for (double edge : new double[] {0, 1, -0.1, Double.NaN}) {
      assertThrows(IllegalArgumentException.class, () -> one.at(new double[] {edge}));
    }
  }

  @Test
  void shiftedPointsAreEvenRepeatableAndInsideTheCube() {
    double[][] points = ShiftedSobol.points(64, 3, 11);
    double[][] again = ShiftedSobol.points(64, 3, 11);
    double[][] other = ShiftedSobol.points(64, 3, 12);
    int[] cells = new int[64];
    for (int row = 0; row < 64; row++) {
      for (int i = 0; i < 3; i++) {
        assertEquals(points[row][i], again[row][i]);
        assertTrue(points[row][i] > 0 && points[row][i] < 1);
      }
      cells[(int) (64 * points[row][0])]++;
    }
    for (int cell : cells) {
      assertEquals(1, cell);
    }
    assertTrue(points[0][0] != other[0][0]);
    assertThrows(IllegalArgumentException.class, () -> ShiftedSobol.points(0, 3, 1));
    assertThrows(IllegalArgumentException.class, () -> ShiftedSobol.points(8, 1001, 1));
  }
}
