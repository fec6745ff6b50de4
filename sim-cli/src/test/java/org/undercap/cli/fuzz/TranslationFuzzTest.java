package org.undercap.cli.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercap.cli.lesson.Words;

/** Hunts for translations that the reader stumbles over. */
class TranslationFuzzTest {

  static Stream<byte[]> seeds() {
    return Hunt.texts(Words.shipped().asFile().substring(0, 3_000), "# a remark\nunit.mites = m\n");
  }

  @MethodSource("seeds")
  @FuzzTest
  void translation(byte[] bytes) {
    Hunt.program("words.txt", bytes, Words::translated);
  }
}
