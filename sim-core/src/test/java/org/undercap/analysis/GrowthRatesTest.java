package org.undercap.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;

class GrowthRatesTest {
  private static final Climate CENTRAL = ClimateCatalogue.shipped().get("central-european");
  private static final ParameterSet SHIPPED = ParameterSet.shipped();

  @Test
  void seasonOfATemperateClimateIsAPublishedOne() {
    SeasonGrowth growth = GrowthRates.overSeason(CENTRAL, SHIPPED);
    assertTrue(growth.rate() > 0.017 && growth.rate() < 0.025, growth.toString());
    double days = 153;
    assertEquals(
        1, growth.multiplication() / StrictMath.exp(growth.rate() * days), 0.5, "straight line");
    assertEquals(StrictMath.log(2) / growth.rate(), growth.doublingDays().getAsDouble(), 1e-12);
    assertTrue(growth.autumnPerWinterMite() > growth.multiplication());
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
  void mitesThatKillTheColonyHaveNoRate() {
    ParameterSet wild = SHIPPED.with(ParameterId.REPRODUCTION_WORKER, 6);
    IllegalStateException e =
        assertThrows(IllegalStateException.class, () -> GrowthRates.overSeason(CENTRAL, wild));
    assertTrue(e.getMessage().contains("central-european"), e.getMessage());
  }
}
