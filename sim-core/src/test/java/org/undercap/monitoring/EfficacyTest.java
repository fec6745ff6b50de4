package org.undercap.monitoring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;
import org.undercap.source.Bibliography;

class EfficacyTest {
  private static final LocalDate DAY = LocalDate.of(2026, 8, 1);

  private static BeforeAfter pair(long before, long after) {
    return new BeforeAfter(new Tally(before, 300), new Tally(after, 300));
  }

  @Test
  void simpleReductionByHand() {
    // 14 of 310 before, 9 of 305 after: 1 - (9/305) / (14/310) = 1 - 0.029508 / 0.045161
    Wash before = new Wash(DAY, 310, 14, WashMethod.ALCOHOL);
    Wash after = new Wash(DAY.plusDays(30), 305, 9, WashMethod.SOAP);
    Efficacy efficacy = Efficacy.reduction(List.of(BeforeAfter.of(before, after)), 1);
    assertEquals(0.3466, efficacy.estimate(), 1e-4);
    assertTrue(efficacy.exact());
    assertTrue(efficacy.interval().low() < 0 && efficacy.interval().high() > 0.7);
    assertEquals(Verdict.CANNOT_TELL, efficacy.verdict(0.5));
    assertEquals(Verdict.POOR, efficacy.verdict(0.9));
  }

  @Test
  void simpleReductionOfTwoEqualSamplesIsClopperPearson() {
    // given 24 mites in both jars, 4 fell into the second: share 4/24, odds p / (1 - p)
    Interval share = ExactIntervals.clopperPearson(4, 24, 0.95);
    Efficacy efficacy = Efficacy.reduction(List.of(pair(20, 4)), 1);
    assertEquals(0.8, efficacy.estimate(), 1e-12);
    assertEquals(1 - share.high() / (1 - share.high()), efficacy.interval().low(), 1e-12);
    assertEquals(1 - share.low() / (1 - share.low()), efficacy.interval().high(), 1e-12);
  }

  @Test
  void boardsCountByTheDay() {
    // 60 mites in 3 days before, 30 in 5 days after: 1 - 6 / 20
    BeforeAfter boards = BeforeAfter.of(new Board(DAY, 3, 60), new Board(DAY.plusDays(40), 5, 30));
    assertEquals(0.7, Efficacy.reduction(List.of(boards), 1).estimate(), 1e-12);
  }

  @Test
  void abbottByHand() {
    // 6 of 300 treated, 50 of 250 untreated: 1 - 0.02 / 0.2
    Efficacy efficacy = Efficacy.abbott(List.of(new Tally(6, 300)), List.of(new Tally(50, 250)), 1);
    assertEquals(0.9, efficacy.estimate(), 1e-12);
    assertTrue(efficacy.interval().contains(0.9));
  }

  @Test
  void hendersonTiltonByHand() {
    // treated 60 -> 9, untreated 40 -> 60: 1 - (9/60) (40/60) = 0.9
    Efficacy corrected = Efficacy.hendersonTilton(List.of(pair(60, 9)), List.of(pair(40, 60)), 1);
    assertEquals(0.9, corrected.estimate(), 1e-12);
    assertEquals(0.85, Efficacy.reduction(List.of(pair(60, 9)), 1).estimate(), 1e-12);
    assertTrue(corrected.interval().contains(0.9));
  }

  @Test
  void criticalTestByHand() {
    // 950 by the test, 50 by the follow-up: 950 / 1000, Clopper-Pearson of 950 in 1000
    Efficacy efficacy = Efficacy.criticalTest(List.of(new CriticalCount(950, 50)), 1);
    Interval share = ExactIntervals.clopperPearson(950, 1_000, 0.95);
    assertEquals(0.95, efficacy.estimate(), 1e-12);
    assertEquals(share.low(), efficacy.interval().low(), 1e-12);
    assertEquals(share.high(), efficacy.interval().high(), 1e-12);
    assertEquals(Verdict.WORKS, efficacy.verdict(EfficacyMinimum.of("other").share()));
    assertEquals(Verdict.CANNOT_TELL, efficacy.verdict(EfficacyMinimum.of("synthetic").share()));
  }

