package org.undercap.planning;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.undercap.treatment.Course;
import org.undercap.treatment.Method;
import org.undercap.treatment.PlanStep;

/**
 * A course of a method that begins on a date.
 *
 * @param method the treatment
 * @param course how often it is applied
 * @param date day of the first application
 */
public record CourseStart(Method method, Course course, LocalDate date) {
  /** By date, then by name. */
  static final Comparator<CourseStart> ORDER =
      Comparator.comparing(CourseStart::date)
          .thenComparing(start -> start.method().id())
          .thenComparing(start -> start.course().times());

  /**
   * The applications.
   *
   * @return in the order of their dates
   */
  public List<PlanStep> steps() {
    return course.of(method, date);
  }

  /**
   * What and when in words.
   *
   * @return as in {@code thymol gel, 2 times 14 days apart from 26 Sep}
   */
  public String words() {
    String month = date.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
    String day = date.getDayOfMonth() + " " + month;
    return course.words(method) + (course.times() == 1 ? " on " : " from ") + day;
  }

  /** Keeper's time for all applications (minutes). */
  double minutes() {
    return method.minutes() * course.times();
  }
}
