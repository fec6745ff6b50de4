package org.undercap.cli.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercap.parameter.ParameterChanges;
import org.undercap.scenario.io.DesignReader;

/** Hunts for designs that the reader stumbles over. */
class DesignFuzzTest {

  private static final Path SCENARIO =
      Hunt.file("roof-nine.yaml", Hunt.bytes(Path.of("..", "scenarios", "roof-nine.yaml")));

  static Stream<byte[]> seeds() {
    return Hunt.texts(
        """
        label,scenario,plan,shift_days,climate,start,end,bees,brood_cells,mites
        a,roof-nine.yaml,Do nothing,3,mediterranean,2026-08-01,2026-10-01,9000,4000,50
        """,
        """
        queen_quality,arrivals,warmer_c,invasion.worker,brood.worker.days
        0.9,low,-1.5,0.5,3;6;11
        ,1.5,2,,
        """);
  }

  @MethodSource("seeds")
  @FuzzTest
  void design(byte[] bytes) {
    Hunt.library(
        "design.csv",
        bytes,
        file -> DesignReader.check(file, Optional.of(SCENARIO), ParameterChanges.none()));
  }
}
