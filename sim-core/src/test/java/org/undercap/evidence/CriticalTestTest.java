package org.undercap.evidence;

import static java.time.Month.AUGUST;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.undercap.evidence.ColonyRun.on;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.undercap.simulation.DailyColumn;

class CriticalTestTest {
  private static final LocalDate FIRST = on(AUGUST, 5);
  private static final ColonyRun RUN =
      ColonyRun.in("central-european").from(on(AUGUST, 1)).mites(800);

  private static Course strips() {
    return ColonyRun.in("central-european")
        .from(on(AUGUST, 1))
        .mites(800)
        .treat("pyrethroid-strips", FIRST)
        .until(FIRST.plusDays(42));
  }

  @Test
  void nothingKilledIsNoEfficacy() {
    assertEquals(0, CriticalTest.percent(RUN.until(FIRST.plusDays(42)), FIRST, 42));
  }

  @Test
  void killedAgainstKilledAndLeft() {
    Course course = strips();
    double killed = 0;
    for (int day = 4; day < 46; day++) {
      killed += course.table().at(DailyColumn.MITES_KILLED_ON_BEES, day);
    }
    double left = course.table().mites(46);
    assertEquals(100 * killed / (killed + left), CriticalTest.percent(course, FIRST, 42), 1e-9);
  }

  @Test
  void daysUntilAShareIsKilled() {
    Course course = strips();
    int days = CriticalTest.daysUntil(course, FIRST, 42, 0.5);
    double half = course.sum(FIRST, FIRST.plusDays(days - 1L), course::killed);
    double before = course.sum(FIRST, FIRST.plusDays(days - 2L), course::killed);
    double all =
        course.sum(FIRST, FIRST.plusDays(41), course::killed) + course.mites(FIRST.plusDays(42));
    assertTrue(before < 0.5 * all && half >= 0.5 * all);
    assertEquals(43, CriticalTest.daysUntil(course, FIRST, 42, 0.9999));
  }

  @Test
  void aDateOutsideTheRunIsADefect() {
    Course course = strips();
    assertThrows(IllegalArgumentException.class, () -> course.mites(FIRST.plusDays(43)));
    assertThrows(IllegalArgumentException.class, () -> course.mites(FIRST.minusDays(5)));
  }
}
