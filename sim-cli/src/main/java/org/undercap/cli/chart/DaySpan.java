package org.undercap.cli.chart;

import java.time.LocalDate;
import java.util.Collection;

/**
 * Where the days lie across the page.
 *
 * @param first first day shown
 * @param last last day shown
 * @param left where the first day lies (points)
 * @param width distance of first and last day (points)
 */
record DaySpan(LocalDate first, LocalDate last, double left, double width) {

  /** The span of several courses. */
  static DaySpan of(Collection<Course> courses, double left, double width) {
    LocalDate first = courses.stream().map(Course::start).min(LocalDate::compareTo).orElseThrow();
    LocalDate last = courses.stream().map(Course::end).max(LocalDate::compareTo).orElseThrow();
    return new DaySpan(first, last, left, width);
  }

  /** The same days somewhere else across the page. */
  DaySpan movedTo(double newLeft) {
    return new DaySpan(first, last, newLeft, width);
  }

  /** Length of the axis (days), at least 1. */
  long days() {
    return Math.max(1, last.toEpochDay() - first.toEpochDay());
  }

  /** Place of a day, counted from 1 January 1970 (points). */
  double x(double epochDay) {
    return left + (epochDay - first.toEpochDay()) * width / days();
  }

  /** Place of a date, moved to the nearer end if it is not shown (points). */
  double xInside(LocalDate date) {
    return Math.min(Math.max(x((double) date.toEpochDay()), left), left + width);
  }

  /** Whether any day of a mark is shown. */
  boolean shows(Mark mark) {
    return !mark.until().isBefore(first) && !mark.from().isAfter(last);
  }
}
