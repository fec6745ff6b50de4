package org.undercap.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {

  @ParameterizedTest
  @CsvSource({
    "kitten, sitting, 3",
    "flaw, lawn, 2",
    "same, same, 0",
    "'', abc, 3",
    "abc, '', 3",
    "mites, mite, 1",
    "high, hihg, 1",
    "ab, ba, 1",
    "abcd, badc, 2"
  })
  void distanceIsTheLeastNumberOfChanges(String a, String b, int expected) {
    assertEquals(expected, Nearest.distance(a, b));
  }

  @Test
  void suggestsTheNearestWord() {
    List<String> known = List.of("dense", "none", "low", "collapsing");
    assertEquals(Optional.of("dense"), Nearest.to("dens", known));
    assertEquals(Optional.of("collapsing"), Nearest.to("Colapsing", known));
    assertEquals(Optional.of("collapsing"), Nearest.to("coll", known));
  }

  @Test
  void suggestsNothingWhenNothingIsNear() {
    assertEquals(Optional.empty(), Nearest.to("temperature", List.of("bees", "brood")));
    assertEquals(Optional.empty(), Nearest.to("x", List.of()));
    assertEquals(Optional.empty(), Nearest.to("", List.of("brood")));
  }

  @Test
  void theMessageNamesValueChoicesAndSuggestion() {
    assertEquals(
        "unknown level \"hihg\"; did you mean \"high\"? Accepted: low, high",
        Nearest.unknown("level", "hihg", List.of("low", "high")).getMessage());
    assertEquals(
        "unknown level \"zzzzzz\"; accepted: low, high",
        Nearest.unknown("level", "zzzzzz", List.of("low", "high")).getMessage());
  }
}
