package org.undercap.scenario.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.undercap.scenario.Problem;

/**
 * Each file in the folder {@code broken} must give the messages of the file beside it, no others.
 */
class BrokenScenariosTest {

  static List<Path> files() {
    return TestFiles.in(TestFiles.BROKEN, ".yaml", ".json");
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyMistakeIsToldWithItsPlace(Path file) throws IOException {
    List<Problem> problems = ScenarioReader.read(file).problems();
    String expected = Files.readString(Path.of(file + ".expected"));
    assertEquals(expected, TestFiles.texts(problems, TestFiles.BROKEN));
    assertTrue(problems.size() > 0, "a broken file must have problems");
  }

  @Test
  void everyExpectationHasItsFile() {
    List<Path> expectations = TestFiles.in(TestFiles.BROKEN, ".expected");
    assertEquals(files().size(), expectations.size());
    assertTrue(files().size() > 50, "the folder was found");
  }
}
