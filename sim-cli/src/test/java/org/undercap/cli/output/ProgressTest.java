package org.undercap.cli.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

/** The line that says how far a run has come. */
class ProgressTest {
  private static final long SECOND = 1_000_000_000L;

  private final StringWriter err = new StringWriter();
  private long now;

  private Progress progress(boolean shown) {
    return new Progress(new PrintWriter(err), shown, "runs", 1000, () -> now);
  }

  @Test
  void saysNothingInTheFirstSecondOrWhereNobodyWatches() {
    try (Progress watched = progress(true);
        Progress alone = progress(false)) {
      now = SECOND / 2;
      watched.add(10);
      alone.add(10);
      now = 100 * SECOND;
      alone.add(10);
    }
    assertEquals("", err.toString());
  }

  @Test
  void tellsHowMuchTimeIsLeft() {
    try (Progress progress = progress(true)) {
      now = 10 * SECOND;
      progress.add(250);
      assertEquals("\r250 of 1000 runs (25 %), 30 s left", err.toString());
    }
    String wiped = "\r" + " ".repeat(34) + "\r";
    assertTrue(err.toString().endsWith(wiped), err.toString());
  }

  @Test
  void earlierWorkSaysNothingAboutTheSpeed() {
    Progress progress = progress(true);
    progress.skip(500);
    now = 60 * SECOND;
    progress.add(50);
    assertEquals("\r550 of 1000 runs (55 %), 9 min left", err.toString());
  }

  @Test
  void longTimesAreInHours() {
    Progress progress = progress(true);
    now = 90 * SECOND;
    progress.add(5);
    assertEquals("\r5 of 1000 runs (0 %), 4 h 59 min left", err.toString());
  }

  @Test
  void doesNotWriteMoreThanFourTimesASecond() {
    Progress progress = progress(true);
    for (int i = 0; i < 1000; i++) {
      now += SECOND / 100;
      progress.add(1);
    }
    assertEquals(37, err.toString().chars().filter(c -> c == '\r').count());
  }
}
