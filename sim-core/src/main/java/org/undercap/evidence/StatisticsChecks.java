package org.undercap.evidence;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.undercap.calibration.LeastSquaresFit;
import org.undercap.calibration.LeastSquaresResult;
import org.undercap.calibration.VectorModel;
import org.undercap.internal.CsvResource;
import org.undercap.internal.CsvRow;
import org.undercap.sensitivity.SobolIndices;

/** The tools of sensitivity analysis and of fitting, on cases with known answers. */
final class StatisticsChecks {
  private static final int ROWS = 1 << 14;
  private static final long SEED = 1;

  private StatisticsChecks() {}

  static Map<String, Consumer<Findings>> all() {
    return Map.of(
        "ishigami", StatisticsChecks::ishigami,
        "nist-misra1a",
            findings ->
                fit(findings, "misra1a", StatisticsChecks::misra1a, new String[] {"b1", "b2"}),
        "nist-thurber",
            findings ->
                fit(
                    findings,
                    "thurber",
                    StatisticsChecks::thurber,
                    new String[] {"b1", "b2", "b3", "b4", "b5", "b6", "b7"}));
  }

  private static void ishigami(Findings findings) {
    SobolIndices found =
        SobolIndices.estimate(
            3,
            ROWS,
            SEED,
            points -> Arrays.stream(points).mapToDouble(StatisticsChecks::ishigami).toArray());
    for (int i = 0; i < 3; i++) {
      findings.judge("S" + (i + 1), found.first().get(i).value());
    }
    for (int i = 0; i < 3; i++) {
      findings.judge("ST" + (i + 1), found.total().get(i).value());
    }
  }

  /** {@code sin x1 + 7 sin^2 x2 + 0.1 x3^4 sin x1}, each x from -pi to pi. */
  private static double ishigami(double[] u) {
    double x1 = angle(u[0]);
    double sin2 = StrictMath.sin(angle(u[1]));
    double x3 = angle(u[2]);
    return StrictMath.sin(x1) * (1 + 0.1 * x3 * x3 * x3 * x3) + 7 * sin2 * sin2;
  }

  private static double angle(double u) {
    return StrictMath.PI * (2 * u - 1);
  }

  /** A curve of a data set. */
  private interface Curve {
    double at(double x, double[] b);
  }

  private static double misra1a(double x, double[] b) {
    return b[0] * -StrictMath.expm1(-b[1] * x);
  }

  private static double thurber(double x, double[] b) {
    return (b[0] + x * (b[1] + x * (b[2] + x * b[3]))) / (1 + x * (b[4] + x * (b[5] + x * b[6])));
  }

  private static void fit(Findings findings, String name, Curve curve, String[] parameters) {
    List<CsvRow> rows = CsvResource.read(StatisticsChecks.class, "nist-" + name + ".csv");
    double[] x = rows.stream().mapToDouble(row -> row.number("x")).toArray();
    double[] y = rows.stream().mapToDouble(row -> row.number("y")).toArray();
    VectorModel model = b -> Arrays.stream(x).map(at -> curve.at(at, b)).toArray();
    double[] starts =
        SetUps.numbers(name + ".starts").stream().mapToDouble(Double::doubleValue).toArray();
    int n = parameters.length;
    LeastSquaresFit fit = LeastSquaresFit.of(model, y);
    LeastSquaresResult first = fit.from(Arrays.copyOf(starts, n));
    LeastSquaresResult second = fit.from(Arrays.copyOfRange(starts, n, 2 * n));
    double apart = 0;
    for (int i = 0; i < n; i++) {
      double value = first.values().get(i);
      findings.judge(parameters[i], value);
      apart = Math.max(apart, Math.abs(second.values().get(i) / value - 1));
    }
    findings.require("the other start ends at the same values to 6 digits", apart < 5e-7);
  }
}
