package org.undercap.cli.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercap.cli.lesson.ClassCountsFile;

/** Hunts for washes of a class that the reader stumbles over. */
class ClassCountsFuzzTest {

  static Stream<byte[]> seeds() {
    return Hunt.texts(
        """
        date,bees,mites
        2026-07-05,300,4
        2026-08-09,310,9
        """);
  }

  @MethodSource("seeds")
  @FuzzTest
  void counts(byte[] bytes) {
    Hunt.program("class.csv", bytes, ClassCountsFile::read);
  }
}
