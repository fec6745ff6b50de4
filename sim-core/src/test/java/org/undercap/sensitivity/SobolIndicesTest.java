package org.undercap.sensitivity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;
import org.undercap.sensitivity.SobolIndices.Index;

class SobolIndicesTest {
  private static final int ROWS = 1 << 14;

  @Test
  void ishigamiFunctionWithinOneHundredthAndInsideItsIntervals() {
    SobolIndices found = SobolIndices.estimate(3, ROWS, 1, TestFunctions.ishigami());
    assertEquals(3.5, found.mean(), 0.01);
    assertEquals(13.8446, found.variance(), 0.05);
    assertAgree(found.first(), 0.01, 0.3139, 0.4424, 0);
    assertAgree(found.total(), 0.01, 0.5576, 0.4424, 0.2437);
  }

  @Test
  void productOfTentsHasItsKnownIndices() {
    double[] a = {0, 1, 4.5, 9, 99, 99};
    double[] alone = new double[a.length];
    double whole = 1;
    for (int i = 0; i < a.length; i++) {
      alone[i] = 1 / (3 * (1 + a[i]) * (1 + a[i]));
      whole *= 1 + alone[i];
    }
    double variance = whole - 1;
    SobolIndices found = SobolIndices.estimate(a.length, ROWS, 7, TestFunctions.productOfTents(a));
    assertEquals(1, found.mean(), 1e-3);
    assertEquals(variance, found.variance(), 0.005);
    for (int i = 0; i < a.length; i++) {
      assertEquals(alone[i] / variance, found.first().get(i).value(), 0.01);
      double total = alone[i] * (whole / (1 + alone[i])) / variance;
      assertEquals(total, found.total().get(i).value(), 0.01);
    }
  }

  @Test
  void sameSeedSameIndicesWhateverTheThreads() throws InterruptedException {
    SobolDesign design = SobolDesign.of(3, 1 << 8, 3);
    double[] alone = design.evaluate(TestFunctions.ishigami());
    for (int threads : new int[] {1, 3}) {
      ExecutorService pool = Executors.newFixedThreadPool(threads);
      try {
        double[] together = design.evaluate(TestFunctions.ishigami(), pool);
        assertEquals(design.indices(alone, 200, 3), design.indices(together, 200, 3));
      } finally {
        pool.shutdown();
      }
    }
    SobolIndices other = SobolIndices.estimate(3, 1 << 8, 4, TestFunctions.ishigami());
    assertNotEquals(design.indices(alone, 500, 3), other);
  }

  @Test
  void anOutcomeThatNeverChangesHasNoIndices() {
    SobolIndices found = SobolIndices.estimate(2, 64, 1, TestFunctions.each(u -> 5));
    assertEquals(0, found.variance());
    assertEquals(new Index(0, 0, 0), found.first().get(0));
    assertEquals(new Index(0, 0, 0), found.total().get(1));
  }

  @Test
  void wrongUseIsRefused() {
    SobolDesign design = SobolDesign.of(2, 4, 1);
    assertThrows(IllegalArgumentException.class, () -> SobolDesign.of(0, 4, 1));
    assertThrows(IllegalArgumentException.class, () -> SobolDesign.of(2, 1, 1));
    assertThrows(IllegalArgumentException.class, () -> design.indices(new double[3], 200, 1));
    assertThrows(IllegalArgumentException.class, () -> design.indices(new double[16], 99, 1));
    assertThrows(
        IllegalStateException.class, () -> design.evaluate(TestFunctions.each(u -> Double.NaN)));
    assertThrows(IllegalStateException.class, () -> design.evaluate(points -> new double[1]));
  }

  private static void assertAgree(List<Index> found, double tolerance, double... exact) {
    for (int i = 0; i < exact.length; i++) {
      Index index = found.get(i);
      assertEquals(exact[i], index.value(), tolerance);
      assertTrue(
          index.low() <= exact[i] + 5e-5 && exact[i] - 5e-5 <= index.high(),
          exact[i] + " is outside " + index);
    }
  }
}
