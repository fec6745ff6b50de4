package org.undercap.cli.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercap.scenario.io.ParameterFile;

/** Hunts for files of parameters that the reader stumbles over. */
class ParameterFuzzTest {

  static Stream<byte[]> seeds() {
    return Hunt.texts(
        """
        undercap-parameters: 1
        about: Fitted.
        values:
          reproduction.worker: 0.87
          crowding.worker: [1, 1.05, 0.85, 0.65, 0.5, 0.35]
        """,
        "{undercap-parameters: 1, values: {invasion.worker: 0.5, brood.worker.days: [3, 6, 12]}}");
  }

  @MethodSource("seeds")
  @FuzzTest
  void parameters(byte[] bytes) {
    Hunt.library("parameters.yaml", bytes, ParameterFile::read);
  }
}
