package org.undercap.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.model.ColonyLanes;
import org.undercap.model.ModelException;
import org.undercap.model.ModelParameters;
import org.undercap.model.Part;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.treatment.Circumstances;

class SimulatorTest {
  private static final Climate CENTRAL = ClimateCatalogue.shipped().get("central-european");

  private static RandomCase untreated(
      Climate climate, LocalDate start, int days, double bees, double mites) {
    return new RandomCase(
        climate,
        start,
        days,
        ParameterSet.shipped(),
        bees,
        1,
        mites,
        0,
        List.of(),
        Circumstances.usual(climate.eggs().max()));
  }

  @Test
  void leapDayIsThe28thOfFebruaryOnceMore() {
    LocalDate start = LocalDate.of(2024, 2, 27);
    DailyTable table = untreated(CENTRAL, start, 5, 10_000, 50).run().table();
    assertEquals("[58.0, 59.0, 59.0, 60.0, 61.0]", Arrays.toString(table.column(DailyColumn.DOY)));
    assertEquals(table.at(DailyColumn.TEMPERATURE, 1), table.at(DailyColumn.TEMPERATURE, 2));
    DailyTable common = untreated(CENTRAL, start.minusYears(1), 5, 10_000, 50).run().table();
    assertEquals("[58.0, 59.0, 60.0, 61.0, 62.0]", Arrays.toString(common.column(DailyColumn.DOY)));
  }

  @Test
  void healthyColonyRepeatsItsYear() {
    LocalDate start = LocalDate.of(2021, 3, 1);
    DailyTable table = untreated(CENTRAL, start, 5 * 365, 10_000, 0).run().table();
    assertFalse(table.lost());
    for (int day = 3 * 365; day < 4 * 365; day++) {
      LocalDate date = start.plusDays(day);
      int nextYear = (int) (date.plusYears(1).toEpochDay() - start.toEpochDay());
      double now = table.adults(day);
      assertEquals(now, table.adults(nextYear), 0.01 * now, "adults on " + date);
    }
  }

  @Test
  void untreatedMitesGrowFromYearToYearUntilTheColonyIsLost() {
    LocalDate start = LocalDate.of(2021, 3, 1);
    RandomCase.Result run = untreated(CENTRAL, start, 3000, 10_000, 10).run();
    DailyTable table = run.table();
    assertTrue(table.mites(365) > 3 * table.mites(0));
    assertTrue(table.lost());
    assertTrue(table.days() > 365 && table.days() < 3000, "lost after " + table.days());
  }

  @Test
  void tableOfALostColonyEndsOnTheDayOfLoss() {
    RandomCase.Result run = untreated(CENTRAL, LocalDate.of(2023, 7, 1), 400, 15_000, 6000).run();
    DailyTable table = run.table();
    int last = run.end().lostOn(0);
    assertTrue(last > 0 && last < 399, "lost on day " + last);
    assertEquals(last + 1, run.end().days());
    assertEquals(last + 1, table.days());
    assertTrue(table.lost());
    ParameterSet p = ParameterSet.shipped();
    double coldBelow = p.value(ParameterId.LOST_COLD_BELOW);
    for (int day = 0; day + 1 < table.days(); day++) {
      boolean cold = table.at(DailyColumn.TEMPERATURE, day) < coldBelow;
      double least = p.value(cold ? ParameterId.LOST_ADULTS_COLD : ParameterId.LOST_ADULTS_WARM);
      assertTrue(table.adults(day + 1) >= least, "should be lost on day " + day);
    }
    assertEquals(0, run.end().colony().adults(0));
    assertEquals(0, run.end().colony().mites(0));
  }

  @Test
  void livingColonyIsNotLost() {
    RandomCase.Result run = untreated(CENTRAL, LocalDate.of(2023, 7, 1), 40, 15_000, 10).run();
    assertEquals(-1, run.end().lostOn(0));
    assertEquals(40, run.end().days());
    assertFalse(run.table().lost());
    assertTrue(run.end().colony().adults(0) > 1500);
  }

