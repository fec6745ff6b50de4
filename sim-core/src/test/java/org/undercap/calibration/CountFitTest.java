package org.undercap.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.monitoring.Board;
import org.undercap.monitoring.Count;
import org.undercap.monitoring.CountLaw;
import org.undercap.monitoring.DroneCells;
import org.undercap.monitoring.Wash;
import org.undercap.monitoring.WashMethod;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.parameter.ParameterSpace;
import org.undercap.parameter.Prior;
import org.undercap.treatment.Circumstances;
import org.undercap.treatment.Interventions;
import org.undercap.treatment.MethodCatalogue;
import org.undercap.treatment.PlanStep;

class CountFitTest {
  private static final FitSettings QUICK = FitSettings.usual(1).withStarts(1);

  @Test
  void daughtersAndStartsAreFoundAgainAndTheCountsLookRight() {
    List<ObservedColony> colonies = Apiary.counted(1.15, Apiary.ERRORS, 5);
    CountFitResult found = CountFit.of(colonies, Apiary.REPRODUCTION, Apiary.ERRORS).run(QUICK);
    FittedParameter daughters = found.fit().parameter(Apiary.WORKER);
    assertTrue(daughters.low() < 1.15 && 1.15 < daughters.high(), daughters.toString());
    assertTrue(daughters.priorLeft() < 0.7, daughters.toString());
    List<FittedStart> starts = found.starts(1);
    for (int i = 0; i < Apiary.MITES.length; i++) {
      FittedStart mites = starts.get(i);
      assertEquals("hive " + (i + 1), mites.colony());
      assertTrue(mites.low() < Apiary.MITES[i] && Apiary.MITES[i] < mites.high(), mites.toString());
      assertTrue(mites.low() < mites.median() && mites.median() < mites.high(), mites.toString());
    }
    assertEquals(List.of(), found.fit().unidentified());
    List<Residual> residuals = found.residuals();
    assertEquals(30, residuals.size());
    double squares = residuals.stream().mapToDouble(r -> r.standardised() * r.standardised()).sum();
    assertTrue(squares > 8 && squares < 50, "30 counts, 4 parameters: " + squares);
    PredictiveCheck check = found.check(1);
    assertEquals(30, check.counts());
    assertTrue(check.inside95() >= 0.85, check.toString());
    assertTrue(check.misfitShare() > 0.01 && check.misfitShare() < 0.99, check.toString());
    assertEquals(check, found.check(1));
  }

  @Test
  void scatterLeftOutShowsInTheCheckAndIsFoundWhenFree() {
    CountErrors wild = new CountErrors(0.02, 0.4, 0.2);
    List<ObservedColony> colonies = Apiary.counted(1, wild, 8);
    CountFitResult blind =
        CountFit.of(colonies, Apiary.REPRODUCTION, CountErrors.chanceAlone(0.2)).run(QUICK);
    assertTrue(blind.check(1).misfitShare() < 0.01, blind.check(1).toString());
    CountFitResult open = CountFit.withFreeErrors(colonies, ParameterSpace.empty()).run(QUICK);
    assertTrue(open.errors().board() > 0.1 && open.errors().board() < 1, open.errors().toString());
    assertTrue(open.check(1).misfitShare() > 0.05, open.check(1).toString());
    assertEquals(
        List.of("correlation in washes", "variance of boards beyond Poisson"),
        open.fit().parameters().stream().map(FittedParameter::name).toList(),
        "no totals were counted");
  }

  @Test
  void laterCountsAreForetold() {
    List<ObservedColony> all = Apiary.counted(1, Apiary.ERRORS, 2);
    LocalDate last = Apiary.START.plusDays(60);
    CountFitResult found =
        CountFit.of(
                all.stream().map(c -> c.until(last)).toList(), Apiary.REPRODUCTION, Apiary.ERRORS)
            .run(QUICK);
    List<ObservedColony> later = all.stream().map(c -> c.after(last)).toList();
    PredictiveCheck check = found.heldOut(later, 1);
    assertEquals(15, check.counts());
    assertTrue(check.inside95() >= 0.75, check.toString());
    // A model in which mites hardly reproduce foretells worse.
    ParameterSpace barren =
        ParameterSpace.empty().with(ParameterId.REPRODUCTION_WORKER, Prior.uniform(0.1, 0.3));
    CountFitResult wrong =
        CountFit.of(all.stream().map(c -> c.until(last)).toList(), barren, Apiary.ERRORS)
            .run(QUICK);
    assertTrue(wrong.heldOut(later, 1).logScore() < check.logScore() - 1);
    assertThrows(IllegalArgumentException.class, () -> found.heldOut(later.subList(0, 2), 1));
    List<ObservedColony> nothing = all.stream().map(c -> c.after(last.plusYears(1))).toList();
    assertThrows(IllegalArgumentException.class, () -> found.heldOut(nothing, 1));
  }

