package org.undercap.treatment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.undercap.internal.CsvResource;
import org.undercap.internal.CsvRow;
import org.undercap.parameter.ParameterSet;
import org.undercap.simulation.DailyTable;

/** A worked example: one row adds a treatment. */
class AddedMethodTest {
  private static final List<CsvRow> ROWS =
      CsvResource.read(AddedMethodTest.class, "added-methods.csv");

  private static MethodCatalogue catalogue(List<CsvRow> rows) {
    return MethodCatalogue.of(rows, ParameterSet.shipped());
  }

  private static double mitesLeft(PlanStep... steps) {
    DailyTable table = TrialColony.table(steps);
    return table.mites(table.days() - 1);
  }

  @Test
  void aRowIsATreatmentThatKillsMites() {
    Method added = catalogue(ROWS).get("trial-gel");
    assertEquals(List.of("thymol"), added.cautions());
    assertEquals(new Course(1, 28), added.usual().course());
    double untreated = mitesLeft();
    double treated = mitesLeft(new PlanStep.Application(TrialColony.START, added, 1));
    double half = mitesLeft(new PlanStep.Application(TrialColony.START, added, 0.5));
    assertTrue(treated < 0.8 * untreated, treated + " of " + untreated);
    assertTrue(treated < half && half < untreated, half + " with half a tray");
  }

  @Test
  void aCautionThatIsNotListedIsADefectOfTheRow() {
    CsvRow row = ROWS.get(0);
    List<String> fields =
        row.fields().stream().map(field -> field.equals("thymol") ? "smell" : field).toList();
    CsvRow wrong = new CsvRow(row.file(), row.line(), row.header(), fields);
    IllegalStateException error =
        assertThrows(IllegalStateException.class, () -> catalogue(List.of(wrong)));
    assertTrue(error.getMessage().startsWith("added-methods.csv:3: "), error.getMessage());
  }
}
