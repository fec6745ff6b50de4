package org.undercap.hive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.undercap.climate.Hemisphere;

class ArrivalLevelTest {

  @Test
  void shipsFourLevels() {
    ArrivalCatalogue shipped = ArrivalCatalogue.shipped();
    assertEquals(
        List.of("none", "low", "dense", "collapsing"),
        shipped.all().stream().map(ArrivalLevel::id).toList());
    assertEquals(Optional.empty(), shipped.find("high"));
    assertThrows(IllegalArgumentException.class, () -> shipped.get("high"));
  }

  @ParameterizedTest
  @CsvSource({
    "low, 2025-03-31, 0",
    "low, 2025-04-01, 0.1",
    "low, 2025-05-31, 0.1",
    "low, 2025-06-01, 0.5",
    "low, 2025-07-31, 0.5",
    "low, 2025-08-01, 1.5",
    "low, 2025-10-31, 1.5",
    "low, 2025-11-01, 0",
    "dense, 2025-09-15, 6",
    "collapsing, 2025-09-15, 20",
    "collapsing, 2025-06-15, 0.5",
    "none, 2025-09-15, 0"
  })
  void changesInStepsOfMonths(String level, LocalDate date, double mites) {
    assertEquals(mites, ArrivalCatalogue.shipped().get(level).at(date, Hemisphere.NORTH));
  }

  @Test
  void theSouthIsHalfAYearAway() {
    ArrivalLevel dense = ArrivalCatalogue.shipped().get("dense");
    for (int month = 1; month <= 12; month++) {
      LocalDate date = LocalDate.of(2025, month, 10);
      assertEquals(
          dense.at(date.plusMonths(6), Hemisphere.NORTH), dense.at(date, Hemisphere.SOUTH));
    }
    assertEquals(6, dense.at(LocalDate.of(2025, 2, 1), Hemisphere.SOUTH));
    assertEquals(0, dense.at(LocalDate.of(2025, 8, 1), Hemisphere.SOUTH));
  }

  @ParameterizedTest
  @CsvSource({"low, 72, 248", "dense, 266, 1171"})
  void autumnAgreesWithThePublishedCounts(String level, double least, double most) {
    double autumn = 0;
    for (int day = 0; day < 105; day++) {
      LocalDate date = LocalDate.of(2025, 7, 18).plusDays(day);
      autumn += ArrivalCatalogue.shipped().get(level).at(date, Hemisphere.NORTH);
    }
    assertTrue(autumn >= least && autumn <= most, "arrived " + autumn);
  }

  @Test
  void refusesImpossibleArrivals() {
    List<Double> eleven = Collections.nCopies(11, 1.0);
    assertThrows(
        IllegalArgumentException.class, () -> new ArrivalLevel("x", "x", eleven, List.of()));
    for (double bad : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
      List<Double> months = new ArrayList<>(eleven);
      months.add(bad);
      assertThrows(
          IllegalArgumentException.class, () -> new ArrivalLevel("x", "x", months, List.of()));
    }
  }
}
