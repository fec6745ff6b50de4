package org.undercap.monitoring;

import java.util.Arrays;
import java.util.Set;
import org.undercap.internal.ShiftedSobol;
import org.undercap.parameter.Draw;
import org.undercap.parameter.ParameterId;

/**
 * What is not known beside the number of mites, drawn many times: one row a draw. The shares found
 * by a method are the same for all counts made by it.
 */
final class Unknowns {
  private static final double MIDDLE = 0.5;
  private static final int BEES = 0;
  private static final int BROOD = 1;
  private static final int STRENGTH = 2;
  private static final int WASH = 3;
  private static final int ROLL = 4;
  private static final int BOARD = 5;
  private static final int DIMENSIONS = 6;

  private final CountedColony colony;
  private final double[][] points;
  private final double[][] values;

  private Unknowns(CountedColony colony, double[][] points, double[][] values) {
    this.colony = colony;
    this.points = points;
    this.values = values;
  }

  /** Draws all of them, except those of the fixed sources, which keep their middle values. */
  static Unknowns draw(CountedColony colony, int rows, long seed, Set<WidthSource> fixed) {
    double[][] points = ShiftedSobol.points(rows, DIMENSIONS, seed);
    fix(points, fixed, WidthSource.BEES, BEES);
    fix(points, fixed, WidthSource.BROOD, BROOD);
    fix(points, fixed, WidthSource.TREATMENT, STRENGTH);
    fix(points, fixed, WidthSource.METHOD, WASH, ROLL, BOARD);
    return new Unknowns(colony, points, new double[DIMENSIONS][]);
  }

  private static void fix(
      double[][] points, Set<WidthSource> fixed, WidthSource source, int... columns) {
    if (fixed.contains(source)) {
      for (double[] point : points) {
        for (int column : columns) {
          point[column] = MIDDLE;
        }
      }
    }
  }

  /** One of them in all rows; drawn when it is first asked for, since few counts need all. */
  private double[] column(int column) {
    if (values[column] == null) {
      values[column] =
          switch (column) {
            case BEES -> draw(ParameterId.COLONY_SIZE, column, colony.bees());
            case BROOD -> draw(ParameterId.COLONY_SIZE, column, colony.broodCells());
            case STRENGTH -> draw(ParameterId.TREATMENT_STRENGTH, column, 1);
            case WASH -> draw(ParameterId.COUNT_RECOVERY_WASH, column, 1);
            case ROLL -> draw(ParameterId.COUNT_RECOVERY_ROLL, column, 1);
            default -> draw(ParameterId.COUNT_CAPTURE_BOARD, column, 1);
          };
    }
    return values[column];
  }

  private double[] draw(ParameterId id, int column, double unit) {
    Draw around = Draw.of(id, colony.parameters());
    double[] drawn = new double[points.length];
    for (int row = 0; row < drawn.length; row++) {
      drawn[row] = unit * around.at(points[row][column]);
    }
    return drawn;
  }

  /** Colonies of known bees and brood, with treatments of equal strength; methods as drawn here. */
  Unknowns ofColonies(double[] bees, double[] brood, double strength) {
    double[][] known = values.clone();
    known[BEES] = bees.clone();
    known[BROOD] = brood.clone();
    known[STRENGTH] = new double[bees.length];
    Arrays.fill(known[STRENGTH], strength);
    return new Unknowns(colony, points, known);
  }

  /** Number of colonies for one number of mites. */
  int rows() {
    return column(BEES).length;
  }

  /** Adult workers on the day of the estimate (bees). */
  double bees(int row) {
    return column(BEES)[row];
  }

  /** Brood on the day of the estimate (cells). */
  double brood(int row) {
    return column(BROOD)[row];
  }

  /** Strength of treatments (ratio of the hazard). */
  double strength(int row) {
    return column(STRENGTH)[row];
  }

  /** Share of what is there that a count finds (fraction), by draw of the methods. */
  double detection(Count count, int draw) {
    if (count instanceof Wash wash) {
      return column(wash.method() == WashMethod.SUGAR ? ROLL : WASH)[draw];
    }
    return count instanceof Board ? column(BOARD)[draw] : 1;
  }
}
