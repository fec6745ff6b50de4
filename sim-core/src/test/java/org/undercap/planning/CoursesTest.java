package org.undercap.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.undercap.treatment.Courses;
import org.undercap.treatment.PlanStep;

class CoursesTest {
  private static List<PlanStep> course(String method, int day) {
    return Facts.method(method)
        .usual()
        .course()
        .of(Facts.method(method), Facts.START.plusDays(day));
  }

  @SafeVarargs
  private static List<PlanStep> all(List<PlanStep>... courses) {
    List<PlanStep> steps = new ArrayList<>();
    for (List<PlanStep> course : courses) {
      steps.addAll(course);
    }
    return steps;
  }

  @Test
  void aUsualCourseIsOneCourse() {
    List<PlanStep> gel = course("thymol-gel", 0);
    assertEquals(2, gel.size());
    assertEquals(1, Courses.of(gel).size());
    assertEquals(List.of(), Courses.unusual(gel));
    assertFalse(Courses.closerThan(gel, 0));
  }

  @Test
  void measuresAreNoCourses() {
    PlanStep removal = new PlanStep.BroodRemoval(Facts.START, 1);
    assertEquals(List.of(), Courses.of(List.of(removal)));
    assertEquals(0, Courses.coursesOfOneClass(List.of(removal)));
  }

  @Test
  void aSecondCourseMustNotBeginWhileTheFirstActs() {
    // two trays 14 days apart, the second acts for 28 days: up to day 41
    assertNotEquals(
        List.of(), Courses.unusual(all(course("thymol-gel", 0), course("thymol-gel", 41))));
    assertEquals(
        List.of(), Courses.unusual(all(course("thymol-gel", 0), course("thymol-gel", 42))));
  }

  @Test
  void moreApplicationsInARowThanUsualAreTooMany() {
    assertNotEquals(
        List.of(), Courses.unusual(all(course("thymol-gel", 0), course("thymol-gel", 28))));
  }

  @Test
  void stripsAndDribbleAreForOneCourseASeason() {
    for (String once : List.of("amitraz-strips", "pyrethroid-strips", "oxalic-dribble")) {
      assertNotEquals(List.of(), Courses.unusual(all(course(once, 0), course(once, 100))), once);
    }
    assertEquals(
        List.of(), Courses.unusual(all(course("formic-pads", 0), course("formic-pads", 100))));
  }

  @Test
  void repeatedVapourIsOneCourse() {
    List<PlanStep> vapours =
        Facts.method("oxalic-sublimation")
            .usual()
            .withBrood()
            .of(Facts.method("oxalic-sublimation"), Facts.START);
    assertEquals(4, vapours.size());
    assertEquals(List.of(), Courses.unusual(vapours));
    assertEquals(1, Courses.coursesOfOneClass(vapours));
  }

  @Test
  void twoMethodsAtOnceOverlap() {
    // pads act for seven days
    assertTrue(Courses.closerThan(all(course("formic-pads", 0), course("thymol-gel", 6)), 0));
    assertFalse(Courses.closerThan(all(course("formic-pads", 0), course("thymol-gel", 7)), 0));
  }

  @Test
  void methodsOfOneClassCountTogether() {
    List<PlanStep> steps =
        all(course("thymol-gel", 0), course("thymol-wafer", 60), course("oxalic-dribble", 130));
    assertEquals(2, Courses.coursesOfOneClass(steps));
  }

  @Test
  void orderOfTheStepsDoesNotMatter() {
    List<PlanStep> steps = all(course("thymol-gel", 41), course("thymol-gel", 0));
    assertNotEquals(List.of(), Courses.unusual(steps));
    assertTrue(Courses.closerThan(steps, 0));
  }
}