  @Test
  void conditionalIntervalOfATwoByTwoTable() {
    // the twins of convicted men, a standard example: 2 15 / 10 3, interval 0.0033 to 0.363
    Interval ratio = ExactRatios.ratioOfRatios(2, 15, 10, 3, 0.95);
    assertEquals(0.0033, ratio.low(), 5e-5);
    assertEquals(0.3632, ratio.high(), 5e-5);
    assertEquals(0.025, tail(ratio.low(), true), 1e-9);
    assertEquals(0.025, tail(ratio.high(), false), 1e-9);
  }

  /** Tail of that table by products of plain binomial coefficients. */
  private static double tail(double ratio, boolean upper) {
    double all = 0;
    double some = 0;
    for (int x = 0; x <= 12; x++) {
      double weight = choose(17, x) * choose(13, 12 - x) * Math.pow(ratio, x);
      all += weight;
      some += (upper ? x >= 2 : x <= 2) ? weight : 0;
    }
    return some / all;
  }

  private static double choose(int n, int k) {
    double product = 1;
    for (int i = 1; i <= k; i++) {
      product *= (n - k + i) / (double) i;
    }
    return product;
  }

  @Test
  void nothingLeftAndNothingBefore() {
    Efficacy all = Efficacy.reduction(List.of(pair(100, 0)), 1);
    assertEquals(1, all.estimate());
    assertEquals(1, all.interval().high());
    assertEquals(Verdict.WORKS, all.verdict(0.95));
    assertEquals(Verdict.CANNOT_TELL, Efficacy.reduction(List.of(pair(5, 0)), 1).verdict(0.9));
    assertThrows(IllegalArgumentException.class, () -> Efficacy.reduction(List.of(pair(0, 0)), 1));
    assertThrows(IllegalArgumentException.class, () -> Efficacy.reduction(List.of(pair(0, 3)), 1));
    assertThrows(
        IllegalArgumentException.class,
        () -> Efficacy.hendersonTilton(List.of(pair(9, 3)), List.of(pair(9, 0)), 1));
    assertThrows(
        IllegalArgumentException.class,
        () -> Efficacy.criticalTest(List.of(new CriticalCount(0, 0)), 1));
    assertThrows(IllegalArgumentException.class, () -> Efficacy.reduction(List.of(), 1));
    assertThrows(
        IllegalArgumentException.class,
        () -> Efficacy.abbott(List.of(new Tally(1, 300)), List.of(), 1));
    assertThrows(
        IllegalArgumentException.class,
        () -> Efficacy.hendersonTilton(List.of(pair(9, 3)), List.of(), 1));
  }

  @Test
  void differentMethodsAreNotCompared() {
    Wash alcohol = new Wash(DAY, 300, 12, WashMethod.ALCOHOL);
    Wash sugar = new Wash(DAY, 300, 2, WashMethod.SUGAR);
    assertThrows(IllegalArgumentException.class, () -> BeforeAfter.of(alcohol, sugar));
  }

  @Test
  void moreBeesSettleWhatTheyPromise() {
    Efficacy open = Efficacy.reduction(List.of(pair(100, 5)), 1);
    assertEquals(Verdict.CANNOT_TELL, open.verdict(0.9));
    double factor = open.effortToSettle(0.9).orElseThrow();
    assertTrue(factor > 1 && factor < 10, "factor " + factor);
    BeforeAfter more = pair(Math.round(100 * factor), Math.round(5 * factor));
    assertEquals(Verdict.WORKS, Efficacy.reduction(List.of(more), 1).verdict(0.9));
    assertEquals(OptionalDouble.of(1), open.effortToSettle(0.5));
    assertEquals(OptionalDouble.empty(), open.effortToSettle(0.95));
  }

