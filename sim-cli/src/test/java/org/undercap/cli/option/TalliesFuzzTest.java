package org.undercap.cli.option;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercap.cli.fuzz.Hunt;

/** Hunts for counts before and after a treatment that the reader stumbles over. */
class TalliesFuzzTest {

  static Stream<byte[]> seeds() {
    return Hunt.texts(
        """
        colony,group,before_mites,before_bees,after_mites,after_bees
        B1,treated,13,300,6,305
        B2,untreated,9,300,11,300
        """);
  }

  @MethodSource("seeds")
  @FuzzTest
  void tallies(byte[] bytes) {
    Hunt.program("tallies.csv", bytes, CountsFile::read);
  }
}
