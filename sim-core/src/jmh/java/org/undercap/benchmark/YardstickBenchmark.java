package org.undercap.benchmark;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.undercap.model.Hazard;

/**
 * How fast is this machine now? Always the same arithmetic, of the kind of which a day consists, so
 * that the speed of the model can be told as a share of it: machines differ, and so do their hours.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class YardstickBenchmark {
  private final double[] hazards = new double[128];
  private final double[] mites = new double[128];

  /** Begins with colonies that differ. */
  public YardstickBenchmark() {
    for (int lane = 0; lane < mites.length; lane++) {
      hazards[lane] = 0.01 + lane * 1e-4;
      mites[lane] = 1000 + lane;
    }
  }

  /**
   * A thousand days of mites that die and arrive.
   *
   * @return what is left, so that nothing is left out
   */
  @Benchmark
  public double[] thousandDays() {
    double[] left = mites;
    double[] kill = hazards;
    for (int day = 0; day < 1000; day++) {
      for (int lane = 0; lane < left.length; lane++) {
        left[lane] += 1.5 - left[lane] * Hazard.fraction(kill[lane]);
      }
    }
    return left;
  }
}
