package org.undercap.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.undercap.internal.CsvResource;
import org.undercap.model.ColonyLanes;
import org.undercap.model.ModelParameters;
import org.undercap.parameter.ParameterSet;
import org.undercap.simulation.DailyDrivers;
import org.undercap.simulation.DailyTable;
import org.undercap.simulation.Simulator;
import org.undercap.simulation.StartShape;

/** A worked example: one row adds a climate, in which a colony then lives for a year. */
class AddedClimateTest {
  private static final ClimateCatalogue CATALOGUE =
      ClimateCatalogue.of(CsvResource.read(AddedClimateTest.class, "added-climates.csv"));
  private static final LocalDate START = LocalDate.of(2026, 4, 1);
  private static final int DAYS = 365;
  private static final double MITES = 50;

  private static DailyTable year(Climate climate) {
    ModelParameters parameters = ModelParameters.of(ParameterSet.shipped());
    ColonyLanes colony = StartShape.at(climate, SeasonDay.of(START), parameters);
    colony.scaleTo(0, 10_000, 8_000, MITES);
    DailyDrivers drivers = DailyDrivers.of(climate, START, DAYS, date -> 0, 1);
    DailyTable table = DailyTable.of(drivers, 0);
    new Simulator(parameters, drivers).run(colony, List.of(), List.of(table));
    return table;
  }

  @Test
  void aRowIsFoundByNameAndLatitude() {
    Climate added = CATALOGUE.get("high-valley");
    assertEquals(added, CATALOGUE.nearest(46));
    assertEquals(0, CATALOGUE.degreesAway(46));
    assertEquals(Hemisphere.NORTH, added.hemisphere());
  }

  @Test
  void aColonyLivesInIt() {
    DailyTable there = year(CATALOGUE.get("high-valley"));
    DailyTable usual = year(ClimateCatalogue.shipped().get("central-european"));
    int october = 183;
    assertTrue(there.adults(90) > 10_000, "bees in summer");
    assertTrue(there.adults(DAYS - 1) > 1_000, "bees after winter");
    assertTrue(there.mites(october) > MITES, "mites grow");
    assertTrue(there.mites(october) < usual.mites(october), "less brood, fewer mites");
  }
}
