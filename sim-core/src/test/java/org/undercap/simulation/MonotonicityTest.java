package org.undercap.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.undercap.ForAll;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.treatment.Circumstances;
import org.undercap.treatment.EfficacyProfile;
import org.undercap.treatment.Method;
import org.undercap.treatment.PlanStep;
import org.undercap.treatment.Release;
import org.undercap.treatment.Response;
import org.undercap.treatment.SideEffects;
import org.undercap.treatment.TemperatureResponse;
import org.undercap.treatment.UsualUse;

/**
 * More mites in, or fewer killed, and there are more mites. This is a theorem only as long as the
 * mites have not changed the bees and do not share cells with the mites that make the difference:
 * until then the same bees carry the mites through the same days, and the numbers of mites are sums
 * with weights that are not negative. A mite that enters a cell is shut in until the bee emerges,
 * so the theorem holds for as many days as worker brood is sealed after the first day on which the
 * runs differ. Later it mostly holds, and the last tests show how it can fail.
 */
class MonotonicityTest {
  private static final int CASES = 40;
  private static final List<DailyColumn> MITES =
      List.of(
          DailyColumn.MITES_ON_BEES,
          DailyColumn.MITES_IN_WORKER_CELLS,
          DailyColumn.MITES_IN_DRONE_CELLS);

  /** Kills mites on bees, and nothing else. */
  private static Method pureKill(double hazard) {
    return method(new Response.Constant(hazard), SideEffects.NONE);
  }

  private static Method method(Response response, SideEffects harm) {
    EfficacyProfile profile =
        new EfficacyProfile(
            new Release.Plateau(10, 1), new TemperatureResponse.None(), response, 0, harm);
    return new Method(
        "trial",
        "trial",
        "trial",
        "trial",
        profile,
        1,
        0,
        UsualUse.ONCE,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        0,
        false,
        List.of(),
        "",
        List.of(),
        "");
  }

  private static RandomCase and(RandomCase one, PlanStep more) {
    List<PlanStep> steps = new ArrayList<>(one.steps());
    steps.add(more);
    return one.withSteps(steps);
  }

  private static RandomCase onlyPhoretic(RandomCase one) {
    return one.withSteps(
        one.steps().stream()
            .filter(
                s ->
                    !(s instanceof PlanStep.Application a)
                        || !a.method().profile().reachesSealedBrood())
            .toList());
  }

  /** Days from the first difference on in which the theorem holds. */
  private static int shutIn(RandomCase one) {
    return (int) one.parameters().value(ParameterId.BROOD_WORKER_DAYS, 2) + 1;
  }

  private static void neverMore(RandomCase few, RandomCase many, int days) {
    DailyTable less = few.run().table();
    DailyTable more = many.run().table();
    for (int day = 0; day < Math.min(days, Math.min(less.days(), more.days())); day++) {
      assertEquals(less.adults(day), more.adults(day), "adults differ on day " + day);
      for (DailyColumn column : MITES) {
        double most = more.at(column, day);
        assertTrue(
            less.at(column, day) <= most + 1e-9 * Math.max(1, most),
            "day " + day + " " + column + " " + less.at(column, day) + " > " + most);
      }
    }
  }

  private static void shutInTheorem(
      UnaryOperator<RandomCase> before, UnaryOperator<RandomCase> fewer, int firstDifference) {
    ForAll.cases(
        CASES,
        RandomCases::any,
        RandomCase::simpler,
        one -> {
          RandomCase many = before.apply(one);
          neverMore(fewer.apply(many), many, firstDifference + shutIn(one) + 1);
        });
  }

  @Test
  void fewerArrivalsNeverMeanMoreMites() {
    shutInTheorem(one -> one, one -> one.withMites(one.mites(), one.arriving() * 0.7), 0);
  }

  @Test
  void anotherTreatmentNeverMeansMoreMites() {
    shutInTheorem(
        one -> one,
        one -> and(one, new PlanStep.Application(one.start().plusDays(5), pureKill(0.1), 1)),
        5);
  }

  @Test
  void lessResistanceNeverMeansMoreMites() {
    shutInTheorem(MonotonicityTest::onlyPhoretic, MonotonicityTest::lessResistant, 0);
  }

  private static RandomCase lessResistant(RandomCase one) {
    Circumstances c = one.circumstances();
    Map<String, Double> half = new HashMap<>();
    c.resistantShares().forEach((substance, share) -> half.put(substance, share / 2));
    return one.withCircumstances(
        new Circumstances(c.openFloor(), c.humid(), half, c.peakEggs(), c.parameters()));
  }

  /** With few mites the colony is as good as healthy, and the rule holds for a whole season. */
  @Test
  void whileMitesAreFewTheRuleHoldsAllSeason() {
    ForAll.cases(
        CASES,
        RandomCases::any,
        RandomCase::simpler,
        one -> {
          RandomCase many = one.withDays(150).withMites(1, 0);
          PlanStep more = new PlanStep.Application(one.start().plusDays(5), pureKill(0.1), 1);
          DailyTable less = and(many, more).run().table();
          DailyTable table = many.run().table();
          for (int day = 0; day < Math.min(less.days(), table.days()); day++) {
            assertTrue(less.mites(day) <= table.mites(day) * (1 + 1e-9), "day " + day);
          }
        });
  }

  private static RandomCase infested(double mites) {
    return new RandomCase(
        ClimateCatalogue.shipped().get("central-european"),
        LocalDate.of(2023, 7, 1),
        300,
        ParameterSet.shipped(),
        20_000,
        1,
        mites,
        0,
        List.of(),
        Circumstances.usual(1650));
  }

  /** The mites of a lost colony are gone with it; a treatment that saves it leaves some. */
  @Test
  void savedColonyHasMoreMitesInTheEndThanALostOne() {
    RandomCase untreated = infested(6000);
    RandomCase treated = untreated;
    for (int day = 0; day < 30; day += 10) {
      LocalDate date = untreated.start().plusDays(day);
      treated = and(treated, new PlanStep.Application(date, pureKill(0.5), 1));
    }
    assertTrue(untreated.run().table().lost());
    assertFalse(treated.run().table().lost());
    assertEquals(0, untreated.run().end().colony().mites(0));
    assertTrue(treated.run().end().colony().mites(0) > 1);
  }

  /** Fewer bees for each cell: the mites find cells sooner. */
  @Test
  void treatmentThatOnlyHarmsBeesLeavesMoreMites() {
    RandomCase untreated = infested(100).withDays(31);
    Method harm = method(new Response.Constant(0), new SideEffects(0, 0.05, 0));
    RandomCase treated = and(untreated, new PlanStep.Application(untreated.start(), harm, 1));
    assertTrue(treated.run().table().mites(30) > 1.01 * untreated.run().table().mites(30));
  }
}
