package org.undercap.simulation;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.undercap.ForAll;
import org.undercap.model.ColonyLanes;
import org.undercap.treatment.Circumstances;
import org.undercap.treatment.PlanStep;

/** What must hold in every run, whatever the place, the parameters and the plan. */
class InvariantsTest {
  private static final int CASES = 40;

  private static void always(Consumer<RandomCase> property) {
    ForAll.cases(CASES, RandomCases::any, RandomCase::simpler, property);
  }

  static void assertSame(DailyTable a, DailyTable b) {
    assertEquals(a.days(), b.days(), "days");
    for (DailyColumn column : DailyColumn.values()) {
      assertArrayEquals(a.column(column), b.column(column), column.header());
    }
  }

  @Test
  void ledgerOfMitesClosesEveryDay() {
    always(
        one -> {
          RandomCase.Result run = one.run();
          DailyTable t = run.table();
          for (int day = 0; day + 1 < t.days(); day++) {
            double in = t.mites(day) + run.born().on(day) + t.at(DailyColumn.MITES_ARRIVED, day);
            double gone = t.miteFall(day) + t.at(DailyColumn.MITES_REMOVED, day);
            assertEquals(in, t.mites(day + 1) + gone, 1e-6 * Math.max(1, in), "day " + day);
          }
        });
  }

  @Test
  void nothingIsEverNegativeOrInfinite() {
    always(
        one -> {
          DailyTable table = one.run().table();
          for (DailyColumn column : DailyColumn.values()) {
            double least = column == DailyColumn.TEMPERATURE ? -60 : -1e-9;
            for (double x : table.column(column)) {
              assertTrue(x >= least && x < Double.POSITIVE_INFINITY, column + " " + x);
            }
          }
        });
  }

  @Test
  void sharesAndSpeedsStayInTheirRanges() {
    always(
        one -> {
          DailyTable table = one.run().table();
          for (int day = 0; day < table.days(); day++) {
            assertTrue(table.at(DailyColumn.BROOD_INDEX, day) <= 1);
            assertTrue(table.at(DailyColumn.AGEING_SPEED, day) <= 1);
            assertTrue(table.at(DailyColumn.PARASITISED_SHARE, day) <= 1);
          }
        });
  }

  @Test
  void mitesComeFromNowhereElse() {
    always(
        one -> {
          DailyTable table = one.withMites(0, 0).run().table();
          for (int day = 0; day < table.days(); day++) {
            assertEquals(0, table.mites(day));
            assertEquals(0, table.miteFall(day));
            assertEquals(0, table.at(DailyColumn.WORKERS_EMERGED_WEAKENED, day));
          }
        });
  }

  @Test
  void zeroDoseIsNoTreatment() {
    always(
        one -> {
          List<PlanStep> zero =
              one.steps().stream()
                  .filter(PlanStep.Application.class::isInstance)
                  .map(PlanStep.Application.class::cast)
                  .map(a -> (PlanStep) new PlanStep.Application(a.date(), a.method(), 0))
                  .toList();
          assertSame(one.withSteps(List.of()).run().table(), one.withSteps(zero).run().table());
        });
  }

  @Test
  void orderOfThePlanDoesNotMatter() {
    always(
        one -> {
          List<PlanStep> reversed = new ArrayList<>(one.steps());
          Collections.reverse(reversed);
          assertSame(one.run().table(), one.withSteps(reversed).run().table());
        });
  }

  /** Measures that meet on one day: products of three factors depend on their order. */
  @Test
  void orderOfMeasuresOnOneDayDoesNotMatter() {
    always(
        one -> {
          List<PlanStep> steps = new ArrayList<>();
          for (int i = 1; i <= 3; i++) {
            double factor = one.brood() + 0.37 * i;
            steps.add(new PlanStep.DroneFrame(one.start(), one.start().plusDays(9), factor));
            steps.add(new PlanStep.BroodRemoval(one.start().plusDays(5), factor / 7));
          }
          DailyTable inOrder = one.withSteps(steps).run().table();
          Collections.rotate(steps, 2);
          assertSame(inOrder, one.withSteps(steps).run().table());
          Collections.swap(steps, 0, 4);
          assertSame(inOrder, one.withSteps(steps).run().table());
        });
  }

