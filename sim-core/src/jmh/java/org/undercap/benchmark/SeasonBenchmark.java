package org.undercap.benchmark;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.undercap.climate.Climate;
import org.undercap.climate.ClimateCatalogue;
import org.undercap.climate.SeasonDay;
import org.undercap.model.ColonyLanes;
import org.undercap.model.ModelParameters;
import org.undercap.parameter.ParameterSet;
import org.undercap.simulation.DailyDrivers;
import org.undercap.simulation.Intervention;
import org.undercap.simulation.Simulator;
import org.undercap.simulation.StartShape;
import org.undercap.treatment.Circumstances;
import org.undercap.treatment.Interventions;
import org.undercap.treatment.MethodCatalogue;
import org.undercap.treatment.PlanStep;

/**
 * How many colony-years a second does one core run? One year from 10 August with thymol gel twice
 * and arriving mites, no output; one colony alone, or a block of colonies side by side.
 *
 * <p>{@code mvn -Pjmh -pl sim-core verify -Djmh.args=SeasonBenchmark}. The score is blocks a
 * second: times {@code lanes} it is colony-years a second.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class SeasonBenchmark {
  /** Colonies side by side. */
  @Param({"1", "32", "128"})
  public int lanes;

  /** Length of the run (days). */
  @Param({"365"})
  public int days;

  private Simulator simulator;
  private ColonyLanes start;
  private List<Intervention> interventions;

  /** Lays the year out. */
  @Setup
  public void prepare() {
    Climate climate = ClimateCatalogue.shipped().get("temperate-oceanic");
    LocalDate first = LocalDate.of(2026, 8, 10);
    ModelParameters parameters =
        ModelParameters.of(Collections.nCopies(lanes, ParameterSet.shipped()));
    ColonyLanes shape = StartShape.at(climate, SeasonDay.of(first), parameters);
    shape.scaleMites(0, 1200);
    start = shape.copies(0, lanes);
    simulator =
        new Simulator(parameters, DailyDrivers.of(climate, first, days, date -> 1.5, lanes));
    interventions =
        Interventions.of(
            List.of(gel(first.plusDays(2)), gel(first.plusDays(16))),
            Circumstances.usual(climate.eggs().max()));
  }

  private static PlanStep gel(LocalDate date) {
    return new PlanStep.Application(date, MethodCatalogue.shipped().get("thymol-gel"), 1);
  }

  /**
   * One year of all colonies.
   *
   * @return the end, so that nothing is left out
   */
  @Benchmark
  public Simulator.RunEnd year() {
    return simulator.run(start, interventions, List.of());
  }
}
