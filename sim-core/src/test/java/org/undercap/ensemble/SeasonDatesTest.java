package org.undercap.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.junit.jupiter.api.Test;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.climate.Hemisphere;
import org.undercap.parameter.ParameterSet;

class SeasonDatesTest {
  private static SeasonDates of(String climate, String start, String end) {
    return of(ClimateCatalogue.shipped().get(climate), start, end);
  }

  private static SeasonDates of(Climate climate, String start, String end) {
    return SeasonDates.of(
        climate, LocalDate.parse(start), LocalDate.parse(end), ParameterSet.shipped());
  }

  @Test
  void winterBeesEmergeBeforeLayingFallsToATenth() {
    SeasonDates dates = of("central-european", "2026-08-01", "2027-04-01");
    Climate climate = ClimateCatalogue.shipped().get("central-european");
    assertEquals(60, ChronoUnit.DAYS.between(dates.winterBeesFrom(), dates.winterBeesUntil()));
    assertTrue(
        climate.potentialEggs(dates.winterBeesUntil().getDayOfYear()) < 0.1 * climate.eggs().max());
    assertTrue(
        climate.potentialEggs(dates.winterBeesUntil().getDayOfYear() - 1)
            >= 0.1 * climate.eggs().max());
    assertFalse(dates.lateBrood());
    assertEquals(LocalDate.of(2027, 1, 1), dates.midwinter().orElseThrow());
    assertEquals(LocalDate.of(2027, 3, 1), dates.endOfWinter().orElseThrow());
  }

  @Test
  void whereLayingNeverFallsTheTimeIsFixed() {
    SeasonDates dates = of("humid-subtropical", "2026-08-01", "2027-04-01");
    assertEquals(LocalDate.of(2026, 10, 15), dates.winterBeesUntil());
  }

  @Test
  void theSouthHasItsWinterInJuly() {
    Climate south = ClimateCatalogue.shipped().get("humid-subtropical").in(Hemisphere.SOUTH);
    SeasonDates dates = of(south, "2026-02-20", "2026-10-01");
    assertEquals(LocalDate.of(2026, 4, 15), dates.winterBeesUntil());
    assertEquals(LocalDate.of(2026, 7, 1), dates.midwinter().orElseThrow());
    assertEquals(LocalDate.of(2026, 9, 1), dates.endOfWinter().orElseThrow());
  }

  @Test
  void aLateStartLooksAtTheBroodThatIsLeft() {
    SeasonDates dates = of("cool-oceanic", "2026-09-24", "2027-04-01");
    assertTrue(dates.lateBrood());
    assertEquals(LocalDate.of(2026, 9, 24), dates.winterBeesFrom());
  }

  /** Sealed worker brood of 12 days cannot be protected any more, a week beyond it can. */
  @Test
  void winterBeesCountAsLongAsAWeekOfTheirBroodCanStillBeProtected() {
    LocalDate last =
        SeasonDates.winterBees(
                ClimateCatalogue.shipped().get("cool-oceanic"),
                LocalDate.of(2026, 8, 25),
                ParameterSet.shipped())
            .until();
    String end = "2027-04-01";
    assertFalse(of("cool-oceanic", last.minusDays(19).toString(), end).lateBrood());
    assertTrue(of("cool-oceanic", last.minusDays(18).toString(), end).lateBrood());
    assertFalse(of("cool-oceanic", "2026-08-25", end).lateBrood());
  }

  @Test
  void aShortRunHasNoWinter() {
    SeasonDates dates = of("central-european", "2026-05-01", "2026-06-01");
    assertTrue(dates.midwinter().isEmpty());
    assertTrue(dates.endOfWinter().isEmpty());
  }
}
