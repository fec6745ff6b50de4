package org.undercap.benchmark;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
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
import org.undercap.ensemble.Ensemble;
import org.undercap.ensemble.EnsembleSettings;
import org.undercap.ensemble.MiteBelief;
import org.undercap.ensemble.PlanResult;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;
import org.undercap.scenario.io.ScenarioReader;

/**
 * How does the time of an ensemble grow with members, plans and threads? Colonies from 10 August to
 * 1 April under plans with thymol gel twice, with all outcomes and bands of curves.
 *
 * <p>{@code mvn -Pjmh -pl sim-core verify -DskipTests -Djmh.args="EnsembleBenchmark -p plans=1"}.
 * The score is milliseconds for all members and plans.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class EnsembleBenchmark {
  private static final String FACTS =
      """
      undercap: 1
      name: Benchmark
      site: {climate: temperate-oceanic}
      colony: {date: 2026-08-10, bees: 18000, brood: 15000 cells, supers: off}
      mites: {in-colony: 1200}
      plans:
      """;

  /** Members of the ensemble. */
  @Param({"100", "1000", "10000"})
  public int members;

  /** Plans, which all differ in their dates. */
  @Param({"1", "10", "100"})
  public int plans;

  /** Threads. */
  @Param({"1", "2"})
  public int threads;

  private Ensemble ensemble;
  private List<Plan> all;

  /**
   * Reads the scenario.
   *
   * @throws IOException never, as it is text
   */
  @Setup
  public void prepare() throws IOException {
    StringBuilder text = new StringBuilder(FACTS);
    for (int plan = 0; plan < plans; plan++) {
      text.append("  - name: Plan ").append(plan).append("\n    steps:\n");
      int day = 11 + plan % 10; // to 20 August
      int later = 10 + plan / 10; // 10 to 19 September
      text.append("      - {date: 2026-08-").append(day).append(", treatment: thymol-gel}\n");
      text.append("      - {date: 2026-09-").append(later).append(", treatment: thymol-gel}\n");
    }
    byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
    Scenario scenario = ScenarioReader.read("benchmark", new ByteArrayInputStream(bytes)).orThrow();
    all = new ArrayList<>(scenario.plans());
    EnsembleSettings settings = new EnsembleSettings(members, EnsembleSettings.USUAL_SEED, threads);
    ensemble = new Ensemble(scenario, MiteBelief.known(1200), settings);
  }

  /**
   * All members under all plans ("do nothing" is one more).
   *
   * @return the results, so that nothing is left out
   */
  @Benchmark
  public List<PlanResult> run() {
    return ensemble.run(all, List.of(), done -> {});
  }
}
