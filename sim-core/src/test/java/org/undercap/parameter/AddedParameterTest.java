package org.undercap.parameter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.undercap.analysis.GrowthRates;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.internal.CsvResource;
import org.undercap.internal.CsvRow;

/** A worked example: a row of the table reaches a run; a row or a constant alone is refused. */
class AddedParameterTest {
  private static final List<CsvRow> SHIPPED =
      CsvResource.read(ParameterCatalogue.class, "parameters.csv");
  private static final List<CsvRow> ADDED =
      CsvResource.read(AddedParameterTest.class, "added-parameters.csv");
  private static final Climate CLIMATE = ClimateCatalogue.shipped().get("central-european");

  private static String id(CsvRow row) {
    return row.required("id");
  }

  private static String refused(List<CsvRow> rows) {
    return assertThrows(IllegalStateException.class, () -> ParameterCatalogue.of(rows))
        .getMessage();
  }

  @Test
  void aRowReachesARun() {
    CsvRow own = ADDED.get(0);
    List<CsvRow> rows = new ArrayList<>(SHIPPED);
    rows.replaceAll(row -> id(row).equals(id(own)) ? own : row);
    ParameterSet set = ParameterSet.of(ParameterCatalogue.of(rows));
    assertEquals(0.5, set.value(ParameterId.REPRODUCTION_WORKER));
    double rate = GrowthRates.overSeason(CLIMATE, set).rate();
    double usual = GrowthRates.overSeason(CLIMATE, ParameterSet.shipped()).rate();
    assertTrue(rate < 0.9 * usual, rate + " against " + usual + " per day");
  }

  @Test
  void aRowNeedsItsConstant() {
    List<CsvRow> rows = new ArrayList<>(SHIPPED);
    rows.add(ADDED.get(1));
    String message = refused(rows);
    assertTrue(message.startsWith("added-parameters.csv:4: "), message);
    assertTrue(message.contains("mite.tiredness"), message);
  }

  @Test
  void aConstantNeedsItsRow() {
    List<CsvRow> rows = new ArrayList<>(SHIPPED);
    rows.removeIf(row -> id(row).equals("drone.death"));
    assertEquals("parameters.csv: no row for drone.death", refused(rows));
  }
}
