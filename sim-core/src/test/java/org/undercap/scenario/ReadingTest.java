package org.undercap.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ReadingTest {

  private static final Place LATER = new Place("a.yaml", 7, 3);

  private static Problems problems() {
    Problems problems = new Problems();
    problems.add(LATER, "colony.bees", "is too few", "count again");
    problems.add(new Place("a.yaml", 2, 1), "", "unknown key", "");
    problems.add(LATER, "colony.bees", "is too few", "count again");
    return problems;
  }

  @Test
  void problemsComeOnceInTheOrderOfTheFile() {
    List<String> texts = Reading.failed(problems()).problems().stream().map(Problem::text).toList();
    assertEquals(
        List.of(
            "a.yaml:2:1: error: unknown key",
            "a.yaml:7:3: error: colony.bees: is too few\n  hint: count again"),
        texts);
  }

  @Test
  void aProblemOfTheWholeFileHasNoLine() {
    Problems problems = new Problems();
    problems.add(Place.of("a.yaml"), "", "is empty", "");
    assertEquals("a.yaml: error: is empty", problems.all().get(0).text());
  }

  @Test
  void thereIsEitherAValueOrAProblem() {
    assertEquals("x", Reading.of("x").orThrow());
    List<Problem> some = problems().all();
    assertThrows(IllegalArgumentException.class, () -> new Reading<>(Optional.of("x"), some));
    assertThrows(IllegalArgumentException.class, () -> new Reading<>(Optional.empty(), List.of()));
  }

  @Test
  void askingAFailedReadingTellsAllProblems() {
    Reading<String> failed = Reading.failed(problems());
    IllegalArgumentException e = assertThrows(IllegalArgumentException.class, failed::orThrow);
    assertEquals(3, e.getMessage().lines().count());
  }
}
