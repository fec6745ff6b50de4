package org.undercap.monitoring;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.climate.SeasonDay;
import org.undercap.model.ColonyLanes;
import org.undercap.model.ModelParameters;
import org.undercap.model.Part;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.simulation.DailyDrivers;
import org.undercap.simulation.DailyTable;
import org.undercap.simulation.Simulator;
import org.undercap.simulation.StartShape;
import org.undercap.treatment.Circumstances;
import org.undercap.treatment.Interventions;
import org.undercap.treatment.MethodCatalogue;
import org.undercap.treatment.PlanStep;

class MitePosteriorTest {
  private static final Climate CLIMATE = ClimateCatalogue.shipped().get("temperate-oceanic");
  private static final LocalDate DAY = LocalDate.of(2026, 8, 20);
  private static final double BEES = 20_000;
  private static final double BROOD = 16_000;
  private static final CountedColony COLONY = CountedColony.of(CLIMATE, DAY, BEES, BROOD);

  private static Wash wash(int mites, int bees) {
    return new Wash(DAY, bees, mites, WashMethod.ALCOHOL);
  }

  private static MiteEstimate estimate(Count... counts) {
    return MitePosterior.of(COLONY, List.of(counts), 1).estimate();
  }

  private static ColonyLanes colony(double mites) {
    ColonyLanes colony =
        StartShape.at(CLIMATE, SeasonDay.of(DAY), ModelParameters.of(ParameterSet.shipped()));
    colony.scaleTo(0, BEES, BROOD, mites);
    return colony;
  }

  /** What boards would catch in one colony of middle values; the test's own run. */
  private static double caught(double mites, int days, PlanStep... steps) {
    Circumstances usual = Circumstances.usual(CLIMATE.eggs().max());
    DailyDrivers drivers = DailyDrivers.of(CLIMATE, DAY, days, day -> 0, 1);
    DailyTable table = DailyTable.of(drivers, 0);
    new Simulator(ModelParameters.of(ParameterSet.shipped()), drivers)
        .run(colony(mites), Interventions.of(List.of(steps), usual), List.of(table));
    double fall = 0;
    for (int day = 0; day < days; day++) {
      fall += table.miteFall(day);
    }
    return 0.9 * fall;
  }

  @Test
  void manyWashedBeesGiveTheColonyBack() {
    double perBee = colony(2_000).total(Part.MITES_ON_BEES, 0) / BEES;
    MiteEstimate estimate = estimate(wash((int) Math.round(9_500 * perBee), 10_000));
    assertEquals(2_000, estimate.mites().median(), 100);
    assertEquals(100 * perBee, estimate.mitesPer100Bees().median(), 5 * perBee);
    assertTrue(estimate.warnings().isEmpty());
  }

  @Test
  void moreBeesInTheJarNarrowTheInterval() {
    double few = estimate(wash(4, 100)).mites().logWidth();
    double usual = estimate(wash(12, 300)).mites().logWidth();
    double many = estimate(wash(120, 3_000)).mites().logWidth();
    assertTrue(few > usual && usual > many, few + " " + usual + " " + many);
  }

  @Test
  void unevenPlacesWidenTheInterval() {
    Circumstances usual = COLONY.circumstances();
    CountedColony uneven =
        COLONY.withSteps(
            List.of(),
            new Circumstances(
                false,
                false,
                usual.resistantShares(),
                usual.peakEggs(),
                usual.parameters().with(ParameterId.COUNT_SPREAD_WASH, 0.4)));
    double even = MitePosterior.of(COLONY, List.of(wash(12, 300)), 1).mites().logWidth();
    double wide = MitePosterior.of(uneven, List.of(wash(12, 300)), 1).mites().logWidth();
    assertTrue(wide > 1.2 * even, wide + " " + even);
  }

  @Test
  void moreMitesFoundMeanMoreMites() {
    double before = 0;
    for (int found : new int[] {0, 1, 3, 9, 27, 81, 243}) {
      double median = estimate(wash(found, 300)).mites().median();
      assertTrue(median > before, found + " found");
      before = median;
    }
  }

  @Test
  void nothingFoundIsAnUpperLimit() {
    MiteEstimate none = estimate(wash(0, 300));
    assertEquals(Set.of(EstimateWarning.NOTHING_FOUND), none.warnings());
    double one = estimate(wash(1, 300)).mites().interval(0.95).high();
    double upper = none.mites().interval(0.95).high();
    assertTrue(upper > 50 && upper < one, upper + " mites");
  }

  @Test
  void everyBeeInfestedIsALowerLimit() {
    MiteEstimate all = estimate(wash(300, 300));
    assertEquals(Set.of(EstimateWarning.SATURATED), all.warnings());
    assertTrue(all.mites().interval(0.95).low() > BEES);
    MiteEstimate more = estimate(wash(900, 300));
    assertEquals(all.mites().median(), more.mites().median());
  }

