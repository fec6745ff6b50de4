package org.undercap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ForAllTest {

  private static Stream<Integer> smaller(int n) {
    return IntStream.of(n / 2, n - 1).boxed();
  }

  @Test
  void triesTheSameCasesInEveryRun() {
    List<Integer> first = new ArrayList<>();
    List<Integer> second = new ArrayList<>();
    ForAll.cases(20, random -> random.nextInt(1000), n -> Stream.of(), first::add);
    ForAll.cases(20, random -> random.nextInt(1000), n -> Stream.of(), second::add);
    assertEquals(first, second);
    assertTrue(first.stream().distinct().count() > 10, first::toString);
  }

  @Test
  void reportsSeedAndSimplestFailingCase() {
    AssertionError error =
        assertThrows(
            AssertionError.class,
            () ->
                ForAll.cases(
                    50,
                    random -> 100 + random.nextInt(900),
                    ForAllTest::smaller,
                    n -> assertTrue(n < 7, "too large")));
    assertTrue(
        error.getMessage().startsWith("seed 20260101, simplest case that fails: 7\n"),
        error.getMessage());
  }
}
