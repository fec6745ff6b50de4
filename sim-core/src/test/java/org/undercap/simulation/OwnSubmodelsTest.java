package org.undercap.simulation;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.model.ArrivalRule;
import org.undercap.model.ColonyLanes;
import org.undercap.model.InvasionRule;
import org.undercap.model.ModelParameters;
import org.undercap.model.ReproductionRule;
import org.undercap.model.Submodels;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.treatment.Circumstances;
import org.undercap.treatment.EfficacyProfile;
import org.undercap.treatment.Interventions;
import org.undercap.treatment.Method;
import org.undercap.treatment.MethodCatalogue;
import org.undercap.treatment.PlanStep;
import org.undercap.treatment.TemperatureResponse;

/** A worked example: parts of the model replaced by parts of one's own. */
class OwnSubmodelsTest {
  private static final Climate CLIMATE = ClimateCatalogue.shipped().get("central-european");
  private static final LocalDate START = LocalDate.of(2026, 4, 1);
  private static final int DAYS = 180;
  private static final int LANES = 3;
  private static final ModelParameters SHIPPED =
      ModelParameters.of(List.of(set(1.0), set(1.1), set(0.9)));

  private static ParameterSet set(double daughters) {
    return ParameterSet.shipped().with(ParameterId.REPRODUCTION_WORKER, daughters);
  }

  /** A rule that is made from parameters, as those that ship: drone cells draw nothing. */
  private static InvasionRule workersOnly(ModelParameters parameters) {
    InvasionRule shipped = InvasionRule.perGramOfBees(parameters);
    return (adults, workerCells, droneCells, intoWorkers, intoDrones) -> {
      shipped.hazards(adults, workerCells, droneCells, intoWorkers, intoDrones);
      Arrays.fill(intoDrones, 0.0);
    };
  }

  /** A rule without parameters: resistant stock, in whose worker cells no mite has daughters. */
  private static ReproductionRule sterileInWorkers(ModelParameters parameters) {
    ReproductionRule shipped = ReproductionRule.byBroodNest(parameters);
    return (cells, mothers, crowding, broodIndex, daughters) -> {
      if (cells == ReproductionRule.Cells.WORKER) {
        Arrays.fill(daughters, 0.0);
      } else {
        shipped.daughters(cells, mothers, crowding, broodIndex, daughters);
      }
    };
  }

  /**
   * A rule that looks at the colony: weak colonies are robbed or beg, and take in twice as many.
   */
  private static ArrivalRule weakTakeMore(ModelParameters parameters) {
    ArrivalRule shipped = ArrivalRule.whereBeesLive();
    double weak = 15_000;
    return (sent, adults, broodIndex, arrived) -> {
      shipped.arrivals(sent, adults, broodIndex, arrived);
      for (int lane = 0; lane < arrived.length; lane++) {
        arrived[lane] *= adults[lane] < weak ? 2 : 1;
      }
    };
  }

  private static ColonyLanes start(ModelParameters parameters) {
    ColonyLanes colonies = StartShape.at(CLIMATE, 91, parameters);
    for (int lane = 0; lane < LANES; lane++) {
      colonies.scaleTo(lane, 10_000, 12_000, 100);
    }
    return colonies;
  }

  private static DailyTable run(ModelParameters parameters, double arriving, int lane) {
    return run(parameters, start(parameters), arriving, List.of(), lane);
  }

  private static DailyTable run(
      ModelParameters parameters,
      ColonyLanes start,
      double arriving,
      List<Intervention> acting,
      int lane) {
    DailyDrivers drivers = DailyDrivers.of(CLIMATE, START, DAYS, date -> arriving, LANES);
    DailyTable table = DailyTable.of(drivers, lane);
    new Simulator(parameters, drivers).run(start, acting, List.of(table));
    return table;
  }

  private static double last(DailyTable table) {
    return table.mites(table.days() - 1);
  }

