package org.undercap.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class WeighableOutcomesTest {
  private static final Outcome ALL = Outcome.LOST;
  private static final Outcome OF_THE_LIVING = Outcome.MITES_AT_END;

  private static OutcomeTable table() {
    OutcomeTable table = new OutcomeTable(5);
    System.arraycopy(new double[] {5, 1, 4, 2, 3}, 0, table.values(ALL), 0, 5);
    System.arraycopy(
        new double[] {50, Double.NaN, 40, 20, 30}, 0, table.values(OF_THE_LIVING), 0, 5);
    return table;
  }

  @Test
  void equalWeightsGiveTheUsualAverages() {
    Averages equal = new WeighableOutcomes(table()).with(new double[] {2, 2, 2, 2, 2});
    assertEquals(table().median(ALL), equal.median(ALL));
    assertEquals(table().mean(ALL), equal.mean(ALL), 1e-12);
    assertEquals(35, equal.mean(OF_THE_LIVING), 1e-12, "the one that was lost has no mites");
  }

  @Test
  void weightsAreReadAgain() {
    double[] weights = {0, 0, 0, 1, 1};
    Averages some = new WeighableOutcomes(table()).with(weights);
    assertEquals(2, some.median(ALL));
    assertEquals(25, some.mean(OF_THE_LIVING), 1e-12);
    weights[0] = 6;
    assertEquals(5, some.median(ALL));
    assertEquals((6 * 50 + 20 + 30) / 8.0, some.mean(OF_THE_LIVING), 1e-12);
  }

  @Test
  void whatNoMemberHasIsNoNumber() {
    Averages none = new WeighableOutcomes(table()).with(new double[] {0, 1, 0, 0, 0});
    assertEquals(Double.NaN, none.median(OF_THE_LIVING));
    assertEquals(Double.NaN, none.mean(OF_THE_LIVING));
    assertEquals(1, none.median(ALL));
  }
}
