package org.undercap.cli.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercap.scenario.Scenario;
import org.undercap.scenario.io.ApiaryReader;
import org.undercap.scenario.io.ScenarioReader;

/** Hunts for tables of colonies that the reader stumbles over. */
class ApiaryFuzzTest {

  private static final Path SCENARIOS = Path.of("..", "scenarios");
  private static final Scenario SITE =
      ScenarioReader.read(SCENARIOS.resolve("tall-sedge-yard.yaml")).orThrow();

  static Stream<byte[]> seeds() {
    return Hunt.contents(SCENARIOS, "-colonies.csv");
  }

  @MethodSource("seeds")
  @FuzzTest
  void apiary(byte[] bytes) {
    Hunt.library("colonies.csv", bytes, file -> ApiaryReader.read(file, SITE));
  }
}