  @Test
  void twoHalfDosesAreOneDose() {
    always(
        one -> {
          List<PlanStep> halves = new ArrayList<>();
          for (PlanStep step : one.steps()) {
            if (step instanceof PlanStep.Application a) {
              halves.add(new PlanStep.Application(a.date(), a.method(), a.dose() / 2));
              halves.add(new PlanStep.Application(a.date(), a.method(), a.dose() / 2));
            } else {
              halves.add(step);
            }
          }
          assertClose(one.run().table(), one.withSteps(halves).run().table());
        });
  }

  private static void assertClose(DailyTable a, DailyTable b) {
    assertEquals(a.days(), b.days(), "days");
    for (DailyColumn column : DailyColumn.values()) {
      for (int day = 0; day < a.days(); day++) {
        double x = a.at(column, day);
        assertEquals(x, b.at(column, day), 1e-9 * Math.max(1, Math.abs(x)), column.header());
      }
    }
  }

  @Test
  void runContinuedFromItsEndIsOneRun() {
    always(
        one -> {
          int half = one.days() / 2;
          RandomCase.Result whole = one.run();
          RandomCase.Result first = one.withDays(half).run();
          if (first.table().lost()) {
            return;
          }
          RandomCase rest = one.startingAfter(half);
          DailyTable second = DailyTable.of(rest.drivers(), 0);
          rest.simulator().run(first.end().colony(), one.interventions(), List.of(second));
          assertEquals(whole.table().days(), half + second.days());
          for (DailyColumn column : DailyColumn.values()) {
            for (int day = 0; column != DailyColumn.DAY && day < second.days(); day++) {
              assertEquals(
                  whole.table().at(column, half + day), second.at(column, day), column.header());
            }
          }
        });
  }

  @Test
  void startIsNotChangedByARun() {
    always(
        one -> {
          ColonyLanes start = one.colony();
          double mites = start.mites(0);
          double bees = start.adults(0);
          one.simulator().run(start, one.interventions(), List.of());
          assertEquals(mites, start.mites(0));
          assertEquals(bees, start.adults(0));
        });
  }

  @Test
  void withoutLayingAllMitesComeToTheBees() {
    always(
        one -> {
          List<PlanStep> caged = List.of(new PlanStep.LayingStop(one.start(), one.days(), true));
          DailyTable table = one.withSteps(caged).run().table();
          int lastDroneEggEmerges = 3 + 7 + 14;
          for (int day = lastDroneEggEmerges + 1; day < table.days(); day++) {
            assertEquals(0, table.mitesInCells(day), "day " + day);
          }
        });
  }

  @Test
  void withoutOpenBroodAllMitesComeToTheBeesInTwoWeeks() {
    always(
        one -> {
          RandomCase queenless =
              one.withSteps(List.of(new PlanStep.LayingStop(one.start(), one.days(), false)));
          ColonyLanes start = queenless.colony();
          OpenBrood.takeOut(start);
          DailyTable table = DailyTable.of(queenless.drivers(), 0);
          queenless.simulator().run(start, queenless.interventions(), List.of(table));
          int sealedDays = 14;
          for (int day = sealedDays; day < table.days(); day++) {
            assertEquals(0, table.mitesInCells(day), "day " + day);
          }
        });
  }

  @Test
  void circumstancesWithoutTreatmentDoNothing() {
    always(
        one -> {
          RandomCase untreated = one.withSteps(List.of());
          RandomCase usual = untreated.withCircumstances(Circumstances.usual(0));
          assertSame(untreated.run().table(), usual.run().table());
        });
  }
}
