package org.undercap.calibration;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.junit.jupiter.api.Test;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.Prior;

class LikelihoodFitTest {
  private static final FreeParameter X = FreeParameter.of("x", Prior.uniform(-5, 5));
  private static final FreeParameter Y = FreeParameter.of("y", Prior.uniform(-5, 5));
  private static final FreeParameter Z = FreeParameter.of("z", Prior.uniform(-5, 5));

  private static FitResult fit(
      List<FreeParameter> parameters, FitSettings settings, ToDoubleFunction<double[]> f) {
    return LikelihoodFit.of(parameters, points -> Arrays.stream(points).mapToDouble(f).toArray())
        .run(settings);
  }

  /** Two normals of deviation 0.5 and 0.2 with correlation 0.8, around 1 and -2. */
  private static double hill(double[] p) {
    double u = (p[0] - 1) / 0.5;
    double v = (p[1] + 2) / 0.2;
    return -(u * u - 2 * 0.8 * u * v + v * v) / (2 * (1 - 0.64));
  }

  @Test
  void aNormalLikelihoodGivesBackItsMomentsAndIntervals() {
    FitResult found = fit(List.of(X, Y), FitSettings.usual(1), LikelihoodFitTest::hill);
    assertArrayEquals(new double[] {1, -2}, found.values(), 1e-3);
    assertEquals(1 - 1.96 * 0.5, found.parameter("x").low(), 0.01);
    assertEquals(1 + 1.96 * 0.5, found.parameter("x").high(), 0.01);
    assertEquals(-2 - 1.96 * 0.2, found.parameter("y").low(), 0.005);
    assertEquals(0.8, found.correlations().get(0).get(1), 0.01);
    assertEquals(0.5 / (10 / StrictMath.sqrt(12)), found.parameter("x").priorLeft(), 0.002);
    assertEquals(List.of(), found.unidentified());
    assertEquals(4, found.startsAgreeing());
    assertFalse(found.exhausted());
    assertEquals(0, found.logLikelihood(), 1e-3);
  }

  @Test
  void drawsHaveTheCorrelationOfTheFit() {
    FitResult found = fit(List.of(X, Y), FitSettings.usual(1), LikelihoodFitTest::hill);
    double[][] draws = found.draws(4000, 3);
    double sx = 0;
    double sy = 0;
    double sxy = 0;
    for (double[] draw : draws) {
      sx += (draw[0] - 1) * (draw[0] - 1) / draws.length;
      sy += (draw[1] + 2) * (draw[1] + 2) / draws.length;
      sxy += (draw[0] - 1) * (draw[1] + 2) / draws.length;
    }
    assertEquals(0.25, sx, 0.02);
    assertEquals(0.04, sy, 0.004);
    assertEquals(0.8, sxy / StrictMath.sqrt(sx * sy), 0.03);
    assertArrayEquals(draws[7], found.draws(4000, 3)[7]);
  }

  @Test
  void aSkewLikelihoodGetsASkewInterval() {
    // 3 events of a Poisson process: the interval of its rate by likelihood ratio.
    FreeParameter rate = FreeParameter.flatInLogarithm("rate", 0.01, 100);
    FitResult found =
        fit(List.of(rate), FitSettings.usual(1), p -> 3 * StrictMath.log(p[0]) - p[0]);
    FittedParameter fitted = found.parameter("rate");
    assertEquals(3, fitted.value(), 1e-3);
    double fall = new ChiSquaredDistribution(null, 1).inverseCumulativeProbability(0.95) / 2;
    for (double end : new double[] {fitted.low(), fitted.high()}) {
      double lost = 3 * StrictMath.log(3) - 3 - (3 * StrictMath.log(end) - end);
      assertEquals(fall, lost, 0.02);
    }
    assertTrue(fitted.high() - 3 > 3 - fitted.low());
  }

  @Test
  void aParameterWithoutInfluenceIsNamed() {
    FitResult found = fit(List.of(X, Y, Z), FitSettings.usual(1), LikelihoodFitTest::hill);
    assertEquals(List.of("z"), found.unidentified());
    FittedParameter z = found.parameter("z");
    assertTrue(z.openBelow() && z.openAbove());
    assertEquals(-5, z.low());
    assertEquals(5, z.high());
    assertEquals(1, found.parameter("x").value(), 1e-3);
  }

