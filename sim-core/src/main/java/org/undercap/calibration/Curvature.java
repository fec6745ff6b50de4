package org.undercap.calibration;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * The second derivatives of a misfit around its best point, by central differences with steps wide
 * enough to change it by about 0.2.
 *
 * <p>Where the misfit is flatter than 12, along a direction that the data say nothing about, 12
 * stands instead: the estimate is then as uncertain as a uniform draw from the whole range
 * (variance 1/12).
 */
final class Curvature {
  private static final double FIRST_STEP = 0.01;
  private static final double SMALLEST_STEP = 1e-6;
  private static final double WIDEST_STEP = 0.1;
  private static final double WANTED_RISE = 0.2;
  private static final double LEAST_RISE = 0.05;
  private static final double MOST_RISE = 0.8;
  private static final int ROUNDS = 8;
  private static final double FLATTEST = 12;

  private final double[] steps;
  private final RealMatrix hessian;
  private final RealMatrix covariance;

  private Curvature(double[] steps, RealMatrix raw) {
    this.steps = steps;
    EigenDecomposition eigen = new EigenDecomposition(raw);
    int n = steps.length;
    RealMatrix up = new Array2DRowRealMatrix(n, n);
    RealMatrix down = new Array2DRowRealMatrix(n, n);
    for (int k = 0; k < n; k++) {
      double value = Math.max(FLATTEST, eigen.getRealEigenvalue(k));
      ArrayRealVector v = new ArrayRealVector(eigen.getEigenvector(k));
      RealMatrix square = v.outerProduct(v);
      up = up.add(square.scalarMultiply(value));
      down = down.add(square.scalarMultiply(1 / value));
    }
    hessian = up;
    covariance = down;
  }

  static Curvature of(Misfit misfit, double[] point) {
    double[] steps = steps(misfit, point);
    double[] centre = point.clone();
    for (int i = 0; i < centre.length; i++) {
      centre[i] = Math.max(steps[i], Math.min(1 - steps[i], centre[i]));
    }
    return new Curvature(steps, derivatives(misfit, centre, steps));
  }

  /** Steps that change the misfit by a fair amount. */
  private static double[] steps(Misfit misfit, double[] point) {
    int n = point.length;
    double[] steps = new double[n];
    Arrays.fill(steps, FIRST_STEP);
    for (int round = 0; round < ROUNDS; round++) {
      double[][] probes = new double[2 * n + 1][];
      for (int i = 0; i < n; i++) {
        double middle = Math.max(steps[i], Math.min(1 - steps[i], point[i]));
        probes[2 * i] = with(point, i, middle - steps[i]);
        probes[2 * i + 1] = with(point, i, middle + steps[i]);
      }
      probes[2 * n] = point.clone();
      double[] f = misfit.at(probes);
      boolean good = true;
      for (int i = 0; i < n; i++) {
        double rise = Math.max(f[2 * i], f[2 * i + 1]) - f[2 * n];
        double wanted = steps[i];
        if (!(rise >= LEAST_RISE)) {
          wanted *= rise > 0 ? Math.min(4, StrictMath.sqrt(WANTED_RISE / rise)) : 4;
        } else if (rise > MOST_RISE) {
          wanted *= Math.max(0.01, StrictMath.sqrt(WANTED_RISE / rise));
        }
        wanted = Math.max(SMALLEST_STEP, Math.min(WIDEST_STEP, wanted));
        good &= wanted == steps[i];
        steps[i] = wanted;
      }
      if (good) {
        break;
      }
    }
    return steps;
  }

  private static RealMatrix derivatives(Misfit misfit, double[] c, double[] h) {
    int n = c.length;
    double[][] probes = new double[1 + 2 * n + 2 * n * (n - 1)][];
    int next = 0;
    probes[next++] = c.clone();
    for (int i = 0; i < n; i++) {
      probes[next++] = with(c, i, c[i] + h[i]);
      probes[next++] = with(c, i, c[i] - h[i]);
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < i; j++) {
        for (int corner = 0; corner < 4; corner++) {
          double up = corner < 2 ? h[i] : -h[i];
          double side = corner % 2 == 0 ? h[j] : -h[j];
          probes[next++] = with(with(c, i, c[i] + up), j, c[j] + side);
        }
      }
    }
    double[] f = misfit.at(probes);
    RealMatrix d = new Array2DRowRealMatrix(n, n);
    for (int i = 0; i < n; i++) {
      d.setEntry(i, i, (f[1 + 2 * i] + f[2 + 2 * i] - 2 * f[0]) / (h[i] * h[i]));
    }
    int at = 1 + 2 * n;
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < i; j++) {
        double mixed = (f[at] - f[at + 1] - f[at + 2] + f[at + 3]) / (4 * h[i] * h[j]);
        d.setEntry(i, j, mixed);
        d.setEntry(j, i, mixed);
        at += 4;
      }
    }
    return d;
  }

  private static double[] with(double[] point, int i, double value) {
    double[] changed = point.clone();
    changed[i] = value;
    return changed;
  }

  double step(int i) {
    return steps[i];
  }

  RealMatrix covariance() {
    return covariance;
  }

  double deviation(int i) {
    return StrictMath.sqrt(covariance.getEntry(i, i));
  }

  /** The second derivatives of some coordinates, inverted. */
  RealMatrix inverseOf(int[] coordinates) {
    return MatrixUtils.inverse(hessian.getSubMatrix(coordinates, coordinates));
  }
}
