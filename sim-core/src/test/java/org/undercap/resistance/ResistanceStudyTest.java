package org.undercap.resistance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.undercap.comparison.CentralRun;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;
import org.undercap.scenario.io.ScenarioReader;
import org.undercap.simulation.DailyColumn;
import org.undercap.simulation.DailyTable;

/** What resistance does under schemes, and where the answer is known. */
class ResistanceStudyTest {
  private static final String TEXT =
      """
      undercap: 1
      name: Study
      study: true
      site: {climate: central-european}
      colony: {date: 2026-07-01, bees: 25000, brood: 20000 cells}
      mites: {in-colony: 300}
      arrivals: none
      plans:
        - name: Strips
          steps:
            - {date: 2026-08-01, treatment: pyrethroid-strips}
        - name: Acid
          steps:
            - {date: 2026-08-01, treatment: formic-pads}
            - {date: 2026-12-15, treatment: oxalic-dribble}
      """;
  private static final String STRIPS = "pyrethroid";

  private Scenario scenario;

  @BeforeEach
  void read() throws IOException {
    scenario =
        ScenarioReader.read(
                "study.yaml", new ByteArrayInputStream(TEXT.getBytes(StandardCharsets.UTF_8)))
            .orThrow();
  }

  private List<ResistanceYear> run(int years, double share, int... plans) {
    List<Plan> scheme = Arrays.stream(plans).mapToObj(scenario.plans()::get).toList();
    return ResistanceStudy.run(scenario, 300, scheme, years, Map.of(STRIPS, share));
  }

  private static double last(List<ResistanceYear> years) {
    return years.get(years.size() - 1).resistant().get(STRIPS);
  }

  @Test
  void withoutResistantMitesItIsTheOrdinaryRun() {
    ResistanceYear year = run(1, 0, 1).get(0);
    DailyTable table =
        CentralRun.of(scenario.withEnd(scenario.start().plusYears(1)), 300, scenario.plans())
            .get(1)
            .table();
    assertEquals(table.mites(365), year.mites(), 1e-9 * year.mites());
    assertEquals(0, last(List.of(year)));
  }

  @Test
  void withoutTreatmentNothingIsSelected() {
    assertEquals(0.01, last(run(1, 0.01, 0)), 1e-12);
    assertEquals(0.01, last(run(2, 0.01, 2)), 1e-12);
  }

  /**
   * With few resistant mites the share rises by the factor that the model's kill leaves: one over
   * the product of what each day leaves of the susceptible.
   */
  @Test
  void rareMitesRiseByTheKillOfTheSusceptible() {
    double share = 1e-7;
    double rise = last(run(1, share, 1)) / share;
    DailyTable table =
        CentralRun.of(scenario.withEnd(scenario.start().plusYears(1)), 300, scenario.plans())
            .get(1)
            .table();
    double expected = 1;
    for (int day = 0; day < 365; day++) {
      double after = table.mites(day + 1);
      double killed =
          table.at(DailyColumn.MITES_KILLED_ON_BEES, day)
              + table.at(DailyColumn.MITES_KILLED_IN_CELLS, day);
      expected *= (after + killed) / after;
    }
    assertEquals(expected, rise, 1e-3 * expected);
    assertTrue(rise > 10, "strips select: " + rise);
  }

  @Test
  void sharesStayWithinBoundsAndRiseFasterWithoutRotation() {
    List<ResistanceYear> always = run(4, 0.001, 1);
    List<ResistanceYear> rotated = run(4, 0.001, 1, 2);
    double before = 0.001;
    for (ResistanceYear year : always) {
      double share = year.resistant().get(STRIPS);
      assertTrue(share >= before && share <= 1, year::toString);
      before = share;
    }
    assertTrue(last(rotated) < last(always), last(rotated) + " < " + last(always));
    assertEquals("Acid", rotated.get(1).plan());
  }

  @Test
  void fullyResistantMitesAreNotKilled() {
    ResistanceYear treated = run(1, 1, 1).get(0);
    assertEquals(1, last(List.of(treated)));
    DailyTable untreated =
        CentralRun.of(scenario.withEnd(scenario.start().plusYears(1)), 300, scenario.plans())
            .get(0)
            .table();
    double mites = untreated.lost() ? 0 : untreated.mites(365);
    assertEquals(mites, treated.lostOn().isPresent() ? 0 : treated.mites(), 1e-6 * (1 + mites));
  }

  @Test
  void refusesWhatCannotBe() {
    assertThrows(IllegalArgumentException.class, () -> run(0, 0.1, 1));
    assertThrows(IllegalArgumentException.class, () -> run(31, 0.1, 1));
    assertThrows(IllegalArgumentException.class, () -> run(1, Double.NaN, 1));
    assertThrows(IllegalArgumentException.class, () -> run(1, 0.1));
    assertEquals(
        List.of("formic acid", "oxalic acid"),
        ResistanceStudy.classes(List.of(scenario.plans().get(2))));
  }
}
