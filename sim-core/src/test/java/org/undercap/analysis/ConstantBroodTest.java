package org.undercap.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.undercap.analysis.ConstantBrood.Kind;
import org.undercap.analysis.GrowthElasticities.Elasticity;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.climate.SeasonDay;
import org.undercap.model.ColonyLanes;
import org.undercap.model.ModelParameters;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.simulation.StartShape;

class ConstantBroodTest {
  private static final ParameterSet SHIPPED = ParameterSet.shipped();
  private static final List<ParameterId> MITE_PARAMETERS =
      List.of(
          ParameterId.INVASION_WORKER,
          ParameterId.INVASION_DRONE,
          ParameterId.REPRODUCTION_WORKER,
          ParameterId.REPRODUCTION_DRONE,
          ParameterId.REPRODUCTION_WINTER_FACTOR,
          ParameterId.EMERGENCE_LOSS_MOTHER_WORKER,
          ParameterId.EMERGENCE_LOSS_DAUGHTER_WORKER,
          ParameterId.EMERGENCE_LOSS_MOTHER_DRONE,
          ParameterId.EMERGENCE_LOSS_DAUGHTER_DRONE,
          ParameterId.MITE_DEATH_BROOD_NEST,
          ParameterId.MITE_DEATH_BROODLESS,
          ParameterId.ADULT_WEIGHT);

  private static ColonyLanes colony(int month) {
    return StartShape.at(
        ClimateCatalogue.shipped().get("temperate-oceanic"),
        SeasonDay.of(LocalDate.of(2021, month, 15)),
        ModelParameters.of(SHIPPED));
  }

  private static ConstantBrood constant(ColonyLanes colony, ParameterSet parameters) {
    return new FrozenColony(colony, parameters).brood();
  }

  @Test
  void matrixAndDailyEquationGiveTheSameGrowthInEverySeason() {
    for (int month = 1; month <= 12; month++) {
      ColonyLanes colony = colony(month);
      assertEquals(
          MiteDayMatrix.of(colony, SHIPPED).growth(),
          constant(colony, SHIPPED).dailyGrowth(),
          1e-9,
          "month " + month);
    }
  }

  @Test
  void continuousEquationIsNearAndNearerTheSlowerTheMites() {
    ConstantBrood summer = constant(colony(6), SHIPPED);
    double before = gap(summer);
    assertTrue(before < 0.1, "gap " + before);
    for (int halving = 0; halving < 3; halving++) {
      summer = slower(summer);
      double after = gap(summer);
      assertTrue(after < 0.6 * before, after + " after " + before);
      before = after;
    }
  }

  private static double gap(ConstantBrood c) {
    return Math.abs(c.continuousGrowth() / c.dailyGrowth() - 1);
  }

  private static ConstantBrood slower(ConstantBrood c) {
    return new ConstantBrood(slower(c.worker()), slower(c.drone()), c.death() / 2);
  }

  private static Kind slower(Kind k) {
    return new Kind(k.hazard() / 2, k.returning(), k.sealedDays() * 2);
  }

  @Test
  void handComputedRoot() {
    // Two mites return after 10 days for each that enters; r = 0.05 solves r + a = 2 a exp(-10 r).
    double a = 0.05 / (2 * StrictMath.exp(-0.5) - 1);
    ConstantBrood c = new ConstantBrood(new Kind(a, 2, 10), new Kind(0, 1, 14), 0);
    assertEquals(0.05, c.continuousGrowth(), 1e-12);
    double daily = c.dailyGrowth();
    double entering = -StrictMath.expm1(-a);
    assertEquals(
        StrictMath.exp(daily), 1 - entering + 2 * entering * StrictMath.exp(-10 * daily), 1e-12);
  }

  @Test
  void withoutBroodMitesDie() {
    ConstantBrood c = ConstantBrood.of(10_000, 0, 0, 0, SHIPPED);
    assertEquals(-SHIPPED.value(ParameterId.MITE_DEATH_BROODLESS), c.dailyGrowth(), 1e-12);
    assertEquals(-SHIPPED.value(ParameterId.MITE_DEATH_BROODLESS), c.continuousGrowth(), 1e-12);
  }

  @Test
  void mitesOfWhichNoneReturnAreGoneAsFastAsTheyEnterAndDie() {
    ConstantBrood c = new ConstantBrood(new Kind(0.1, 0, 12), new Kind(0.1, 0, 14), 0.01);
    assertEquals(-0.21, c.dailyGrowth(), 1e-9);
    assertEquals(-0.21, c.continuousGrowth(), 1e-9);
  }

  @Test
  void oneReturningMiteForEachWithoutDeathNeitherGrowsNorShrinks() {
    ConstantBrood c = new ConstantBrood(new Kind(0.1, 1, 12), new Kind(0.02, 1, 14), 0);
    assertEquals(0, c.dailyGrowth(), 1e-12);
    assertEquals(0, c.continuousGrowth(), 1e-12);
  }

  @Test
  void elasticitiesAgreeWithDifferencesOfTheGrowthItself() {
    ColonyLanes colony = colony(6);
    double rate = MiteDayMatrix.of(colony, SHIPPED).growth();
    List<Elasticity> found = GrowthElasticities.of(colony, SHIPPED, MITE_PARAMETERS);
    for (Elasticity one : found) {
      double value = SHIPPED.value(one.parameter());
      double step = 1e-4 * Math.min(value, 1 - Math.min(value, 0.5));
      double above = growth(colony, one.parameter(), value + step);
      double below = growth(colony, one.parameter(), value - step);
      double slope = (above - below) / (2 * step);
      assertEquals(slope, one.slope(), 1e-5 * Math.abs(slope) + 1e-9, one.toString());
      assertEquals(slope * value / rate, one.elasticity(), 1e-4, one.toString());
    }
    assertTrue(found.get(2).elasticity() > 0.5, "daughters of workers count most");
    assertTrue(found.get(9).elasticity() < 0, "death slows growth");
    assertEquals(
        -(found.get(0).elasticity() + found.get(1).elasticity()),
        found.get(11).elasticity(),
        1e-4,
        "only cells for each gram of bees matter");
  }

  private static double growth(ColonyLanes colony, ParameterId id, double value) {
    return MiteDayMatrix.of(colony, SHIPPED.with(id, value)).growth();
  }

  @Test
  void wrongUseIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> ConstantBrood.of(0, 1, 1, 1, SHIPPED));
    assertThrows(IllegalArgumentException.class, () -> ConstantBrood.of(1, -1, 1, 1, SHIPPED));
    assertThrows(IllegalArgumentException.class, () -> ConstantBrood.of(1, 1, 1, 2, SHIPPED));
    assertThrows(IllegalArgumentException.class, () -> new Kind(0.1, 1, 0));
    ParameterSet none = SHIPPED.with(ParameterId.REPRODUCTION_DRONE, 0);
    assertThrows(
        IllegalArgumentException.class,
        () -> GrowthElasticities.of(colony(6), none, List.of(ParameterId.REPRODUCTION_DRONE)));
    assertThrows(
        IllegalArgumentException.class,
        () -> GrowthElasticities.of(colony(6), SHIPPED, List.of(ParameterId.CROWDING_WORKER)));
  }
}
