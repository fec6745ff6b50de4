package org.undercap.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.undercap.analysis.ConstantBrood.Kind;
import org.undercap.analysis.GrowthStudy.Influence;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.climate.SeasonDay;
import org.undercap.model.ModelParameters;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.simulation.StartShape;

class GrowthStudyTest {
  private static final ParameterSet SHIPPED = ParameterSet.shipped();

  private static Climate climate(String id) {
    return ClimateCatalogue.shipped().get(id);
  }

  @ParameterizedTest
  @ValueSource(strings = {"cool-oceanic", "central-european", "southern-temperate"})
  void waysThatMustAgreeDo(String id) {
    GrowthStudy study = GrowthStudy.of(climate(id), SHIPPED);
    assertEquals(6, study.months().size());
    assertTrue(study.disagreement() < 1e-12, "difference " + study.disagreement());
    assertEquals(study.season().rate(), study.meanByMatrix(), 0.005);
    assertTrue(study.meanByEquation() > study.meanByMatrix(), "a day's delay is left out");
    assertEquals(1, study.meanByEquation() / study.meanByMatrix(), 0.06);
  }

  @Test
  void endsCountByHalfAndTheLargestDifferenceIsTold() {
    GrowthStudy real = GrowthStudy.of(climate("central-european"), SHIPPED);
    LocalDate date = LocalDate.of(2021, Month.JUNE, 15);
    GrowthStudy made =
        new GrowthStudy(
            real.climate(),
            real.season(),
            List.of(
                new GrowthStudy.MonthGrowth(date, 1, 0.020, 0.021, 0.021, 0.030),
                new GrowthStudy.MonthGrowth(date, 1, 0.031, 0.031, 0.029, 0.040),
                new GrowthStudy.MonthGrowth(date, 1, 0.011, 0.011, 0.012, 0.020)),
            List.of());
    assertEquals((0.021 / 2 + 0.031 + 0.011 / 2) / 2, made.meanByMatrix(), 1e-12);
    assertEquals((0.030 / 2 + 0.040 + 0.020 / 2) / 2, made.meanByEquation(), 1e-12);
    assertEquals(0.002, made.disagreement(), 1e-12);
  }

  @Test
  void theSouthIsSixMonthsLater() {
    GrowthStudy study = GrowthStudy.of(climate("southern-temperate"), SHIPPED);
    assertEquals(LocalDate.of(2021, Month.OCTOBER, 15), study.months().get(0).date());
    assertEquals(LocalDate.of(2022, Month.MARCH, 15), study.months().get(5).date());
  }

  @Test
  void elasticitiesOfASeasonAgreeWithRunsOfItAndSumsHold() {
    Climate central = climate("central-european");
    GrowthStudy study = GrowthStudy.of(central, SHIPPED);
    Influence first = study.elasticities().get(0);
    assertEquals(ParameterId.REPRODUCTION_WORKER, first.parameter());
    double rate = study.season().rate();
    double more = growth(central, 1.02);
    assertEquals((more - rate) / rate / 0.02, first.season().getAsDouble(), 0.01);
    double cells =
        held(study, ParameterId.INVASION_WORKER) + held(study, ParameterId.INVASION_DRONE);
    assertEquals(-cells, held(study, ParameterId.ADULT_WEIGHT), 1e-4);
    assertTrue(
        study.elasticities().stream()
            .anyMatch(i -> i.held().isEmpty() && i.season().orElse(0) < -0.1),
        "bees matter too");
  }

  private static double growth(Climate climate, double daughters) {
    return GrowthRates.overSeason(climate, SHIPPED.with(ParameterId.REPRODUCTION_WORKER, daughters))
        .rate();
  }

  private static double held(GrowthStudy study, ParameterId id) {
    return study.elasticities().stream()
        .filter(i -> i.parameter() == id)
        .findFirst()
        .orElseThrow()
        .held()
        .getAsDouble();
  }

  /**
   * The model's days divided ever finer: the gap between the two equations falls with the step, and
   * twice the finer less the coarser, in which the first order of the step is gone, meets the
   * equation in continuous time to 1e-6 per day.
   */
  @Test
  void theDailyEquationBecomesTheDelayEquationInTheLimitOfSmallSteps() {
    for (Month month : List.of(Month.MAY, Month.JULY, Month.SEPTEMBER)) {
      ConstantBrood brood =
          new FrozenColony(
                  StartShape.at(
                      climate("central-european"),
                      SeasonDay.of(LocalDate.of(2021, month, 15)),
                      ModelParameters.of(SHIPPED)),
                  SHIPPED)
              .brood();
      ToDoubleFunction<Integer> stepped = parts -> parts * inSteps(brood, parts).dailyGrowth();
      double exact = brood.continuousGrowth();
      double coarse = stepped.applyAsDouble(64);
      double fine = stepped.applyAsDouble(128);
      assertEquals(2, (coarse - exact) / (fine - exact), 0.05, "first order in the step");
      assertEquals(exact, 2 * fine - coarse, 1e-6);
      assertEquals(exact, stepped.applyAsDouble(4096), 1e-6);
    }
  }

  /** The same brood with a step of a day divided by a number as the unit of time. */
  private static ConstantBrood inSteps(ConstantBrood brood, int parts) {
    return new ConstantBrood(
        inSteps(brood.worker(), parts), inSteps(brood.drone(), parts), brood.death() / parts);
  }

  private static Kind inSteps(Kind kind, int parts) {
    return new Kind(kind.hazard() / parts, kind.returning(), kind.sealedDays() * parts);
  }

  @Test
  void valuesUnderWhichNothingLivesGiveNoGrowth() {
    Climate central = climate("central-european");
    List<Optional<SeasonGrowth>> growth =
        GrowthRates.whereTheyLive(
            central, List.of(SHIPPED, SHIPPED.with(ParameterId.ADULT_LIFE_SUMMER, 3), SHIPPED));
    assertTrue(growth.get(0).isPresent());
    assertTrue(growth.get(1).isEmpty());
    assertEquals(growth.get(0), growth.get(2));
  }
}
