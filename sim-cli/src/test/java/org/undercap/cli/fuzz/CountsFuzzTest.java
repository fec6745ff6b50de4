package org.undercap.cli.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercap.scenario.Scenario;
import org.undercap.scenario.io.ObservationReader;
import org.undercap.scenario.io.ScenarioReader;

/** Hunts for tables of counts that the reader stumbles over. */
class CountsFuzzTest {

  private static final Path RESEARCH = Path.of("..", "scenarios", "research");
  private static final Scenario SITE =
      ScenarioReader.read(RESEARCH.resolve("plot-7.yaml")).orThrow();

  static Stream<byte[]> seeds() {
    return Hunt.contents(RESEARCH, ".csv");
  }

  @MethodSource("seeds")
  @FuzzTest
  void counts(byte[] bytes) {
    Hunt.library("counts.csv", bytes, file -> ObservationReader.read(file, SITE));
  }
}
