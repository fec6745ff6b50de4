package org.undercap.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.undercap.comparison.CentralRun;
import org.undercap.scenario.Scenario;
import org.undercap.scenario.io.ScenarioReader;

/** The account of mites closes every day and follows the daily table. */
class MiteLedgerTest {
  private static Scenario scenario(int mites) throws IOException {
    String text =
        """
        undercap: 1
        name: Account
        site: {climate: central-european}
        colony: {date: 2026-08-08, bees: 18000, brood: 9000 cells}
        mites: {in-colony: %d}
        arrivals: dense
        horizon: 120 days
        plans:
          - name: All
            steps:
              - {date: 2026-08-10, treatment: formic-pads}
              - {date: 2026-09-01, measure: brood-removal, share: 50 %%}
        """
            .formatted(mites);
    return ScenarioReader.read(
            "account.yaml", new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)))
        .orThrow();
  }

  @Test
  void closesEveryDay() throws IOException {
    Scenario scenario = scenario(800);
    MiteLedger ledger = new MiteLedger(0);
    CentralRun.watch(scenario, 800, scenario.plans().get(1), ledger);
    DailyTable table = CentralRun.of(scenario, 800, scenario.plans()).get(1).table();
    List<MiteLedger.Entry> entries = ledger.entries();
    assertEquals(scenario.days(), entries.size());
    double killed = 0;
    double removed = 0;
    for (int day = 0; day < entries.size(); day++) {
      MiteLedger.Entry entry = entries.get(day);
      assertEquals(0, entry.difference(), 1e-6 * Math.max(1, entry.before()));
      assertEquals(table.mites(day), entry.before(), 1e-9 * entry.before());
      if (day > 0) {
        assertEquals(entries.get(day - 1).after(), entry.before());
      }
      killed += entry.killedOnBees() * entry.killedInCells();
      removed += entry.removed();
    }
    assertTrue(killed > 0 && removed > 0, "all columns are used");
  }

  @Test
  void endsWithTheColony() throws IOException {
    Scenario scenario = scenario(60_000);
    MiteLedger ledger = new MiteLedger(0);
    CentralRun.watch(scenario, 60_000, scenario.plans().get(0), ledger);
    DailyTable table = CentralRun.of(scenario, 60_000, scenario.plans()).get(0).table();
    assertTrue(table.lost(), "the colony is lost");
    assertEquals(table.days(), ledger.entries().size());
  }
}
