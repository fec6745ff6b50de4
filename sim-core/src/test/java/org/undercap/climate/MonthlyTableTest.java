package org.undercap.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MonthlyTableTest {

  private static final MonthlyTable TABLE =
      new MonthlyTable(
          List.of(10., 100., 450., 1000., 1600., 1650., 1300., 850., 450., 120., 10., 0.));

  @ParameterizedTest
  @CsvSource({
    "15, 10", // mid-month
    "45, 100",
    "349, 0",
    "30, 55", // 10 + 90 * 15 / 30
    "60, 281.0344827586207", // 100 + 350 * 15 / 29
    "198, 1270.967741935484", // 1300 - 450 * 2 / 31
    "365, 5.161290322580645", // 0 + 10 * 16 / 31
    "1, 5.483870967741935", // 0 + 10 * 17 / 31
    "14, 9.67741935483871", // 0 + 10 * 30 / 31
    "350, 0.3225806451612903" // 0 + 10 * 1 / 31
  })
  void isLinearBetweenTheMiddlesOfTheMonths(int doy, double expected) {
    assertEquals(expected, TABLE.at(doy), 1e-12 * Math.max(1, expected));
  }

  @Test
  void aConstantTableIsConstant() {
    MonthlyTable constant = new MonthlyTable(Collections.nCopies(12, 0.3));
    for (int doy = 1; doy <= SeasonDay.DAYS; doy++) {
      assertEquals(0.3, constant.at(doy));
    }
  }

  @Test
  void halfAYearTurnsJanuaryIntoJuly() {
    MonthlyTable shifted = TABLE.shiftedHalfAYear();
    assertEquals(
        List.of(1300., 850., 450., 120., 10., 0., 10., 100., 450., 1000., 1600., 1650.),
        shifted.values());
    assertEquals(TABLE, shifted.shiftedHalfAYear());
  }

  @Test
  void knowsItsMaximum() {
    assertEquals(1650, TABLE.max());
    double greatest = 0;
    for (int doy = 1; doy <= SeasonDay.DAYS; doy++) {
      greatest = Math.max(greatest, TABLE.at(doy));
    }
    assertEquals(TABLE.max(), greatest);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, -1, 366})
  void refusesDaysOutsideTheYear(int doy) {
    assertThrows(IllegalArgumentException.class, () -> TABLE.at(doy));
  }

  @Test
  void refusesOtherThanTwelveFiniteValues() {
    assertThrows(IllegalArgumentException.class, () -> new MonthlyTable(List.of(1., 2.)));
    for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
      List<Double> values = new ArrayList<>(TABLE.values());
      values.set(3, bad);
      IllegalArgumentException error =
          assertThrows(IllegalArgumentException.class, () -> new MonthlyTable(values));
      assertEquals("value of month 4 is " + bad + ", must be finite", error.getMessage());
    }
  }
}