  @Test
  void theRulesThatShipAreTheModel() {
    Submodels named =
        new Submodels(
            InvasionRule::perGramOfBees,
            ReproductionRule::byBroodNest,
            p -> ArrivalRule.whereBeesLive());
    for (DailyColumn column : DailyColumn.values()) {
      DailyTable usual = run(SHIPPED, 2, 1);
      DailyTable same = run(SHIPPED.with(named), 2, 1);
      for (int day = 0; day < DAYS; day++) {
        assertEquals(usual.at(column, day), same.at(column, day), 0.0, column.header());
      }
    }
  }

  @Test
  void aRuleOfInvasion() {
    ModelParameters own =
        SHIPPED.with(Submodels.shipped().withInvasion(OwnSubmodelsTest::workersOnly));
    double[] inDrones = run(own, 0, 1).column(DailyColumn.MITES_IN_DRONE_CELLS);
    assertArrayEquals(new double[DAYS], inDrones);
    assertTrue(last(run(own, 0, 1)) < last(run(SHIPPED, 0, 1)), "drone cells breed more mites");
  }

  @Test
  void aRuleOfReproduction() {
    ModelParameters own =
        SHIPPED.with(Submodels.shipped().withReproduction(OwnSubmodelsTest::sterileInWorkers));
    assertTrue(last(run(own, 0, 0)) < 0.5 * last(run(SHIPPED, 0, 0)));
    assertEquals(last(run(own, 0, 0)), last(run(own, 0, 2)), 1e-9, "parameter without a use");
  }

  @Test
  void aRuleOfArrivals() {
    ModelParameters own =
        SHIPPED.with(Submodels.shipped().withArrivals(OwnSubmodelsTest::weakTakeMore));
    DailyTable table = run(own, 3, 0);
    double[] arrived = table.column(DailyColumn.MITES_ARRIVED);
    double[] adults = new double[DAYS];
    Arrays.setAll(adults, table::adults);
    for (int day = 0; day < DAYS; day++) {
      assertEquals(adults[day] < 15_000 ? 6 : 3, arrived[day], "day " + day);
    }
    assertEquals(6, arrived[0]);
    assertEquals(3, arrived[DAYS / 2]);
  }

  @Test
  void startsAreShapedWithoutArrivals() {
    ModelParameters own =
        SHIPPED.with(
            Submodels.shipped()
                .withArrivals(p -> (sent, adults, index, arrived) -> Arrays.fill(arrived, 5)));
    ColonyLanes mine = StartShape.at(CLIMATE, 91, own);
    ColonyLanes usual = StartShape.at(CLIMATE, 91, SHIPPED);
    for (int lane = 0; lane < LANES; lane++) {
      assertEquals(usual.mites(lane), mine.mites(lane), 0.0);
    }
  }

  /** Acts only above a temperature. */
  private record FromTemperature(double least) implements TemperatureResponse {
    @Override
    public double factor(double outside) {
      return outside >= least ? 1 : 0;
    }
  }

  @Test
  void aResponseToTemperature() {
    Method cold = withTemperature(new FromTemperature(100));
    Method warm = withTemperature(new FromTemperature(-100));
    double untreated = last(run(SHIPPED, 0, 0));
    assertEquals(untreated, last(treated(cold)), 0.0);
    assertTrue(last(treated(warm)) < 0.9 * untreated);
  }

  private static Method withTemperature(TemperatureResponse response) {
    Method gel = MethodCatalogue.shipped().get("thymol-gel");
    EfficacyProfile p = gel.profile();
    EfficacyProfile own =
        new EfficacyProfile(p.release(), response, p.response(), p.inCellRatio(), p.sideEffects());
    return gel.with(own);
  }

  private static DailyTable treated(Method method) {
    List<PlanStep> steps = List.of(new PlanStep.Application(START.plusDays(100), method, 1));
    List<Intervention> acting = Interventions.of(steps, Circumstances.usual(CLIMATE.eggs().max()));
    return run(SHIPPED, start(SHIPPED), 0, acting, 0);
  }
}
