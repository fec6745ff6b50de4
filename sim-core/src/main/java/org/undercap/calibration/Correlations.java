package org.undercap.calibration;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.RealMatrix;

/** Correlations of estimates. */
final class Correlations {
  private Correlations() {}

  /** Rows of correlations from a covariance matrix with a positive diagonal. */
  static List<List<Double>> of(RealMatrix covariance) {
    List<List<Double>> rows = new ArrayList<>();
    for (int i = 0; i < covariance.getRowDimension(); i++) {
      List<Double> row = new ArrayList<>();
      for (int j = 0; j < covariance.getColumnDimension(); j++) {
        double size = StrictMath.sqrt(covariance.getEntry(i, i) * covariance.getEntry(j, j));
        row.add(i == j ? 1 : Math.max(-1, Math.min(1, covariance.getEntry(i, j) / size)));
      }
      rows.add(List.copyOf(row));
    }
    return List.copyOf(rows);
  }
}
