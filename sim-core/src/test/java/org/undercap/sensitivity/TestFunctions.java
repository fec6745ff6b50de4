package org.undercap.sensitivity;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;

/** Functions whose indices are known. */
final class TestFunctions {
  private TestFunctions() {}

  static UnitCubeFunction each(ToDoubleFunction<double[]> f) {
    return points -> Arrays.stream(points).mapToDouble(f).toArray();
  }

  /** sin x1 + 7 sin^2 x2 + 0.1 x3^4 sin x1 with x uniform in -pi to pi. */
  static UnitCubeFunction ishigami() {
    return each(
        u -> {
          double x1 = angle(u[0]);
          double x2 = angle(u[1]);
          double x3 = angle(u[2]);
          return StrictMath.sin(x1)
              + 7 * StrictMath.sin(x2) * StrictMath.sin(x2)
              + 0.1 * x3 * x3 * x3 * x3 * StrictMath.sin(x1);
        });
  }

  /** Product of (|4 u - 2| + a) / (1 + a). */
  static UnitCubeFunction productOfTents(double... a) {
    return each(
        u -> {
          double product = 1;
          for (int i = 0; i < a.length; i++) {
            product *= (Math.abs(4 * u[i] - 2) + a[i]) / (1 + a[i]);
          }
          return product;
        });
  }

  private static double angle(double u) {
    return StrictMath.PI * (2 * u - 1);
  }
}
