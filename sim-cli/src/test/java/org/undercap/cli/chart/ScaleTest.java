package org.undercap.cli.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScaleTest {
  @ParameterizedTest
  @CsvSource({
    "1234, 7, 1400, 200",
    "1234, 6, 1500, 500",
    "1.03, 3, 1.5, 0.5",
    "1000, 5, 1000, 200",
    "1001, 5, 1500, 500",
    "0.37, 4, 0.4, 0.1",
    "3, 6, 3, 0.5",
    "0, 6, 1, 1",
    "34000, 3, 40000, 20000"
  })
  void stepsAreRound(double largest, int steps, double top, double step) {
    assertEquals(new Scale(top, step), Scale.covering(largest, steps));
  }

  @Test
  void everyAxisHoldsItsLargestValueInFewSteps() {
    for (double largest = 1e-6; largest < 1e12; largest *= 1.37) {
      for (int steps = 2; steps <= 8; steps++) {
        Scale scale = Scale.covering(largest, steps);
        assertTrue(scale.top() >= largest * (1 - 1e-9), largest + " in " + scale);
        assertTrue(scale.top() <= largest * 2.5, largest + " in " + scale);
        assertTrue(scale.top() / scale.step() <= steps + 1e-9, largest + " in " + scale);
      }
    }
  }

  @Test
  void labelsShowWhatTheStepNeeds() {
    assertEquals("12,000", new Scale(20000, 2000).label(12000));
    assertEquals("0.3", new Scale(0.4, 0.1).label(0.30000000000000004));
    assertEquals("1.50", new Scale(2, 0.05).label(1.5));
  }
}
