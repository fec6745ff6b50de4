package org.undercap.cli.chart;

import java.util.List;

/** One panel of a comparison: the course of a plan and what was done in it. */
public record PlanCourse(Course course, List<Mark> marks) {

  /**
   * Copies the marks.
   *
   * @param course daily values
   * @param marks treatments and measures of the plan, in any order
   */
  public PlanCourse {
    marks = List.copyOf(marks);
  }
}