  @Test
  void smallSamplesAreNamed() {
    assertTrue(estimate(wash(2, 99)).warnings().contains(EstimateWarning.SMALL_SAMPLE));
    assertFalse(estimate(wash(2, 100)).warnings().contains(EstimateWarning.SMALL_SAMPLE));
  }

  @Test
  void conflictingCountsAreFlaggedAndLikeOnesAreNot() {
    MiteEstimate conflict = estimate(wash(6, 300), wash(60, 300));
    assertTrue(conflict.warnings().contains(EstimateWarning.CONFLICT));
    assertTrue(conflict.counts().stream().anyMatch(check -> check.probability() < 0.01));
    MiteEstimate like = estimate(wash(9, 300), wash(14, 300));
    assertEquals(Set.of(), like.warnings());
    assertTrue(like.counts().stream().allMatch(check -> check.probability() > 0.05));
  }

  @Test
  void twoWashesAreOneWashOfAllTheirBees() {
    MiteEstimate two = estimate(wash(9, 300), wash(14, 300));
    MiteEstimate one = estimate(wash(23, 600));
    assertEquals(one.mites().median(), two.mites().median(), 1e-6 * one.mites().median());
  }

  @Test
  void exactIntervalsStandBesideTheEstimate() {
    MiteEstimate estimate =
        estimate(wash(9, 300), new Board(DAY, 3, 12), new DroneCells(DAY, 100, 9));
    Interval perHundred = estimate.counts().get(0).exact();
    assertEquals(1.38, perHundred.low(), 0.005);
    assertEquals(5.62, perHundred.high(), 0.005);
    Interval perDay = estimate.counts().get(1).exact();
    assertEquals(6.201 / 3, perDay.low(), 0.001);
    assertEquals(20.962 / 3, perDay.high(), 0.001);
    assertTrue(estimate.counts().get(2).exact().contains(9));
  }

  @Test
  void boardsGiveBackTheColonyThatLetTheMitesFall() {
    double caught = caught(1_500, 5);
    Count board = new Board(DAY.plusDays(5), 5, caught);
    MiteDistribution mites = MitePosterior.of(COLONY, List.of(board), 1).mites();
    assertEquals(1_500, mites.median(), 120);
    assertTrue(mites.interval(0.95).low() < 1_100 && mites.interval(0.95).high() > 2_000);
  }

  @Test
  void boardsAfterATreatmentCountWhatItKilled() {
    PlanStep oxalic =
        new PlanStep.Application(DAY, MethodCatalogue.shipped().get("oxalic-sublimation"), 1);
    Count board = new Board(DAY.plusDays(4), 4, caught(1_500, 4, oxalic));
    CountedColony treated = COLONY.withSteps(List.of(oxalic), COLONY.circumstances());
    double known = MitePosterior.of(treated, List.of(board), 1).mites().median();
    double unknown = MitePosterior.of(COLONY, List.of(board), 1).mites().median();
    assertEquals(1_500, known, 150);
    assertTrue(unknown > 2 * known, unknown + " mites if nobody knew of the treatment");
    Set<WidthSource> sources =
        MitePosterior.of(treated, List.of(board), 1).estimate().widthShares().keySet();
    assertTrue(sources.contains(WidthSource.TREATMENT));
  }

  @Test
  void countsBeforeTheDayAreCarriedToIt() {
    CountedColony later = CountedColony.of(CLIMATE, DAY, BEES, BROOD);
    Count earlier = new Wash(DAY.minusDays(40), 3_000, 60, WashMethod.ALCOHOL);
    double now = MitePosterior.of(later, List.of(earlier), 1).mites().median();
    double then =
        MitePosterior.of(
                CountedColony.of(CLIMATE, DAY.minusDays(40), BEES, BROOD), List.of(earlier), 1)
            .mites()
            .median();
    double arrived =
        MitePosterior.of(later.withArrivals(day -> 5), List.of(earlier), 1).mites().median();
    assertTrue(now > 1.5 * then && now < 4 * then, then + " became " + now);
    assertTrue(arrived > now + 100, now + " and with arrivals " + arrived);
  }

