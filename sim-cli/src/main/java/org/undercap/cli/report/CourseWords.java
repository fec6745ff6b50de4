package org.undercap.cli.report;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.undercap.cli.output.Numbers;
import org.undercap.comparison.CourseEfficacy;
import org.undercap.treatment.Method;
import org.undercap.treatment.PlanStep;

/**
 * How a course of treatments meets the mites under the cappings, in a sentence: not at all, as they
 * come out with the young bees, or even there.
 */
final class CourseWords {
  /** With less of the mites in cells there is as good as no brood in their way (fraction). */
  static final double FEW = 0.1;

  private final CourseEfficacy course;
  private final long sealedDays;
  private final String name;
  private final boolean several;

  /**
   * Words for a course.
   *
   * @param course the course
   * @param sealedDays days for which worker cells stay sealed (days)
   */
  CourseWords(CourseEfficacy course, long sealedDays) {
    this.course = course;
    this.sealedDays = sealedDays;
    name = course.name();
    several = name.endsWith("s") || methods().size() > 1;
  }

  /**
   * The sentence.
   *
   * @param inCells share of the mites under the cappings when the course begins (fraction)
   * @param told whether that share was told already, rather than the day and the share
   */
  String sentence(double inCells, boolean told) {
    if (inCells < FEW) {
      String meets = name + verb(" meets", " meet") + " nearly all mites.";
      return told
          ? capital(meets)
          : "On " + DateWords.day(course.from()) + " hardly any sit there, so " + meets;
    }
    if (methods().stream().anyMatch(m -> m.profile().reachesSealedBrood())) {
      return capital(name)
          + verb(" reaches", " reach")
          + " mites there too, though fewer of them than on the bees.";
    }
    return methods().stream().anyMatch(m -> m.profile().slowRelease())
        ? slow()
        : doses(inCells, told);
  }

  private String slow() {
    long days = ChronoUnit.DAYS.between(course.from(), course.until()) + 1;
    return capital(name)
        + verb(" does", " do")
        + " not reach them there, but "
        + verb("acts", "act")
        + " for "
        + days(days)
        + (days < sealedDays ? " only, too short a time" : ", long enough")
        + " to meet "
        + (days < sealedDays ? "all of them" : "them")
        + " as they come out with the young bees"
        + sealed();
  }

  private String doses(double inCells, boolean told) {
    if (course.applications().size() == 1) {
      String first = told ? capital(name) : "On " + DateWords.day(course.from()) + " " + name;
      return first
          + verb(" kills", " kill")
          + " mites on the bees only; the "
          + Numbers.percent(inCells)
          + " that sit under the cappings then are spared.";
    }
    LocalDate last = course.applications().get(course.applications().size() - 1).date();
    long days = ChronoUnit.DAYS.between(course.from(), last);
    return "Each dose of "
        + name
        + " kills mites on the bees only; "
        + PlanWords.number(course.applications().size())
        + " doses over "
        + days(days)
        + (days < sealedDays
            ? " miss many of the others, which come out with the young bees later"
            : " also meet most of the others, as they come out with the young bees")
        + sealed();
  }

  private String sealed() {
    return " (worker cells stay sealed for " + days(sealedDays) + ").";
  }

  private static String days(long days) {
    return days + (days == 1 ? " day" : " days");
  }

  private List<Method> methods() {
    return course.applications().stream().map(PlanStep.Application::method).distinct().toList();
  }

  private String verb(String one, String many) {
    return several ? many : one;
  }

  private static String capital(String text) {
    return PlanWords.capital(text);
  }
}
