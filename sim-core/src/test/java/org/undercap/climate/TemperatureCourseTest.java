package org.undercap.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TemperatureCourseTest {

  private static final Sinusoid SINUSOID = new Sinusoid(9.9, 9.2, 198);

  @ParameterizedTest
  @CsvSource({
    "198, 19.1", // mean + amplitude
    "1, 0.9851096033354629", // values of an independent implementation
    "2, 0.9473112974539912",
    "60, 3.2698622241044806",
    "61, 3.380634559966973"
  })
  void theSinusoidSwingsAroundItsMean(int doy, double expected) {
    assertEquals(expected, SINUSOID.at(doy), 1e-12);
  }

  @Test
  void datesOfLeapYearsHaveTheirSeason() {
    assertEquals(SINUSOID.at(59), SINUSOID.at(LocalDate.of(2024, 2, 29)));
    assertEquals(SINUSOID.at(60), SINUSOID.at(LocalDate.of(2024, 3, 1)));
  }

  @Test
  void theMirroredSinusoidIsHalfAYearLater() {
    Sinusoid mirrored = SINUSOID.mirrored();
    assertEquals(15.5, mirrored.warmestDay());
    assertEquals(SINUSOID, mirrored.mirrored());
    // Half a year is 182.5 days, so the middle of the two days around is compared.
    assertEquals((SINUSOID.at(282) + SINUSOID.at(283)) / 2, mirrored.at(100), 2e-3);
  }

  @Test
  void theSinusoidRefusesBadConstants() {
    assertThrows(IllegalArgumentException.class, () -> new Sinusoid(Double.NaN, 9, 198));
    assertThrows(IllegalArgumentException.class, () -> new Sinusoid(9, -1, 198));
    assertThrows(IllegalArgumentException.class, () -> new Sinusoid(9, Double.NaN, 198));
    assertThrows(IllegalArgumentException.class, () -> new Sinusoid(9, 9, 366));
    assertThrows(IllegalArgumentException.class, () -> new Sinusoid(9, 9, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> SINUSOID.at(366));
  }

  @Test
  void monthlyNormalsAreLinearBetweenMonths() {
    MonthlyNormals normals =
        new MonthlyNormals(
            new MonthlyTable(List.of(0., 2., 6., 10., 14., 18., 20., 19., 15., 10., 5., 1.)));
    assertEquals(1, normals.at(30), 1e-12);
    assertEquals(20, normals.mirrored().at(15));
  }

  @Test
  void dailyTemperaturesComeFirst() {
    LocalDate day = LocalDate.of(2024, 8, 10);
    SortedMap<LocalDate, Double> daily = new TreeMap<>();
    daily.put(day, 25.5);
    DailyTemperatures course = new DailyTemperatures(daily, SINUSOID);
    daily.put(day, 99.0);
    assertEquals(25.5, course.at(day));
    assertEquals(SINUSOID.at(222), course.at(222));
    assertEquals(SINUSOID.at(223), course.at(day.plusDays(1)));
    assertEquals(SINUSOID.at(222), course.at(day.plusYears(1)));
    assertEquals(25.5, course.mirrored().at(day));
    assertEquals(SINUSOID.mirrored().at(223), course.mirrored().at(day.plusDays(1)));
  }

  @Test
  void dailyTemperaturesAreValues() {
    SortedMap<LocalDate, Double> daily = new TreeMap<>();
    daily.put(LocalDate.of(2024, 8, 10), 25.5);
    DailyTemperatures course = new DailyTemperatures(daily, SINUSOID);
    assertEquals(new DailyTemperatures(daily, SINUSOID), course);
    assertEquals(new DailyTemperatures(daily, SINUSOID).hashCode(), course.hashCode());
    assertThrows(UnsupportedOperationException.class, () -> course.daily().clear());
    SortedMap<LocalDate, Double> bad =
        new TreeMap<>(Collections.singletonMap(LocalDate.of(2024, 8, 11), Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new DailyTemperatures(bad, SINUSOID));
  }
}