  private static void runWith(double temperature, double arriving) {
    RandomCase one = untreated(CENTRAL, LocalDate.of(2023, 7, 1), 10, 15_000, 10);
    DailyDrivers drivers = one.drivers();
    drivers.temperature(6)[0] = temperature;
    drivers.arriving(6)[0] = arriving;
    new Simulator(ModelParameters.of(one.parameters()), drivers)
        .run(one.colony(), List.of(), List.of());
  }

  @ParameterizedTest
  @CsvSource({
    "NaN, 1, on day 6 colony 0 has NaN adult bees",
    "20, NaN, 'the account of mites does not close on day 6, colony 0'"
  })
  void impossibleDriversStopTheRunOnTheirDay(double temperature, double arriving, String message) {
    ModelException error = assertThrows(ModelException.class, () -> runWith(temperature, arriving));
    assertTrue(error.getMessage().startsWith(message), error.getMessage());
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesImpossibleArrivals(double bad) {
    LocalDate start = LocalDate.of(2023, 7, 1);
    IllegalArgumentException error =
        assertThrows(
            IllegalArgumentException.class,
            () -> DailyDrivers.of(CENTRAL, start, 3, date -> bad, 1));
    assertEquals(
        "mites arriving on 2023-07-01: " + bad + " must be a finite number of at least 0",
        error.getMessage());
  }

  @Test
  void parametersAndDriversMustBeForAsManyColonies() {
    DailyDrivers two = DailyDrivers.of(CENTRAL, LocalDate.of(2023, 7, 1), 3, date -> 0, 2);
    ModelParameters one = ModelParameters.of(ParameterSet.shipped());
    IllegalArgumentException error =
        assertThrows(IllegalArgumentException.class, () -> new Simulator(one, two));
    assertEquals("1 parameter sets, but drivers for 2 colonies", error.getMessage());
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 366, -5})
  void startShapeNeedsADayOfTheYear(int day) {
    ModelParameters one = ModelParameters.of(ParameterSet.shipped());
    assertThrows(IllegalArgumentException.class, () -> StartShape.at(CENTRAL, day, one));
  }

  @Test
  void startShapeSaysWhenNoColonyLivesThere() {
    ModelParameters shortLived =
        ModelParameters.of(ParameterSet.shipped().with(ParameterId.ADULT_LIFE_SUMMER, 5));
    IllegalArgumentException error =
        assertThrows(IllegalArgumentException.class, () -> StartShape.at(CENTRAL, 100, shortLived));
    assertTrue(error.getMessage().contains("central-european"), error.getMessage());
  }

  @Test
  void startShapeGivesTheShareOfMitesUnderTheCappings() {
    ModelParameters one = ModelParameters.of(ParameterSet.shipped());
    ColonyLanes june = StartShape.at(CENTRAL, 166, one);
    double share = 1 - june.total(Part.MITES_ON_BEES, 0) / june.mites(0);
    assertTrue(share > 0.5 && share < 0.9, "share in cells in June " + share);
    ColonyLanes january = StartShape.at(CENTRAL, 1, one);
    double winter = 1 - january.total(Part.MITES_ON_BEES, 0) / january.mites(0);
    assertTrue(winter < 0.2, "share in cells in January " + winter);
  }

  /** Half a year is 182 or 183 days, and months differ in length: equal to 2 % of the peak. */
  @ParameterizedTest
  @ValueSource(
      strings = {"central-european", "temperate-oceanic", "mediterranean", "humid-subtropical"})
  void southernSeasonsAreThoseOfTheNorthHalfAYearLater(String id) {
    Climate north = ClimateCatalogue.shipped().get(id);
    Climate south = north.mirrored();
    LocalDate start = LocalDate.of(2023, 4, 15);
    DailyTable here = untreated(north, start, 200, 12_000, 50).run().table();
    DailyTable there = untreated(south, start.plusDays(183), 200, 12_000, 50).run().table();
    assertEquals(here.days(), there.days());
    double peakMites = 0;
    double peakBees = 0;
    for (int day = 0; day < 200; day++) {
      peakMites = Math.max(peakMites, here.mites(day));
      peakBees = Math.max(peakBees, here.adults(day));
    }
    for (int day = 0; day < 200; day++) {
      assertEquals(here.adults(day), there.adults(day), 0.02 * peakBees, "bees, day " + day);
      assertEquals(here.mites(day), there.mites(day), 0.02 * peakMites, "mites, day " + day);
    }
  }
}
