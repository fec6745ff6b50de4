package org.undercap.scenario.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.undercap.scenario.Problem;
import org.undercap.scenario.Reading;
import org.undercap.scenario.Scenario;

/**
 * Whatever a file holds, reading it gives a scenario or problems with places, never an exception.
 */
class GarbledScenariosTest {

  private static final int ROUNDS = 1000;
  private static final String PIECES =
      "\t\n :-,{}[]\"'#&*!|>%@`?~\\.0123456789eEnNaA\u00e4\u2028\0";

  @Test
  void garbledFilesGiveProblems() throws IOException {
    String whole = Files.readString(TestFiles.COMPLETE.resolve("everything.yaml"));
    String text = whole.replaceAll("  daily-temperatures: .*\n", "");
    assertTrue(TestFiles.read(text).value().isPresent(), "the text to garble is good");
    Random random = new Random(20260924);
    int refused = 0;
    for (int round = 0; round < ROUNDS; round++) {
      String garbled = garble(text, random);
      String name = round % 3 == 0 ? "test.json" : "test.yaml";
      Reading<Scenario> reading = TestFiles.read(name, garbled.getBytes(StandardCharsets.UTF_8));
      refused += reading.value().isEmpty() ? 1 : 0;
      int lines = (int) garbled.lines().count() + 1;
      for (Problem problem : reading.problems()) {
        assertTrue(problem.line() >= 0 && problem.line() <= lines, problem.text());
        assertTrue(problem.text().lines().count() <= 2, problem.text());
      }
    }
    assertTrue(refused > ROUNDS / 2, refused + " refused");
  }

  @Test
  void everyShorterFileGivesProblemsOrAScenario() throws IOException {
    String text = Files.readString(Path.of("../scenarios/roof-nine.yaml"));
    for (int length = 0; length < text.length(); length += 7) {
      Reading<Scenario> reading = TestFiles.read(text.substring(0, length));
      assertEquals(reading.value().isPresent(), reading.problems().isEmpty());
    }
  }

  private static String garble(String text, Random random) {
    StringBuilder garbled = new StringBuilder(text);
    int changes = 1 + random.nextInt(4);
    for (int i = 0; i < changes; i++) {
      int at = random.nextInt(garbled.length());
      String piece = String.valueOf(PIECES.charAt(random.nextInt(PIECES.length())));
      switch (random.nextInt(4)) {
        case 0 -> garbled.insert(at, piece);
        case 1 -> garbled.replace(at, at + 1, piece);
        case 2 -> garbled.delete(at, Math.min(garbled.length(), at + random.nextInt(20)));
        default -> {
          int from = random.nextInt(garbled.length());
          int to = Math.min(garbled.length(), from + random.nextInt(60));
          garbled.insert(at, garbled.substring(from, to));
        }
      }
    }
    return garbled.toString();
  }
}
