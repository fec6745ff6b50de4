package org.undercap.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercap.internal.CsvRow;
import org.undercap.model.ColonyLanes;
import org.undercap.model.ModelParameters;
import org.undercap.parameter.ParameterSet;
import org.undercap.treatment.Circumstances;
import org.undercap.treatment.Interventions;

/**
 * The model against day-by-day tables of an independent implementation, to 1e-9 relative (1e-9
 * absolute below 1).
 */
class ReferenceTablesTest {
  private static final double TOLERANCE = 1e-9;

  static List<ReferenceCase> cases() {
    return ReferenceCase.all();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void fromListedStart(ReferenceCase reference) {
    compare(reference, reference.listedStart());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void fromShapedStart(ReferenceCase reference) {
    compare(reference, reference.shapedStart());
  }

  private static void compare(ReferenceCase reference, ColonyLanes start) {
    DailyDrivers drivers = reference.drivers();
    DailyTable table = DailyTable.of(drivers, 0);
    new Simulator(ModelParameters.of(ParameterSet.shipped()), drivers)
        .run(
            start,
            Interventions.of(
                reference.steps(), Circumstances.usual(reference.climate().eggs().max())),
            List.of(table));
    List<CsvRow> rows = reference.rows();
    assertEquals(rows.size(), table.days(), "days");
    for (DailyColumn column : DailyColumn.values()) {
      for (int day = 0; day < rows.size(); day++) {
        double want = rows.get(day).number(column.header());
        double got = table.at(column, day);
        int where = day;
        assertTrue(
            Math.abs(got - want) <= TOLERANCE * Math.max(1, Math.abs(want)),
            () ->
                reference
                    + " day "
                    + where
                    + " "
                    + column.header()
                    + ": "
                    + got
                    + ", wanted "
                    + want);
      }
    }
  }
}
