package org.undercap.cli.chart;

import java.util.List;

/** Upper ends of the two axes, so that charts that are compared share them. */
public record AxisTops(double mites, double bees) {

  /**
   * Checks the values.
   *
   * @param mites largest number of mites to show (mites), finite and at least 0
   * @param bees largest number of bees or brood cells to show, finite and at least 0
   * @throws IllegalArgumentException if a value is outside its range
   */
  public AxisTops {
    if (!(mites >= 0 && mites < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("mites " + mites + " must be finite and at least 0");
    }
    if (!(bees >= 0 && bees < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("bees " + bees + " must be finite and at least 0");
    }
  }

  /**
   * The smallest tops that hold the lines of several mite curves.
   *
   * @param courses the courses to be compared
   * @return largest mites on bees or in cells, and largest bees or brood
   */
  public static AxisTops covering(List<Course> courses) {
    double mites = 0;
    double bees = 0;
    for (Course course : courses) {
      mites = Math.max(mites, Curves.largest(course.shown(course.mitesOnBees())));
      mites = Math.max(mites, Curves.largest(course.shown(course.mitesInCells())));
      bees = Math.max(bees, Curves.largest(course.shown(course.adults())));
      bees = Math.max(bees, Curves.largest(course.shown(course.brood())));
    }
    return new AxisTops(mites, bees);
  }
}
