package org.undercap.treatment;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.undercap.internal.Checks;

/**
 * How a method is usually used.
 *
 * @param course one usual course
 * @param withBrood the course while there is sealed brood, which is longer where users repeat what
 *     does not reach mites under the cappings
 * @param coursesInSeason most courses in one season
 */
public record UsualUse(Course course, Course withBrood, int coursesInSeason) {
  /** A single application, as often as wanted. */
  public static final UsualUse ONCE =
      new UsualUse(new Course(1, 0), new Course(1, 0), Integer.MAX_VALUE);

  /**
   * Checks the number.
   *
   * @param course one usual course
   * @param withBrood the course while there is sealed brood
   * @param coursesInSeason at least 1
   * @throws IllegalArgumentException if the number is out of range
   */
  public UsualUse {
    Checks.positive(coursesInSeason, "courses in one season");
  }

  /**
   * The courses that differ.
   *
   * @return one or two
   */
  public List<Course> courses() {
    return Stream.of(course, withBrood).distinct().toList();
  }

  /**
   * The usual courses in words, as in {@code 2 times 14 days apart}.
   *
   * @return words
   */
  public String words() {
    return courses().stream().map(Course::words).distinct().collect(Collectors.joining(" or "));
  }
}
