package org.undercap.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.climate.SeasonDay;
import org.undercap.model.ColonyLanes;
import org.undercap.model.ModelParameters;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.simulation.DailyDrivers;
import org.undercap.simulation.DailyTable;
import org.undercap.simulation.Simulator;
import org.undercap.simulation.StartShape;

class GrowthRatesTest {
  private static final Climate CENTRAL = ClimateCatalogue.shipped().get("central-european");
  private static final ParameterSet SHIPPED = ParameterSet.shipped();

  @Test
  void slopeAndRatiosAreThoseOfTheRunDayByDay() {
    LocalDate first = LocalDate.of(2021, Month.MARCH, 1);
    ModelParameters parameters = ModelParameters.of(SHIPPED);
    ColonyLanes start = StartShape.at(CENTRAL, SeasonDay.of(first), parameters);
    start.scaleMites(0, 50);
    DailyDrivers drivers = DailyDrivers.of(CENTRAL, first, 215, date -> 0, 1);
    DailyTable table = DailyTable.of(drivers, 0);
    new Simulator(parameters, drivers).run(start, List.of(), List.of(table));
    int from = 45;
    int days = 153;
    double weighted = 0;
    double squares = 0;
    for (int day = 0; day <= days; day++) {
      double x = day - days / 2.0;
      weighted += x * StrictMath.log(table.mites(from + day));
      squares += x * x;
    }
    SeasonGrowth growth = GrowthRates.overSeason(CENTRAL, SHIPPED);
    assertEquals(weighted / squares, growth.rate(), 1e-12);
    assertEquals(table.mites(from + days) / table.mites(from), growth.multiplication(), 1e-9);
    assertEquals(table.mites(214) / 50, growth.autumnPerWinterMite(), 1e-9);
    assertEquals(StrictMath.log(2) / growth.rate(), growth.doublingDays().getAsDouble(), 1e-12);
  }

  @Test
  void theSouthHasTheSameSeasonHalfAYearLater() {
    double north = GrowthRates.overSeason(CENTRAL, SHIPPED).rate();
    double south = GrowthRates.overSeason(CENTRAL.mirrored(), SHIPPED).rate();
    assertEquals(1, south / north, 0.02);
  }

  @Test
  void setsSideBySideGrowAsEachAlone() {
    List<ParameterSet> sets =
        List.of(
            SHIPPED,
            SHIPPED.with(ParameterId.REPRODUCTION_WORKER, 0.5),
            SHIPPED.with(ParameterId.DISPERSION_DRONE, 4),
            SHIPPED.with(ParameterId.LAYING_HALF_SATURATION, 4000));
    List<SeasonGrowth> together = GrowthRates.overSeason(CENTRAL, sets);
    for (int i = 0; i < sets.size(); i++) {
      assertEquals(GrowthRates.overSeason(CENTRAL, sets.get(i)), together.get(i));
    }
    assertTrue(together.get(1).rate() < together.get(0).rate());
  }

  @Test
  void mitesThatDoNotReproduceHaveNoDoublingTime() {
    ParameterSet barren =
        SHIPPED.with(ParameterId.REPRODUCTION_WORKER, 0).with(ParameterId.REPRODUCTION_DRONE, 0);
    SeasonGrowth growth = GrowthRates.overSeason(CENTRAL, barren);
    assertTrue(growth.rate() < 0);
    assertEquals(OptionalDouble.empty(), growth.doublingDays());
  }

  @Test
  void aColonyThatIsLostBeforeAutumnHasNoRate() {
    ParameterSet doomed =
        SHIPPED
            .with(ParameterId.REPRODUCTION_WORKER, 10)
            .with(ParameterId.LOST_ADULTS_COLD, 5000)
            .with(ParameterId.LOST_ADULTS_WARM, 5000);
    IllegalStateException e =
        assertThrows(IllegalStateException.class, () -> GrowthRates.overSeason(CENTRAL, doomed));
    assertTrue(e.getMessage().contains("central-european"), e.getMessage());
  }
}
