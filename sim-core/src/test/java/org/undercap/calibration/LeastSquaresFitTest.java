package org.undercap.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercap.evidence.Evidence;
import org.undercap.internal.CsvResource;
import org.undercap.internal.CsvRow;

/** Reference data sets of nonlinear regression with certified values (source key nist-strd). */
class LeastSquaresFitTest {
  private static final double[] MISRA1A = {238.94212918, 5.5015643181e-4};
  private static final double[] THURBER = {
    1288.1396800,
    1491.0792535,
    583.23836877,
    75.416644291,
    0.96629502864,
    0.39797285797,
    0.049727297349
  };

  @ParameterizedTest
  @ValueSource(strings = {"500 0.0001", "250 0.0005"})
  void misra1aToSixDigits(String start) {
    Data data = new Data("nist-misra1a.csv");
    LeastSquaresResult found =
        LeastSquaresFit.of(b -> data.at(x -> b[0] * -StrictMath.expm1(-b[1] * x)), data.observed())
            .from(numbers(start));
    assertDigits(6, MISRA1A, found.values());
    assertDigits(6, new double[] {2.7070075241, 7.2668688436e-6}, found.standardDeviations());
    assertEquals(1, found.residualSumOfSquares() / 1.2455138894e-1, 1e-6);
    assertEquals(1, found.residualDeviation() / 1.0187876330e-1, 1e-6);
    assertTrue(found.correlations().get(0).get(1) < -0.99);
    assertEquals(1, found.correlations().get(1).get(1));
  }

  @ParameterizedTest
  @ValueSource(strings = {"1000 1000 400 40 0.7 0.3 0.03", "1300 1500 500 75 1 0.4 0.05"})
  void thurberToFourDigits(String start) {
    Data data = new Data("nist-thurber.csv");
    LeastSquaresResult found =
        LeastSquaresFit.of(
                b ->
                    data.at(
                        x ->
                            (b[0] + x * (b[1] + x * (b[2] + x * b[3])))
                                / (1 + x * (b[4] + x * (b[5] + x * b[6])))),
                data.observed())
            .from(numbers(start));
    assertDigits(4, THURBER, found.values());
    assertEquals(1, found.residualSumOfSquares() / 5.6427082397e3, 1e-6);
    assertEquals(1, found.standardDeviations().get(6) / 6.5842344623e-3, 1e-4);
  }

  @Test
  void aHeavyWeightPullsTheMean() {
    LeastSquaresResult found =
        LeastSquaresFit.of(
                b -> new double[] {b[0], b[0]}, new double[] {0, 10}, new double[] {1, 4})
            .from(new double[] {3});
    assertEquals(8, found.values().get(0), 1e-9);
  }

  @Test
  void theBestOfSeveralStartsIsTaken() {
    VectorModel wave = b -> new double[] {StrictMath.cos(b[0]) + b[0] / 10, b[0] / 20};
    LeastSquaresFit fit = LeastSquaresFit.of(wave, new double[] {-1.942, -0.471});
    double alone = fit.from(new double[] {3}).residualSumOfSquares();
    double several = fit.from(new double[] {3}, new double[] {-9}).residualSumOfSquares();
    assertTrue(several < alone);
    assertEquals(0, several, 1e-6);
  }

  @Test
  void parametersThatCannotBeToldApartAreReported() {
    LeastSquaresFit fit =
        LeastSquaresFit.of(
            b -> new double[] {b[0] + b[1], b[0] + b[1], b[0] + b[1]}, new double[] {1, 2, 3});
    FitException e = assertThrows(FitException.class, () -> fit.from(new double[] {1, 1}));
    assertTrue(e.getMessage().contains("fewer parameters"), e.getMessage());
  }

  @Test
  void wrongUseIsRefused() {
    VectorModel model = b -> new double[] {b[0]};
    assertThrows(
        IllegalArgumentException.class,
        () -> LeastSquaresFit.of(model, new double[] {1}, new double[] {0}));
    assertThrows(
        IllegalArgumentException.class, () -> LeastSquaresFit.of(model, new double[] {1}).from());
    assertThrows(
        IllegalArgumentException.class,
        () -> LeastSquaresFit.of(model, new double[] {1}).from(new double[] {1, 2}));
  }

  private static void assertDigits(int digits, double[] certified, List<Double> found) {
    for (int i = 0; i < certified.length; i++) {
      assertEquals(1, found.get(i) / certified[i], StrictMath.pow(10, -digits) / 2, "value " + i);
    }
  }

  private static double[] numbers(String text) {
    return Arrays.stream(text.split(" ")).mapToDouble(Double::parseDouble).toArray();
  }

  private record Data(List<CsvRow> rows) {
    Data(String file) {
      this(CsvResource.read(Evidence.class, file));
    }

    double[] observed() {
      return rows.stream().mapToDouble(row -> row.number("y")).toArray();
    }

    double[] at(DoubleUnaryOperator curve) {
      return rows.stream().mapToDouble(row -> curve.applyAsDouble(row.number("x"))).toArray();
    }
  }
}