  @Test
  void totalsDroneCellsAndTheStrengthOfATreatmentCanBeFitted() {
    Climate climate = ClimateCatalogue.shipped().get("temperate-oceanic");
    LocalDate start = Apiary.START;
    PlanStep strips =
        new PlanStep.Application(
            start.plusDays(20), MethodCatalogue.shipped().get("amitraz-strips"), 1);
    List<Count> counts =
        List.of(
            new DroneCells(start.plusDays(5), 100, 0),
            new Wash(start.plusDays(15), 300, 0, WashMethod.SUGAR),
            new Board(start.plusDays(30), 10, 0));
    ObservedColony empty =
        new ObservedColony(
            "treated",
            new ObservedColony.Start(climate, start, 20_000, 25_000, 1),
            date -> 0.5,
            Interventions.of(List.of(strips), Circumstances.usual(climate.eggs().max())),
            counts,
            List.of(new TotalMites(start.plusDays(19), 1), new TotalMites(start.plusDays(48), 1)));
    ParameterSet truth = ParameterSet.shipped().with(ParameterId.TREATMENT_STRENGTH, 0.6);
    CountErrors errors = CountErrors.chanceAlone(0.05);
    ObservedColony full = CountSimulator.simulate(empty, truth, 800, errors, 4);
    assertNotEquals(empty.totals(), full.totals());
    ParameterSpace strength =
        ParameterSpace.empty().with(ParameterId.TREATMENT_STRENGTH, Prior.uniform(0.1, 3));
    CountFitResult found = CountFit.of(List.of(full), strength, errors).run(QUICK);
    FittedParameter fitted = found.fit().parameter("treatment.strength");
    assertTrue(fitted.low() < 0.6 && 0.6 < fitted.high(), fitted.toString());
    assertTrue(fitted.high() < 0.9, fitted.toString());
    assertEquals(
        List.of("drone cells", "wash", "board", "all mites", "all mites"),
        found.residuals().stream().map(Residual::kind).toList());
  }

  @Test
  void theCurveBetweenTheRunsIsThatOfTheModel() {
    ObservedColony colony = Apiary.counted(1, Apiary.ERRORS, 3).get(0);
    CountModel model =
        new CountModel(List.of(colony), Apiary.REPRODUCTION, Optional.of(Apiary.ERRORS));
    double[] point = {1.1};
    StartMitesCurve curve = model.curves(new double[][] {point}).get(0).get(0);
    double[] mites = {3, 47, 800, 2500};
    List<ParameterSet> sets = Collections.nCopies(mites.length, model.set(point));
    double[][] sums = new ColonyCourse(colony).sums(new StartShapes(sets), mites);
    for (int i = 0; i < mites.length; i++) {
      List<CountLaw> laws = curve.laws(mites[i]);
      for (int o = 0; o < laws.size(); o++) {
        CountLaw exact =
            Observation.of(colony).get(o).law(sums[i][o], model.set(point), Apiary.ERRORS);
        assertEquals(1, laws.get(o).mean() / exact.mean(), 0.01, mites[i] + " mites, count " + o);
      }
    }
  }

  @Test
  void sameSeedSameFit() {
    List<ObservedColony> colonies = Apiary.counted(1, Apiary.ERRORS, 3).subList(0, 1);
    CountFit fit = CountFit.of(colonies, Apiary.REPRODUCTION, Apiary.ERRORS);
    assertEquals(fit.run(QUICK).fit().parameters(), fit.run(QUICK).fit().parameters());
  }

  @Test
  void wrongUseIsRefused() {
    ObservedColony colony = Apiary.colony("one");
    ObservedColony bare = colony.withCounts(List.of(), List.of());
    ParameterSpace none = ParameterSpace.empty();
    for (List<ObservedColony> colonies :
        List.of(List.<ObservedColony>of(), List.of(bare), List.of(colony, colony))) {
      assertThrows(
          IllegalArgumentException.class, () -> CountFit.of(colonies, none, Apiary.ERRORS));
    }
    List<Count> early = List.of(new Board(Apiary.START.plusDays(3), 7, 2));
    IllegalArgumentException e =
        assertThrows(IllegalArgumentException.class, () -> colony.withCounts(early, List.of()));
    assertTrue(e.getMessage().contains("begin the run earlier"), e.getMessage());
    assertThrows(IllegalArgumentException.class, () -> new CountErrors(1, 0, 1));
    assertThrows(IllegalArgumentException.class, () -> new CountErrors(0, -1, 1));
    assertThrows(IllegalArgumentException.class, () -> new CountErrors(0, 0, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new TotalMites(Apiary.START, 0));
  }
}
