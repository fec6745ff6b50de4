package org.undercap.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.undercap.monitoring.Interval;

class FindingsTest {
  private static Findings findings(Interval... accepted) {
    return new Findings(
        new PublishedCheck(
            "id",
            "group",
            "what",
            "3",
            List.of(accepted),
            "mites",
            "how",
            List.of(),
            "none",
            false,
            PublishedCheck.Kind.BIOLOGY));
  }

  private static Inside verdict(Findings findings) {
    return findings.result("because").inside();
  }

  @Test
  void everyNumberMustBeInside() {
    Findings both = findings(new Interval(1, 2));
    both.judge("a", 1);
    both.judge("b", 2);
    assertEquals(Inside.YES, verdict(both));
    both.judge("c", 2.0001);
    assertEquals(Inside.NO, verdict(both));
    assertEquals("because", both.result("because").reason());
  }

  @Test
  void numbersMeetTheirOwnIntervals() {
    Findings two = findings(new Interval(1, 2), new Interval(10, 20));
    two.judge("a", 1.5);
    assertThrows(IllegalStateException.class, () -> two.result(""));
    two.judge("b", 1.5);
    assertEquals(Inside.NO, verdict(two));
    assertThrows(IllegalStateException.class, () -> two.judge("c", 1));
  }

  @Test
  void noNumberIsOutside() {
    Findings nan = findings(new Interval(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY));
    nan.judge("a", Double.NaN);
    assertEquals(Inside.NO, verdict(nan));
  }

  @Test
  void conditionsCount() {
    Findings direction = findings();
    direction.show("shown", 99, "mites");
    direction.require("up", true);
    assertEquals(Inside.YES, verdict(direction));
    direction.require("down", false);
    assertEquals(Inside.NO, verdict(direction));
    assertEquals("shown 99 mites; up: yes; down: no", direction.result("").ours());
  }

  @Test
  void aCheckThatJudgesNothingIsADefect() {
    Findings nothing = findings(new Interval(1, 2));
    nothing.show("shown", 1.5, "mites");
    assertThrows(IllegalStateException.class, () -> nothing.result(""));
  }

  @Test
  void numbersHaveFourDigits() {
    assertEquals("13.87 mites", new Measured("", 13.8709, "mites", Optional.empty()).toText());
    assertEquals("12350", new Measured("", 12345.6, "ratio", Optional.empty()).toText());
    assertEquals("a 1.2e-09", new Measured("a", 1.23e-9, "", Optional.empty()).toText());
    assertEquals("0", new Measured("", 0, "", Optional.empty()).toText());
  }
}
