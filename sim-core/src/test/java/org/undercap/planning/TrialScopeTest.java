package org.undercap.planning;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.undercap.comparison.Ranking;
import org.undercap.ensemble.Ensemble;
import org.undercap.ensemble.Outcome;
import org.undercap.ensemble.OutcomeTable;
import org.undercap.ensemble.Trials;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.Method;

class TrialScopeTest {
  /** What a search shows is what a comparison of the same plan on the same members shows. */
  @Test
  void theShortenedRunGivesTheSameOutcomes() {
    Scenario whole = Facts.small();
    TrialScope scope = TrialScope.of(whole);
    assertEquals(LocalDate.of(2027, 1, 1), scope.scenario().end());
    assertTrue(scope.scenario().end().isBefore(whole.end()));
    Method gel = Facts.method("thymol-gel");
    Plan plan = new Plan("gel", gel.usual().course().of(gel, Facts.START));
    OutcomeTable all =
        new Ensemble(whole, Facts.mites(whole).belief(), Facts.settings(70, 1))
            .run(List.of(plan), List.of(), members -> {})
            .get(0)
            .outcomes();
    Trials trials =
        new Trials(scope.scenario(), Facts.mites(whole).belief(), Facts.settings(70, 2));
    OutcomeTable part = trials.run(List.of(Plan.doNothing(), plan)).get(1);
    for (Outcome outcome : List.of(Ranking.HARM, Outcome.MITES_AT_MIDWINTER)) {
      assertArrayEquals(all.of(outcome), part.of(outcome), outcome.header());
    }
  }

  @Test
  void theFirstMembersAreTheSameInALargerEnsemble() {
    Scenario scenario = TrialScope.of(Facts.small()).scenario();
    OutcomeTable few =
        new Trials(scenario, Facts.mites(scenario).belief(), Facts.settings(8, 1))
            .run(List.of(Plan.doNothing()))
            .get(0);
    OutcomeTable many =
        new Trials(scenario, Facts.mites(scenario).belief(), Facts.settings(72, 1))
            .run(List.of(Plan.doNothing()))
            .get(0);
    double[] first = Arrays.copyOf(many.of(Ranking.HARM), 8);
    assertArrayEquals(first, few.of(Ranking.HARM));
  }
}
