package org.undercap.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.undercap.analysis.GrowthRates;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.internal.CsvResource;
import org.undercap.parameter.ParameterSet;

/** A worked example: a row and a method add a published check; a miss tells its reason. */
class AddedCheckTest {
  private static final List<PublishedCheck> CHECKS =
      CsvResource.read(AddedCheckTest.class, "added-checks.csv").stream()
          .map(PublishedCheck::of)
          .toList();

  /** The method of a check: it runs the model and judges what comes out. */
  private static void growth(Findings findings) {
    findings.judge(
        "",
        GrowthRates.overSeason(
                ClimateCatalogue.shipped().get("central-european"), ParameterSet.shipped())
            .rate());
  }

  private static CheckResult result(int row) {
    Findings findings = new Findings(CHECKS.get(row));
    growth(findings);
    return findings.result(row == 0 ? "" : "the numbers are invented");
  }

  @Test
  void whatLiesInTheIntervalAgrees() {
    assertEquals(Inside.YES, result(0).inside());
  }

  @Test
  void whatLiesOutsideIsAMissWithItsReasonInTheTable() {
    assertEquals(Inside.NO, result(1).inside());
    String table = EvidenceTable.markdown(List.of(result(0), result(1)));
    assertTrue(table.contains("| no: the numbers are invented |"), table);
    assertTrue(table.indexOf("added-miss") < table.indexOf("added-growth"), "misses come first");
  }
}