  @Test
  void sharesOfTheWidthAddUpAndFollowTheirCause() {
    MiteEstimate small = estimate(wash(3, 100));
    MiteEstimate large = estimate(wash(400, 10_000));
    for (MiteEstimate estimate : List.of(small, large)) {
      double sum = estimate.widthShares().values().stream().mapToDouble(x -> x).sum();
      assertEquals(1, sum, 1e-12);
      assertEquals(4, estimate.widthShares().size());
    }
    assertTrue(small.widthShares().get(WidthSource.SAMPLE) > 0.8);
    assertTrue(large.widthShares().get(WidthSource.SAMPLE) < 0.3);
    MiteEstimate sugar = estimate(new Wash(DAY, 10_000, 400, WashMethod.SUGAR));
    assertTrue(
        sugar.widthShares().get(WidthSource.METHOD)
            > 3 * large.widthShares().get(WidthSource.METHOD));
  }

  @Test
  void sameSeedSameResult() {
    List<Count> counts = List.of(wash(9, 300), new DroneCells(DAY, 60, 9));
    MiteDistribution first = MitePosterior.of(COLONY, counts, 5).mites();
    MiteDistribution again = MitePosterior.of(COLONY, counts, 5).mites();
    MiteDistribution other = MitePosterior.of(COLONY, counts, 6).mites();
    assertArrayEquals(first.masses(), again.masses());
    assertFalse(Arrays.equals(first.masses(), other.masses()));
    assertEquals(first.median(), other.median(), 0.02 * first.median());
    assertEquals(first.logWidth(), other.logWidth(), 0.03 * first.logWidth());
  }

  @Test
  void membersFollowThePosterior() {
    MitePosterior posterior = MitePosterior.of(COLONY, List.of(wash(9, 300)), 1);
    double[] middle = posterior.sample(new double[] {0.1, 0.5, 0.9}, all(BEES), all(BROOD));
    assertEquals(posterior.mites().median(), middle[1], 0.03 * middle[1]);
    assertTrue(middle[0] < middle[1] && middle[1] < middle[2]);
    assertEquals(middle[2], posterior.sample(0.9, BEES, BROOD), 1e-9 * middle[2]);
    double[] large = posterior.sample(new double[] {0.1, 0.5, 0.9}, all(2 * BEES), all(2 * BROOD));
    for (int i = 0; i < 3; i++) {
      assertEquals(2, large[i] / middle[i], 0.01);
    }
    double hidden = posterior.sample(0.5, BEES, 2 * BROOD);
    assertTrue(hidden > 1.3 * middle[1], "more brood hides more mites");
  }

  private static double[] all(double value) {
    return new double[] {value, value, value};
  }

  @Test
  void cellsOfSeasonsWithoutBroodAreLeftOutOrRefused() {
    LocalDate winter = LocalDate.of(2026, 12, 20);
    CountedColony broodless = CountedColony.of(CLIMATE, winter, 9_000, 0);
    Count cells = new DroneCells(winter, 50, 5);
    Count wash = new Wash(winter, 300, 3, WashMethod.ALCOHOL);
    MiteEstimate estimate = MitePosterior.of(broodless, List.of(cells, wash), 1).estimate();
    assertEquals(Set.of(EstimateWarning.NO_SUCH_BROOD), estimate.warnings());
    assertEquals(List.of(wash), estimate.counts().stream().map(CountCheck::count).toList());
    assertThrows(
        IllegalArgumentException.class, () -> MitePosterior.of(broodless, List.of(cells), 1));
  }

  @Test
  void workerCellsCountToo() {
    MiteEstimate few = estimate(new WorkerCells(DAY, 212, 5));
    MiteEstimate many = estimate(new WorkerCells(DAY, 212, 15));
    assertTrue(many.mites().median() > 2 * few.mites().median());
    Interval exact = many.counts().get(0).exact();
    assertEquals(4.01, exact.low(), 0.01);
    assertEquals(11.40, exact.high(), 0.01);
  }

  @Test
  void inputThatCannotBeIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> MitePosterior.of(COLONY, List.of(), 1));
    assertThrows(
        IllegalArgumentException.class, () -> CountedColony.of(CLIMATE, DAY, Double.NaN, 0));
    assertThrows(IllegalArgumentException.class, () -> COLONY.withWarmerDays(Double.NaN));
    MitePosterior posterior = MitePosterior.of(COLONY, List.of(wash(9, 300)), 1);
    assertThrows(
        IllegalArgumentException.class,
        () -> posterior.sample(new double[2], new double[1], new double[2]));
    assertThrows(IllegalArgumentException.class, () -> posterior.sample(2, BEES, BROOD));
    assertThrows(IllegalArgumentException.class, () -> new Wash(DAY, 0, 1, WashMethod.SOAP));
    assertThrows(IllegalArgumentException.class, () -> new Wash(DAY, 300, -1, WashMethod.SOAP));
    assertThrows(IllegalArgumentException.class, () -> new Board(DAY, 1, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new DroneCells(DAY, 10, 11));
    assertThrows(IllegalArgumentException.class, () -> new WorkerCells(DAY, 0, 0));
  }
}
