package org.undercap.treatment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class CourseTest {
  private static final LocalDate DAY = LocalDate.of(2026, 9, 26);
  private static final Method GEL = MethodCatalogue.shipped().get("thymol-gel");

  @Test
  void applicationsLieApart() {
    assertEquals(
        List.of(
            new PlanStep.Application(DAY, GEL, 1),
            new PlanStep.Application(DAY.plusDays(14), GEL, 1)),
        GEL.usual().course().of(GEL, DAY));
    assertEquals("thymol gel, 2 times 14 days apart", GEL.usual().course().words(GEL));
    assertEquals("thymol gel", new Course(1, 0).words(GEL));
  }

  @Test
  void onlyVapourIsRepeatedMoreOftenWithBrood() {
    for (Method method : MethodCatalogue.shipped().all()) {
      int expected = method.id().equals("oxalic-sublimation") ? 2 : 1;
      assertEquals(expected, method.usual().courses().size(), method.id());
      assertTrue(method.usual().coursesInSeason() <= 2, method.id());
    }
  }

  @Test
  void numbersAreChecked() {
    assertThrows(IllegalArgumentException.class, () -> new Course(0, 0));
    assertThrows(IllegalArgumentException.class, () -> new Course(2, 0));
    assertThrows(IllegalArgumentException.class, () -> new Course(1, -1));
    Course once = new Course(1, 0);
    assertThrows(IllegalArgumentException.class, () -> new UsualUse(once, once, 0));
  }
}
