package org.undercap.sensitivity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.undercap.sensitivity.ElementaryEffects.Effect;

class ElementaryEffectsTest {

  @Test
  void straightLineHasItsSlopesEverywhere() {
    ElementaryEffects found =
        ElementaryEffects.estimate(3, 10, 1, TestFunctions.each(u -> 5 * u[0] - 2 * u[1]));
    assertEffect(5, 5, 0, found.effects().get(0));
    assertEffect(-2, 2, 0, found.effects().get(1));
    assertEffect(0, 0, 0, found.effects().get(2));
  }

  @Test
  void interactionShowsAsDeviation() {
    ElementaryEffects found =
        ElementaryEffects.estimate(2, 400, 1, TestFunctions.each(u -> 4 * u[0] * u[1]));
    Effect effect = found.effects().get(0);
    // The slope is four times the other coordinate: even over 0.5, 1.5, 2.5, 3.5.
    assertEquals(2, effect.mean(), 0.15);
    assertEquals(StrictMath.sqrt(1.25), effect.deviation(), 0.08);
    assertEquals(effect.deviation() / 20, effect.standardError(), 1e-12);
  }

  @Test
  void signsThatCancelDoNotHideAnEffect() {
    ElementaryEffects found =
        ElementaryEffects.estimate(
            2, 300, 2, TestFunctions.each(u -> (u[0] - 0.5) * (u[1] < 0.5 ? -1 : 1)));
    Effect effect = found.effects().get(0);
    assertEquals(0, effect.mean(), 0.2);
    assertEquals(1, effect.meanAbsolute(), 1e-12);
  }

  @Test
  void ranksTheIshigamiFunction() {
    ElementaryEffects found = ElementaryEffects.estimate(3, 50, 5, TestFunctions.ishigami());
    double none = 1e-12;
    assertTrue(found.effects().get(0).meanAbsolute() > 5);
    assertTrue(found.effects().get(2).meanAbsolute() > none);
    assertTrue(found.effects().get(2).deviation() > found.effects().get(2).mean());
  }

  @Test
  void eachStepMovesOneCoordinateByHalfAndEachIsMovedOnceAWalk() {
    int dimensions = 5;
    MorrisDesign design = MorrisDesign.of(dimensions, 6, 4, 9);
    for (int first = 0; first < design.size(); first += dimensions + 1) {
      Set<Integer> moved = new HashSet<>();
      for (int step = 1; step <= dimensions; step++) {
        double[] before = design.point(first + step - 1);
        double[] after = design.point(first + step);
        int changes = 0;
        for (int i = 0; i < dimensions; i++) {
          assertTrue(after[i] > 0 && after[i] < 1);
          if (before[i] != after[i]) {
            assertEquals(0.5, Math.abs(after[i] - before[i]));
            moved.add(i);
            changes++;
          }
        }
        assertEquals(1, changes);
      }
      assertEquals(dimensions, moved.size());
    }
  }

  @Test
  void wrongUseIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> MorrisDesign.of(0, 5, 4, 1));
    assertThrows(IllegalArgumentException.class, () -> MorrisDesign.of(2, 1, 4, 1));
    assertThrows(IllegalArgumentException.class, () -> MorrisDesign.of(2, 5, 3, 1));
    MorrisDesign design = MorrisDesign.of(2, 5, 4, 1);
    assertThrows(IllegalArgumentException.class, () -> design.effects(new double[14]));
    double[] broken = new double[15];
    broken[3] = Double.NaN;
    assertThrows(IllegalArgumentException.class, () -> design.effects(broken));
  }

  private static void assertEffect(double mean, double absolute, double deviation, Effect found) {
    assertEquals(mean, found.mean(), 1e-12);
    assertEquals(absolute, found.meanAbsolute(), 1e-12);
    assertEquals(deviation, found.deviation(), 1e-12);
  }
}
