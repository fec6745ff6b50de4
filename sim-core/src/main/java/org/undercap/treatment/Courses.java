package org.undercap.treatment;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Which applications of a plan belong together, and how methods are usually repeated. */
public final class Courses {
  /** Courses that begin further apart than this belong to different seasons (days; assumption). */
  private static final int SEASON = 270;

  private Courses() {}

  /**
   * The courses in a schedule: applications of one method that follow each other no slower than the
   * method is usually repeated.
   *
   * @param steps steps of a plan in any order; those that are no applications are left out
   * @return the courses by the ids of their methods, then by date; each in the order of its dates
   */
  public static List<List<PlanStep.Application>> of(List<? extends PlanStep> steps) {
    Map<String, List<PlanStep.Application>> byMethod = new TreeMap<>();
    steps.stream()
        .filter(step -> step instanceof PlanStep.Application)
        .map(step -> (PlanStep.Application) step)
        .sorted(Comparator.comparing(PlanStep.Application::date))
        .forEach(a -> byMethod.computeIfAbsent(a.method().id(), id -> new ArrayList<>()).add(a));
    List<List<PlanStep.Application>> courses = new ArrayList<>();
    byMethod.values().forEach(applications -> courses.addAll(split(applications)));
    return List.copyOf(courses);
  }

  private static List<List<PlanStep.Application>> split(List<PlanStep.Application> sorted) {
    int apart = longestInterval(sorted.get(0).method());
    List<List<PlanStep.Application>> courses = new ArrayList<>();
    LocalDate before = LocalDate.MIN;
    for (PlanStep.Application application : sorted) {
      if (before.equals(LocalDate.MIN) || application.date().isAfter(before.plusDays(apart))) {
        courses.add(new ArrayList<>());
      }
      courses.get(courses.size() - 1).add(application);
      before = application.date();
    }
    return courses;
  }

  private static int longestInterval(Method method) {
    return method.usual().courses().stream().mapToInt(Course::everyDays).max().orElse(0);
  }

  /**
   * Methods that begin again while they still act, are applied more often in a row than is usual,
   * or in more courses than is usual in one season.
   *
   * @param steps steps of a plan
   * @return such methods by id; empty if there are none
   */
  public static List<Method> unusual(List<? extends PlanStep> steps) {
    Map<String, Method> found = new TreeMap<>();
    Map<String, List<PlanStep.Application>> before = new TreeMap<>();
    Map<String, Integer> inSeason = new TreeMap<>();
    for (List<PlanStep.Application> course : of(steps)) {
      Method method = course.get(0).method();
      List<PlanStep.Application> last = before.put(method.id(), course);
      boolean sameSeason = last != null && follows(course, last, SEASON);
      int courses = sameSeason ? inSeason.merge(method.id(), 1, Integer::sum) : 1;
      inSeason.put(method.id(), courses);
      int most = method.usual().courses().stream().mapToInt(Course::times).max().orElse(1);
      if (course.size() > most
          || (last != null && !course.get(0).date().isAfter(last.get(last.size() - 1).until()))
          || courses > method.usual().coursesInSeason()) {
        found.put(method.id(), method);
      }
    }
    return List.copyOf(found.values());
  }

  /** Whether a course begins at most so many days after another did. */
  private static boolean follows(
      List<PlanStep.Application> course, List<PlanStep.Application> before, int days) {
    return !course.get(0).date().isAfter(before.get(0).date().plusDays(days));
  }

  /**
   * Whether two courses act at the same time, or one follows the other too closely.
   *
   * @param steps steps of a plan
   * @param days least days between the end of one course and the begin of the next (days); the
   *     model was not tested for courses that act at the same time
   * @return true if so
   */
  public static boolean closerThan(List<? extends PlanStep> steps, int days) {
    List<List<PlanStep.Application>> courses = new ArrayList<>(of(steps));
    courses.sort(Comparator.comparing(course -> course.get(0).date()));
    for (int i = 1; i < courses.size(); i++) {
      List<PlanStep.Application> before = courses.get(i - 1);
      LocalDate free = before.get(before.size() - 1).until().plusDays(days);
      if (!courses.get(i).get(0).date().isAfter(free)) {
        return true;
      }
    }
    return false;
  }

  /**
   * The largest number of courses with one class of substances.
   *
   * @param steps steps of a plan
   * @return courses of the class that is used most; 0 without applications
   */
  public static int coursesOfOneClass(List<? extends PlanStep> steps) {
    Map<String, Integer> count = new TreeMap<>();
    of(steps).forEach(c -> count.merge(c.get(0).method().substanceClass(), 1, Integer::sum));
    return count.values().stream().mapToInt(Integer::intValue).max().orElse(0);
  }
}
