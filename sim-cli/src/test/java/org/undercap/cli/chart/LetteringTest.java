package org.undercap.cli.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class LetteringTest {
  private final Lettering letters = Lettering.regular(10);

  @Test
  void everyLineFitsAndNoWordIsLost() {
    String text =
        "Queen caged for 25 days, then Oxalsaeuretraeufelbehandlung on bees without brood";
    List<String> lines = letters.wrap(text, 90);
    lines.forEach(line -> assertTrue(letters.width(line) <= 90, line));
    assertEquals(text.replace(" ", ""), String.join("", lines).replace(" ", ""));
  }

  @Test
  void datesAreNotBroken() {
    String date = "6\u00a0Sep";
    double width = letters.width("until " + date) - 1;
    assertEquals(List.of("until", date), letters.wrap("until " + date, width));
  }

  @Test
  void longTextEndsInAnEllipsis() {
    List<String> lines = letters.wrap("one two three four five six seven eight", 60, 2);
    assertEquals(2, lines.size());
    assertTrue(lines.get(1).endsWith("\u2026"), lines.get(1));
    assertTrue(letters.width(lines.get(1)) <= 60, lines.get(1));
    assertEquals(List.of("short"), letters.wrap("short", 60, 2));
  }
}
