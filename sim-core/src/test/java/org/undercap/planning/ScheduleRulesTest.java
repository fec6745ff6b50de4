package org.undercap.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.undercap.treatment.PlanStep;

class ScheduleRulesTest {
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
    assertEquals(1, ScheduleRules.courses(gel).size());
    assertFalse(ScheduleRules.repeatsTooSoon(gel));
    assertFalse(ScheduleRules.overlaps(gel));
  }

  @Test
  void measuresAreNoCourses() {
    PlanStep removal = new PlanStep.BroodRemoval(Facts.START, 1);
    assertEquals(List.of(), ScheduleRules.courses(List.of(removal)));
    assertEquals(0, ScheduleRules.coursesOfOneClass(List.of(removal)));
  }

  @Test
  void aSecondCourseMustNotBeginWhileTheFirstActs() {
    // two trays 14 days apart, the second acts for 28 days: up to day 41
    assertTrue(
        ScheduleRules.repeatsTooSoon(all(course("thymol-gel", 0), course("thymol-gel", 41))));
    assertFalse(
        ScheduleRules.repeatsTooSoon(all(course("thymol-gel", 0), course("thymol-gel", 42))));
  }

  @Test
  void moreApplicationsInARowThanUsualAreTooMany() {
    assertTrue(
        ScheduleRules.repeatsTooSoon(all(course("thymol-gel", 0), course("thymol-gel", 28))));
  }

  @Test
  void stripsAndDribbleAreForOneCourseASeason() {
    for (String once : List.of("amitraz-strips", "pyrethroid-strips", "oxalic-dribble")) {
      assertTrue(ScheduleRules.repeatsTooSoon(all(course(once, 0), course(once, 100))), once);
    }
    assertFalse(
        ScheduleRules.repeatsTooSoon(all(course("formic-pads", 0), course("formic-pads", 100))));
  }

  @Test
  void repeatedVapourIsOneCourse() {
    List<PlanStep> vapours =
        Facts.method("oxalic-sublimation")
            .usual()
            .withBrood()
            .of(Facts.method("oxalic-sublimation"), Facts.START);
    assertEquals(4, vapours.size());
    assertFalse(ScheduleRules.repeatsTooSoon(vapours));
    assertEquals(1, ScheduleRules.coursesOfOneClass(vapours));
  }

  @Test
  void twoMethodsAtOnceOverlap() {
    // pads act for seven days
    assertTrue(ScheduleRules.overlaps(all(course("formic-pads", 0), course("thymol-gel", 6))));
    assertFalse(ScheduleRules.overlaps(all(course("formic-pads", 0), course("thymol-gel", 7))));
  }

  @Test
  void methodsOfOneClassCountTogether() {
    List<PlanStep> steps =
        all(course("thymol-gel", 0), course("thymol-wafer", 60), course("oxalic-dribble", 130));
    assertEquals(2, ScheduleRules.coursesOfOneClass(steps));
  }

  @Test
  void orderOfTheStepsDoesNotMatter() {
    List<PlanStep> steps = all(course("thymol-gel", 41), course("thymol-gel", 0));
    assertTrue(ScheduleRules.repeatsTooSoon(steps));
    assertTrue(ScheduleRules.overlaps(steps));
  }
}
