package org.undercap.cli.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercap.scenario.io.ScenarioReader;

/** Hunts for tables of temperatures that the reader stumbles over. */
class TemperatureFuzzTest {

  private static final Path SCENARIOS = Path.of("..", "scenarios");
  private static final Path SCENARIO =
      Hunt.file("warm.yaml", Hunt.bytes(SCENARIOS.resolve("saltmere-garth.yaml")));

  static Stream<byte[]> seeds() {
    return Hunt.contents(SCENARIOS, "-temperatures.csv");
  }

  @MethodSource("seeds")
  @FuzzTest
  void temperatures(byte[] bytes) {
    Hunt.library("saltmere-garth-temperatures.csv", bytes, file -> ScenarioReader.read(SCENARIO));
  }
}
