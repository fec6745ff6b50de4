package org.undercap.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.model.ColonyLanes;
import org.undercap.model.ModelParameters;
import org.undercap.parameter.ParameterSet;
import org.undercap.treatment.Circumstances;
import org.undercap.treatment.Interventions;
import org.undercap.treatment.MethodCatalogue;
import org.undercap.treatment.PlanStep;

/** The day loop makes no objects, so that ensembles run at the speed of their arithmetic. */
class NoAllocationTest {
  private static final int LANES = 4;
  private static final LocalDate START = LocalDate.of(2020, 3, 1);
  private static final Climate CLIMATE = ClimateCatalogue.shipped().get("central-european");
  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  private static List<PlanStep> plan() {
    List<PlanStep> steps = new ArrayList<>();
    MethodCatalogue methods = MethodCatalogue.shipped();
    for (int year = START.getYear(); year < START.getYear() + 9; year++) {
      steps.add(new PlanStep.DroneCombRemoval(LocalDate.of(year, 5, 20), 0.9));
      steps.add(new PlanStep.LayingStop(LocalDate.of(year, 7, 1), 5, true));
      steps.add(
          new PlanStep.Application(LocalDate.of(year, 7, 20), methods.get("formic-pads"), 0.5));
      steps.add(new PlanStep.Application(LocalDate.of(year, 8, 1), methods.get("thymol-gel"), 1));
      steps.add(new PlanStep.LateFeeding(LocalDate.of(year, 9, 1), LocalDate.of(year, 9, 10)));
      steps.add(
          new PlanStep.Application(LocalDate.of(year, 12, 20), methods.get("oxalic-dribble"), 1));
      steps.add(
          new PlanStep.Application(
              LocalDate.of(year, 12, 28), methods.get("oxalic-glycerine-strips"), 1));
    }
    return steps;
  }

  /** Bytes that the thread asks for while the colonies run (bytes). */
  private static long allocated(Simulator simulator, ColonyLanes start, List<Intervention> plan) {
    long thread = Thread.currentThread().getId();
    List<DayObserver> none = List.of();
    long before = THREADS.getThreadAllocatedBytes(thread);
    Simulator.RunEnd end = simulator.run(start, plan, none);
    long after = THREADS.getThreadAllocatedBytes(thread);
    for (int lane = 0; lane < LANES; lane++) {
      assertEquals(-1, end.lostOn(lane), "a lost colony would shorten the run");
    }
    return after - before;
  }

  @Test
  void aLongerRunAllocatesNoMore() {
    assertTrue(THREADS.isThreadAllocatedMemorySupported());
    THREADS.setThreadAllocatedMemoryEnabled(true);
    ModelParameters one = ModelParameters.of(ParameterSet.shipped());
    ColonyLanes shape = StartShape.at(CLIMATE, 60, one);
    shape.scaleTo(0, 10_000, 6_000, 50);
    ColonyLanes start = shape.copies(0, LANES);
    ModelParameters parameters =
        ModelParameters.of(Collections.nCopies(LANES, ParameterSet.shipped()));
    List<Intervention> plan = Interventions.of(plan(), Circumstances.usual(CLIMATE.eggs().max()));
    Simulator shorter =
        new Simulator(parameters, DailyDrivers.of(CLIMATE, START, 1000, date -> 1, LANES));
    Simulator longer =
        new Simulator(parameters, DailyDrivers.of(CLIMATE, START, 3000, date -> 1, LANES));
    allocated(shorter, start, plan);
    allocated(longer, start, plan);
    long few = allocated(shorter, start, plan);
    long many = allocated(longer, start, plan);
    long removalDays = 4_096;
    assertTrue(many <= few + removalDays, few + " bytes in 1000 days, " + many + " in 3000");
  }
}
