package org.undercap.model;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class CohortsTest {

  private static Cohorts threeDays() {
    Cohorts cohorts = new Cohorts(3, 2);
    cohorts.set(0, new double[] {1, 2, 3});
    cohorts.set(1, new double[] {10, 20, 30});
    return cohorts;
  }

  private static void assertLane(Cohorts cohorts, int lane, double... youngestFirst) {
    for (int age = 0; age < cohorts.ages(); age++) {
      assertEquals(youngestFirst[age], cohorts.row(age)[lane], "age " + age);
    }
  }

  @Test
  void ageingMovesEachCohortOnAndFreesTheOldestRow() {
    Cohorts cohorts = threeDays();
    for (int day = 0; day < 7; day++) {
      double[] oldest = cohorts.oldest();
      double[] middle = cohorts.row(1);
      double[] freed = cohorts.age();
      assertEquals(oldest, freed);
      assertEquals(middle, cohorts.oldest());
      freed[0] = 100 + day;
      freed[1] = 200 + day;
    }
    assertLane(cohorts, 0, 106, 105, 104);
    assertLane(cohorts, 1, 206, 205, 204);
  }

  @Test
  void totalsAndSumsDoNotDependOnTheRows() {
    Cohorts cohorts = threeDays();
    cohorts.age()[0] = 4;
    assertEquals(7, cohorts.total(0));
    double[] sum = {1000, 0};
    cohorts.addTo(sum);
    assertArrayEquals(new double[] {1007, 60}, sum);
  }

  @Test
  void scalesAllColoniesOrOne() {
    Cohorts cohorts = threeDays();
    cohorts.scale(new double[] {2, 0.5});
    assertLane(cohorts, 0, 2, 4, 6);
    assertLane(cohorts, 1, 5, 10, 15);
    cohorts.scaleLane(0, 10);
    assertLane(cohorts, 0, 20, 40, 60);
    assertLane(cohorts, 1, 5, 10, 15);
    cohorts.clearLane(1);
    assertEquals(120, cohorts.total(0));
    assertEquals(0, cohorts.total(1));
  }

  @Test
  void copiesByAgeWhateverTheRows() {
    Cohorts from = threeDays();
    from.age()[1] = 5;
    Cohorts to = new Cohorts(3, 1);
    to.copyLane(from, 1, 0);
    assertLane(to, 0, 5, 10, 20);
  }

  @Test
  void refusesOtherNumbersOfCohorts() {
    IllegalArgumentException error =
        assertThrows(IllegalArgumentException.class, () -> threeDays().set(0, new double[] {1, 2}));
    assertEquals("2 cohorts given, 3 expected", error.getMessage());
  }
}
