package org.undercap.model;

/**
 * Daily cohorts of one kind of brood, or of the mites in it, for many colonies: row 0 is the
 * youngest cohort, each row has one value a colony. Ageing by a day moves no numbers: the rows are
 * renamed.
 */
public final class Cohorts {
  private final double[][] rows;
  private int youngest;

  Cohorts(int ages, int lanes) {
    rows = new double[ages][lanes];
  }

  /**
   * Number of daily cohorts.
   *
   * @return number of cohorts (days)
   */
  public int ages() {
    return rows.length;
  }

  /**
   * One cohort, one value a colony. The array is live; only the model writes to it.
   *
   * @param age age (days), 0 is the youngest
   * @return the cohort (cells or mites)
   */
  public double[] row(int age) {
    int i = youngest + age;
    return rows[i < rows.length ? i : i - rows.length];
  }

  double[] oldest() {
    return row(rows.length - 1);
  }

  /**
   * Lets a day pass: the row of the oldest cohort becomes that of the youngest, to be written anew.
   */
  double[] age() {
    youngest = youngest == 0 ? rows.length - 1 : youngest - 1;
    return rows[youngest];
  }

  /**
   * Adds all cohorts to a sum, one value a colony; up to four rows at a time, which saves traffic.
   */
  void addTo(double[] sum) {
    int age = rows.length % 2;
    if (age == 1) {
      double[] row = row(0);
      for (int lane = 0; lane < sum.length; lane++) {
        sum[lane] += row[lane];
      }
    }
    for (; age + 4 <= rows.length; age += 4) {
      addTo(sum, row(age), row(age + 1), row(age + 2), row(age + 3));
    }
    if (age < rows.length) {
      double[] row = row(age);
      double[] next = row(age + 1);
      for (int lane = 0; lane < sum.length; lane++) {
        sum[lane] += row[lane] + next[lane];
      }
    }
  }

  private static void addTo(double[] sum, double[] a, double[] b, double[] c, double[] d) {
    for (int lane = 0; lane < sum.length; lane++) {
      sum[lane] = sum[lane] + (a[lane] + b[lane]) + (c[lane] + d[lane]);
    }
  }

  void scale(double[] factor) {
    for (double[] row : rows) {
      for (int lane = 0; lane < factor.length; lane++) {
        row[lane] *= factor[lane];
      }
    }
  }

  void scaleLane(int lane, double factor) {
    for (double[] row : rows) {
      row[lane] *= factor;
    }
  }

  void clearLane(int lane) {
    for (double[] row : rows) {
      row[lane] = 0;
    }
  }

  /**
   * All cohorts of one colony together.
   *
   * @param lane the colony
   * @return sum over the ages (cells or mites)
   */
  public double total(int lane) {
    double sum = 0;
    for (int age = 0; age < rows.length; age++) {
      sum += row(age)[lane];
    }
    return sum;
  }

  void copyLane(Cohorts from, int fromLane, int lane) {
    for (int age = 0; age < rows.length; age++) {
      row(age)[lane] = from.row(age)[fromLane];
    }
  }

  void set(int lane, double[] youngestFirst) {
    if (youngestFirst.length != rows.length) {
      throw new IllegalArgumentException(
          youngestFirst.length + " cohorts given, " + rows.length + " expected");
    }
    for (int age = 0; age < rows.length; age++) {
      row(age)[lane] = youngestFirst[age];
    }
  }
}
