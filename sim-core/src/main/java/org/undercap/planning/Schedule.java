package org.undercap.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.undercap.scenario.Plan;
import org.undercap.treatment.PlanStep;

/**
 * Some courses of treatment in one season.
 *
 * @param courses the courses in the order of their dates
 */
public record Schedule(List<CourseStart> courses) {
  /** No treatment. */
  public static final Schedule NOTHING = new Schedule(List.of());

  /**
   * Sorts the courses.
   *
   * @param courses the courses
   */
  public Schedule {
    courses = courses.stream().sorted(CourseStart.ORDER).toList();
  }

  /** This schedule with one more course. */
  Schedule with(CourseStart more) {
    List<CourseStart> all = new ArrayList<>(courses);
    all.add(more);
    return new Schedule(all);
  }

  /**
   * All applications.
   *
   * @return in the order of the courses
   */
  public List<PlanStep> steps() {
    return courses.stream().flatMap(course -> course.steps().stream()).toList();
  }

  /**
   * The schedule as a plan, named by its courses.
   *
   * @return the plan; that of doing nothing if there is no course
   */
  public Plan plan() {
    return courses.isEmpty()
        ? Plan.doNothing()
        : new Plan(
            courses.stream().map(CourseStart::words).collect(Collectors.joining("; ")), steps());
  }

  /**
   * Keeper's time for one colony.
   *
   * @return all applications together (minutes)
   */
  public double minutes() {
    return courses.stream().mapToDouble(CourseStart::minutes).sum();
  }

  /**
   * Cost for one colony.
   *
   * @param costs cost of one application by id of the method (in the user's money)
   * @return all applications together (in the user's money); empty if a cost is not known
   */
  public OptionalDouble cost(Map<String, Double> costs) {
    boolean known = courses.stream().allMatch(c -> costs.containsKey(c.method().id()));
    return known
        ? OptionalDouble.of(
            courses.stream()
                .mapToDouble(c -> c.course().times() * costs.get(c.method().id()))
                .sum())
        : OptionalDouble.empty();
  }
}
