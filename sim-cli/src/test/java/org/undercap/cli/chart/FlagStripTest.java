package org.undercap.cli.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class FlagStripTest {
  private final FlagStrip strip = new FlagStrip(Letters.of(ChartStyle.A4), 0, 400);

  private void place(String words, double pole) {
    strip.place(new Flag(List.of(words), List.of(pole), false));
  }

  @Test
  void distantFlagsShareARow() {
    place("oxalic dribble", 250);
    place("thymol gel", 50);
    assertEquals(1, strip.rows());
    assertFalse(strip.crowded());
  }

  @Test
  void closeFlagsStandAboveEachOther() {
    place("oxalic vapour", 30);
    place("thymol gel", 20);
    place("queen caged", 10);
    assertEquals(3, strip.rows());
    assertFalse(strip.crowded());
  }

  @Test
  void flagAtTheRightEdgeFliesToTheLeft() {
    place("oxalic dribble", 395);
    assertEquals(1, strip.rows());
    assertFalse(strip.crowded());
  }

  @Test
  void poleThroughWordsIsReported() {
    place("a very long label that flies to the left", 395);
    place("thymol gel", 394);
    place("another very long label that leaves no room at all, none", 240);
    assertTrue(strip.crowded());
  }

  @Test
  void emptyStripTakesNoRoom() {
    assertEquals(0, strip.height());
  }
}
