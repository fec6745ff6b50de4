package org.undercap.monitoring;

/** Numbers of mites that are tried, equally far apart on a logarithmic scale. */
final class MiteGrid {
  /** Fewest mites that are thought possible (mites). */
  static final double FEWEST = 1;

  /** Most mites that are thought possible (mites). */
  static final double MOST = 60_000;

  private static final int POINTS = 96;
  private static final double[] MITES = mites();

  private MiteGrid() {}

  static int points() {
    return POINTS;
  }

  static double mites(int point) {
    return MITES[point];
  }

  private static double[] mites() {
    double[] mites = new double[POINTS];
    double step = StrictMath.log(MOST / FEWEST) / (POINTS - 1);
    for (int i = 0; i < POINTS; i++) {
      mites[i] = FEWEST * StrictMath.exp(i * step);
    }
    return mites;
  }
}
