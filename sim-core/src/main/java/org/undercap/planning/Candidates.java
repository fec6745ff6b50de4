package org.undercap.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.undercap.advice.RuledOut;
import org.undercap.parameter.ParameterId;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.Course;
import org.undercap.treatment.Courses;
import org.undercap.treatment.Method;
import org.undercap.treatment.MethodCatalogue;
import org.undercap.treatment.PlanStep;

/** What a search may propose in a scenario. */
final class Candidates {
  /** Class of what kills no mites worth speaking of and is there for teaching. */
  private static final String NO_CLASS = "none";

  private final Scenario scenario;
  private final RuledOut rules;
  private final double classMost;
  private final int courseGap;
  private final List<CourseStart> single;

  Candidates(Scenario scenario, StartDates dates) {
    this.scenario = scenario;
    rules = new RuledOut(scenario);
    classMost = scenario.parameters().value(ParameterId.PLANNING_CLASS_MOST);
    courseGap = (int) scenario.parameters().value(ParameterId.PLANNING_COURSE_GAP);
    single = new ArrayList<>();
    for (Method method : methods()) {
      for (Course course : method.usual().courses()) {
        for (LocalDate date : dates.all()) {
          CourseStart start = new CourseStart(method, course, date);
          if (isAllowed(new Schedule(List.of(start)))) {
            single.add(start);
          }
        }
      }
    }
  }

  /** The methods on the user's list, or the shipped ones that are meant to work. */
  List<Method> methods() {
    List<Method> known =
        scenario.allowed().isEmpty()
            ? MethodCatalogue.with(scenario.parameters()).all().stream()
                .filter(method -> !method.substanceClass().equals(NO_CLASS))
                .toList()
            : scenario.allowed();
    return known.stream().filter(method -> method.organic() || !scenario.organic()).toList();
  }

  /** Schedules of one course that nothing rules out. */
  List<Schedule> single() {
    return single.stream().map(start -> new Schedule(List.of(start))).toList();
  }

  private boolean isAllowed(Schedule schedule) {
    List<PlanStep> steps = schedule.steps();
    return steps.stream().noneMatch(step -> step.date().isAfter(scenario.end()))
        && Courses.unusual(steps).isEmpty()
        && !Courses.closerThan(steps, courseGap)
        && Courses.coursesOfOneClass(steps) <= classMost
        && rules.reasons(new Plan("", steps)).isEmpty();
  }

  /**
   * Schedules with one more course, those of the first parents first, each once.
   *
   * @param most schedules wanted; one more is given if there are more
   */
  List<Schedule> extended(Collection<Schedule> parents, int most) {
    Set<Schedule> found = new LinkedHashSet<>();
    for (Schedule parent : parents) {
      for (CourseStart more : single) {
        Schedule schedule = parent.with(more);
        if (!found.contains(schedule) && isAllowed(schedule)) {
          found.add(schedule);
          if (found.size() > most) {
            return List.copyOf(found);
          }
        }
      }
    }
    return List.copyOf(found);
  }
}
