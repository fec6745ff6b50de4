package org.undercap.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.undercap.analysis.GrowthRates;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.parameter.ParameterSpace;
import org.undercap.parameter.Prior;

class GrowthFitTest {
  private static final Climate CENTRAL = ClimateCatalogue.shipped().get("central-european");

  @Test
  void aKnownReproductionIsFoundAgainFromItsGrowthRate() {
    double truth = 1.15;
    double rate =
        GrowthRates.overSeason(
                CENTRAL, ParameterSet.shipped().with(ParameterId.REPRODUCTION_WORKER, truth))
            .rate();
    ParameterSpace space =
        ParameterSpace.empty().with(ParameterId.REPRODUCTION_WORKER, Prior.uniform(0.5, 2));
    GrowthFitResult found =
        GrowthFit.of(List.of(new GrowthTarget(CENTRAL, rate, rate - 0.002, rate + 0.002)), space)
            .run(FitSettings.usual(1));
    FittedParameter fitted = found.fit().parameter("reproduction.worker");
    assertEquals(truth, fitted.value(), 1e-4);
    assertTrue(fitted.low() < truth && truth < fitted.high());
    assertFalse(fitted.unidentified());
    // The ends of the interval give the ends of the interval of the target.
    double slow =
        GrowthRates.overSeason(
                CENTRAL, ParameterSet.shipped().with(ParameterId.REPRODUCTION_WORKER, fitted.low()))
            .rate();
    assertEquals(rate - 0.002, slow, 3e-5);
    GrowthFitResult.Reached reached = found.reached().get(0);
    assertEquals(rate, reached.rate(), 1e-6);
    assertEquals(rate - 0.002, reached.low(), 5e-4);
    assertTrue(reached.inside());
    assertEquals(fitted.value(), found.parameters().value(ParameterId.REPRODUCTION_WORKER));
  }

  @Test
  void onePublishedRateTellsACombinationAndThePriorsTheRest() {
    ParameterSpace space =
        ParameterSpace.empty()
            .withSpreadOf(
                ParameterId.REPRODUCTION_WORKER,
                ParameterId.EMERGENCE_LOSS_MOTHER_WORKER,
                ParameterId.INVASION_DRONE,
                ParameterId.MITE_DEATH_BROODLESS);
    GrowthTarget target = new GrowthTarget(CENTRAL, 0.018, 0.0175, 0.0185);
    GrowthFit calibration = GrowthFit.of(List.of(target), space);
    GrowthFitResult found = calibration.run(FitSettings.usual(1).withStarts(2));
    GrowthFitResult.Reached reached = found.reached().get(0);
    assertTrue(Math.abs(reached.rate() - 0.018) < Math.abs(reached.before() - 0.018));
    assertTrue(reached.inside(), reached.toString());
    assertTrue(found.fit().unidentified().contains("mite.death.broodless"));
    assertFalse(found.fit().unidentified().contains("reproduction.worker"));
    assertTrue(found.fit().correlations().get(0).get(1) > 0.2, "loss makes up for daughters");
    assertEquals(2, found.fit().startsAgreeing());
    GrowthFitResult again = calibration.run(FitSettings.usual(1).withStarts(2));
    assertEquals(found.fit().parameters(), again.fit().parameters());
  }

  @Test
  void twentyStartsReachTheSameOptimum() {
    ParameterSpace space =
        ParameterSpace.empty()
            .with(ParameterId.REPRODUCTION_WORKER, Prior.uniform(0.5, 1.5))
            .withSpreadOf(ParameterId.EMERGENCE_LOSS_MOTHER_WORKER, ParameterId.INVASION_DRONE);
    GrowthTarget target = new GrowthTarget(CENTRAL, 0.021, 0.017, 0.025);
    GrowthFit fit = GrowthFit.of(List.of(target), space);
    GrowthFitResult found = fit.run(FitSettings.usual(3).withStarts(20));
    assertEquals(20, found.fit().startsAgreeing());
    assertEquals(0.021, found.reached().get(0).rate(), 1e-4);
    assertEquals(0.35, found.fit().parameter("emergence.loss.mother.worker").value(), 1e-3);
  }

  @Test
  void valuesWithWhichBeesDoNotLiveAreLeftOut() {
    ParameterSpace space =
        ParameterSpace.empty().with(ParameterId.ADULT_LIFE_SUMMER, Prior.uniform(3, 40));
    GrowthTarget target = new GrowthTarget(CENTRAL, 0.025, 0.0245, 0.0255);
    GrowthFitResult found =
        GrowthFit.of(List.of(target), space).run(FitSettings.usual(1).withStarts(1));
    assertTrue(found.reached().get(0).inside(), found.reached().toString());
  }

  @Test
  void wrongUseIsRefused() {
    assertThrows(
        IllegalArgumentException.class, () -> new GrowthTarget(CENTRAL, 0.02, 0.025, 0.03));
    assertThrows(IllegalArgumentException.class, () -> new GrowthTarget(CENTRAL, 0.02, 0.02, 0.02));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            GrowthFit.of(
                List.of(new GrowthTarget(CENTRAL, 0.02, 0.01, 0.03)), ParameterSpace.empty()));
    assertThrows(
        IllegalArgumentException.class, () -> GrowthFit.of(List.of(), ParameterSpace.empty()));
  }
}
