package org.undercap.cli.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercap.scenario.io.ScenarioReader;

/** Hunts for scenarios in JSON that the reader stumbles over. */
class JsonScenarioFuzzTest {

  private static final Path CORE = Path.of("..", "sim-core", "src", "test", "resources");

  static Stream<byte[]> seeds() {
    return Stream.of(CORE.resolve("complete"), CORE.resolve("broken"))
        .flatMap(folder -> Hunt.contents(folder, ".json"));
  }

  @MethodSource("seeds")
  @FuzzTest
  void scenario(byte[] bytes) {
    Hunt.library("hunted.json", bytes, ScenarioReader::read);
  }
}
