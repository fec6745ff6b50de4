package org.undercap.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.model.ModelException;
import org.undercap.parameter.Parameter;
import org.undercap.parameter.ParameterCatalogue;
import org.undercap.parameter.ParameterSet;
import org.undercap.treatment.Circumstances;

/**
 * Numbers far outside what colonies do: a run ends well or with its day and state, never as NaN.
 */
class ExtremesTest {
  private static final double[] EXTREMES = {0, Double.MIN_VALUE, 1e9, Double.MAX_VALUE};
  private static final int TWENTY_YEARS = 7_305;

  private static RandomCase colony(double bees, double brood, double mites, int days) {
    return new RandomCase(
        ClimateCatalogue.shipped().get("central-european"),
        LocalDate.of(2023, 4, 1),
        days,
        ParameterSet.shipped(),
        bees,
        brood,
        mites,
        1,
        List.of(),
        Circumstances.usual(1650));
  }

  /** Whether the run came to its end; a run that does not must say on which day, and why. */
  private static boolean endsWell(RandomCase one) {
    try {
      DailyTable table = one.run().table();
      for (DailyColumn column : DailyColumn.values()) {
        for (double x : table.column(column)) {
          assertTrue(Double.isFinite(x), column + " " + x + "\n" + one);
        }
      }
      return true;
    } catch (ModelException e) {
      assertTrue(e.getMessage().contains("day"), e.getMessage());
      return false;
    } catch (IllegalArgumentException e) {
      assertTrue(!e.getMessage().isBlank());
      return false;
    }
  }

  @Test
  void extremeColoniesEndWell() {
    for (double bees : new double[] {1, 1_000, 20_000, 1e9}) {
      for (double brood : new double[] {0, Double.MIN_VALUE, 1, 4}) {
        for (double mites : new double[] {0, Double.MIN_VALUE, 1, 1e9}) {
          assertTrue(endsWell(colony(bees, brood, mites, 400)), bees + " " + brood + " " + mites);
        }
      }
    }
  }

  @Test
  void twentyYearsEndWell() {
    RandomCase healthy = colony(20_000, 1, 0, TWENTY_YEARS).withMites(0, 0);
    assertTrue(endsWell(healthy));
    assertEquals(TWENTY_YEARS, healthy.run().table().days());
    assertTrue(endsWell(colony(20_000, 1, 50, TWENTY_YEARS)));
  }

  @Test
  void extremeParametersEndWellOrAreRefused() {
    RandomCase usual = colony(15_000, 1, 200, 120);
    int ended = 0;
    for (Parameter parameter : ParameterCatalogue.shipped().all()) {
      for (double extreme : EXTREMES) {
        double[] values = new double[parameter.values().size()];
        Arrays.fill(values, extreme);
        try {
          ParameterSet set = ParameterSet.shipped().with(parameter.id(), values);
          ended += endsWell(usual.withParameters(set)) ? 1 : 0;
        } catch (IllegalArgumentException e) {
          assertTrue(e.getMessage().contains(parameter.id().id()), e.getMessage());
        }
      }
    }
    assertTrue(ended > ParameterCatalogue.shipped().all().size(), ended + " runs ended well");
  }
}