  /** The width of an interval falls with the square root of the number of colonies. */
  @Test
  void moreColoniesSettleWhatTheyPromise() {
    List<BeforeAfter> four = new ArrayList<>();
    for (int left : new int[] {2, 4, 6, 8}) {
      four.add(pair(50, left));
    }
    Efficacy above = Efficacy.reduction(four, 3);
    assertEquals(4, above.colonies());
    assertEquals(EfficacyFormula.REDUCTION, above.formula());
    assertEquals(0.9, above.estimate(), 1e-12);
    double low = 0.5 * (above.interval().low() + 0.9);
    double reach = (0.9 - above.interval().low()) / (0.9 - low);
    assertEquals(reach * reach, above.effortToSettle(low).orElseThrow(), 1e-9);
    double high = 0.5 * (above.interval().high() + 0.9);
    assertEquals(
        Math.pow((above.interval().high() - 0.9) / (high - 0.9), 2),
        above.effortToSettle(high).orElseThrow(),
        1e-9);
    assertEquals(OptionalDouble.empty(), above.effortToSettle(above.estimate()));
    assertEquals(Verdict.WORKS, above.verdict(above.interval().low()));
    assertEquals(Verdict.CANNOT_TELL, above.verdict(above.interval().high()));
  }

  @Test
  void moreMitesSettleACriticalTest() {
    Efficacy open = Efficacy.criticalTest(List.of(new CriticalCount(96, 4)), 1);
    assertEquals(Verdict.CANNOT_TELL, open.verdict(0.95));
    assertEquals(OptionalDouble.empty(), open.effortToSettle(0.96));
    double factor = open.effortToSettle(0.93).orElseThrow();
    CriticalCount more = new CriticalCount(Math.round(96 * factor), Math.round(4 * factor));
    assertEquals(Verdict.WORKS, Efficacy.criticalTest(List.of(more), 1).verdict(0.93));
    CriticalCount less =
        new CriticalCount(Math.round(96 * factor / 1.3), Math.round(4 * factor / 1.3));
    assertEquals(Verdict.CANNOT_TELL, Efficacy.criticalTest(List.of(less), 1).verdict(0.93));
  }

  @Test
  void coloniesThatDifferWidenTheInterval() {
    List<BeforeAfter> alike = new ArrayList<>();
    List<BeforeAfter> unlike = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      alike.add(pair(30, 6));
      unlike.add(pair(30, i % 2 == 0 ? 1 : 11));
    }
    Efficacy same = Efficacy.reduction(alike, 3);
    Efficacy different = Efficacy.reduction(unlike, 3);
    assertEquals(same.estimate(), different.estimate(), 1e-12);
    assertFalse(same.exact());
    assertEquals(Efficacy.reduction(List.of(sumOf(alike)), 3).interval(), same.interval());
    assertTrue(
        different.interval().high() - different.interval().low()
            > 1.2 * (same.interval().high() - same.interval().low()));
    assertEquals(different.interval(), Efficacy.reduction(unlike, 3).interval());
  }

  private static BeforeAfter sumOf(List<BeforeAfter> colonies) {
    return colonies.stream().reduce(BeforeAfter::plus).orElseThrow();
  }

  @Test
  void intervalsHoldTheTruthOftenEnough() {
    UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(11);
    int reduction = 0;
    int corrected = 0;
    int pairs = 600;
    for (int i = 0; i < pairs; i++) {
      BeforeAfter treated = pair(hits(random, 0.08), hits(random, 0.02));
      BeforeAfter untreated = pair(hits(random, 0.08), hits(random, 0.12));
      reduction += Efficacy.reduction(List.of(treated), 1).interval().contains(0.75) ? 1 : 0;
      corrected +=
          Efficacy.hendersonTilton(List.of(treated), List.of(untreated), 1)
                  .interval()
                  .contains(1 - 0.25 / 1.5)
              ? 1
              : 0;
    }
    assertTrue(reduction >= 0.95 * pairs, reduction + " of " + pairs);
    assertTrue(corrected >= 0.95 * pairs, corrected + " of " + pairs);
  }

  private static int hits(UniformRandomProvider random, double p) {
    int hits = 0;
    for (int i = 0; i < 300; i++) {
      hits += random.nextDouble() < p ? 1 : 0;
    }
    return hits;
  }

  @Test
  void formulasAndMinimumsHaveSources() {
    for (EfficacyFormula formula : EfficacyFormula.values()) {
      assertTrue(Bibliography.shipped().find(formula.sourceKey()).isPresent(), formula.words());
    }
    assertEquals(0.90, EfficacyMinimum.of("other").share());
    assertEquals(0.95, EfficacyMinimum.of("synthetic").share());
    assertEquals(2, EfficacyMinimum.all().size());
  }
}
