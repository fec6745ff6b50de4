package org.undercap.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SeasonDayTest {

  @ParameterizedTest
  @CsvSource({
    "2025-01-01, 1",
    "2025-02-28, 59",
    "2025-03-01, 60",
    "2025-12-31, 365",
    "2024-01-01, 1",
    "2024-02-28, 59",
    "2024-02-29, 59",
    "2024-03-01, 60",
    "2024-12-31, 365",
    "2000-02-29, 59",
    "2000-03-01, 60",
    "1900-03-01, 60",
    "2025-08-10, 222"
  })
  void countsInAYearOf365Days(LocalDate date, int doy) {
    assertEquals(doy, SeasonDay.of(date));
  }

  @Test
  void aDateHasTheSameDayInEveryYear() {
    for (LocalDate date = LocalDate.of(2023, 1, 1);
        date.getYear() == 2023;
        date = date.plusDays(1)) {
      assertEquals(SeasonDay.of(date), SeasonDay.of(date.withYear(2024)), date.toString());
    }
  }
}