  @Test
  void aSumThatAloneIsKnownLeavesBothPartsOpen() {
    FitResult found =
        fit(List.of(X, Y), FitSettings.usual(1), p -> -50 * (p[0] + p[1]) * (p[0] + p[1]));
    assertEquals(List.of("x", "y"), found.unidentified());
    assertTrue(found.correlations().get(0).get(1) < -0.99);
  }

  @Test
  void withoutDataThePriorsComeBack() {
    List<FreeParameter> parameters =
        List.of(
            FreeParameter.of(ParameterId.REPRODUCTION_WORKER),
            FreeParameter.of(ParameterId.INVASION_WORKER),
            FreeParameter.of(ParameterId.COUNT_RECOVERY_ROLL));
    FitResult found = fit(parameters, FitSettings.usual(1), p -> 0);
    assertArrayEquals(new double[] {1, 0.56, 0.9}, found.values(), 2e-3);
    assertEquals(0.56 * StrictMath.exp(-1.96 * 0.35), found.parameters().get(1).low(), 0.005);
    assertEquals(0.56 * StrictMath.exp(1.96 * 0.35), found.parameters().get(1).high(), 0.02);
    assertTrue(found.unidentified().contains("invasion.worker"));
    assertTrue(found.unidentified().contains("reproduction.worker"));
  }

  @Test
  void anEvolutionStrategyLeavesLocalHills() {
    ToDoubleFunction<double[]> rough =
        p -> {
          double sum = 0;
          for (double x : p) {
            sum -= 3 * (x - 1.5) * (x - 1.5) + 10 * (1 - StrictMath.cos(6 * (x - 1.5)));
          }
          return sum;
        };
    FitSettings global = new FitSettings(5, 3, 6000, FitSettings.Search.GLOBAL);
    FitResult found = fit(List.of(X, Y, Z), global, rough);
    assertArrayEquals(new double[] {1.5, 1.5, 1.5}, found.values(), 1e-3);
    FitResult again = fit(List.of(X, Y, Z), global, rough);
    assertArrayEquals(found.values(), again.values(), 0);
  }

  @Test
  void aSearchCutOffSaysSo() {
    List<FreeParameter> many =
        IntStream.range(0, 8)
            .mapToObj(i -> FreeParameter.of("p" + i, Prior.uniform(-5, 5)))
            .toList();
    ToDoubleFunction<double[]> valley =
        p -> {
          double sum = 0;
          for (int i = 1; i < p.length; i++) {
            double bend = p[i] - p[i - 1] * p[i - 1];
            sum -= 100 * bend * bend + (1 - p[i - 1]) * (1 - p[i - 1]);
          }
          return sum;
        };
    for (FitSettings.Search kind : FitSettings.Search.values()) {
      FitSettings few = new FitSettings(1, 1, 60, kind);
      assertTrue(fit(many, few, valley).exhausted(), kind.name());
    }
    FitSettings enough = new FitSettings(1, 1, 20_000, FitSettings.Search.LOCAL);
    assertFalse(fit(many.subList(0, 3), enough, valley).exhausted());
  }

  @Test
  void aBestValueAtTheBoundIsOpenThere() {
    FitResult found = fit(List.of(X, Y), FitSettings.usual(1), p -> p[0] - p[1] * p[1]);
    assertEquals(5, found.parameter("x").value(), 1e-3);
    assertTrue(found.parameter("x").openAbove());
    assertFalse(found.parameter("x").openBelow());
    assertEquals(5 - 1.92, found.parameter("x").low(), 0.03);
  }

  @Test
  void impossibleDataAreReported() {
    assertThrows(
        FitException.class,
        () -> fit(List.of(X, Y), FitSettings.usual(1), p -> Double.NEGATIVE_INFINITY));
    assertThrows(
        FitException.class, () -> fit(List.of(X, Y), FitSettings.usual(1), p -> Double.NaN));
  }

  @Test
  void wrongUseIsRefused() {
    LogLikelihood flat = points -> new double[points.length];
    assertThrows(IllegalArgumentException.class, () -> LikelihoodFit.of(List.of(), flat));
    assertThrows(IllegalArgumentException.class, () -> LikelihoodFit.of(List.of(X, X), flat));
    assertThrows(
        IllegalArgumentException.class, () -> new FitSettings(1, 0, 100, FitSettings.Search.LOCAL));
    assertThrows(IllegalArgumentException.class, () -> FreeParameter.flatInLogarithm("x", 0, 1));
  }
}
