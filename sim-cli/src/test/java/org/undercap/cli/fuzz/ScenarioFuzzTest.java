package org.undercap.cli.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercap.scenario.io.ScenarioReader;

/** Hunts for scenarios that the reader stumbles over. */
class ScenarioFuzzTest {

  private static final Path CORE = Path.of("..", "sim-core", "src", "test", "resources");

  static Stream<byte[]> seeds() {
    return Stream.of(Path.of("..", "scenarios"), CORE.resolve("complete"), CORE.resolve("broken"))
        .flatMap(folder -> Hunt.contents(folder, ".yaml"));
  }

  @MethodSource("seeds")
  @FuzzTest
  void scenario(byte[] bytes) {
    Hunt.library("hunted.yaml", bytes, ScenarioReader::read);
  }
}
