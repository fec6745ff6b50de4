package org.undercap.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class FrontTest {
  private static List<Double> aims(double... values) {
    List<Double> list = new ArrayList<>();
    for (double value : values) {
      list.add(value);
    }
    return list;
  }

  @Test
  void layersByHand() {
    List<List<Double>> aims = List.of(aims(1, 4), aims(2, 2), aims(4, 1), aims(3, 3), aims(4, 4));
    assertEquals(List.of(List.of(0, 1, 2), List.of(3), List.of(4)), Front.layers(aims, 99));
  }

  @Test
  void ofEqualChoicesTheFirstIsKept() {
    List<List<Double>> aims = List.of(aims(1, 1), aims(1, 1), aims(1, 1));
    assertEquals(List.of(List.of(0), List.of(1), List.of(2)), Front.layers(aims, 99));
  }

  @Test
  void stopsWhenEnoughAreGiven() {
    List<List<Double>> aims = List.of(aims(1), aims(2), aims(3));
    assertEquals(List.of(List.of(0), List.of(1)), Front.layers(aims, 2));
    assertEquals(List.of(), Front.layers(List.of(), 2));
  }

  @Test
  void nothingBeatsTheFrontAndSomethingBeatsTheRest() {
    SplittableRandom random = new SplittableRandom(7);
    List<List<Double>> aims = new ArrayList<>();
    for (int i = 0; i < 200; i++) {
      aims.add(aims(random.nextInt(9), random.nextInt(9), random.nextInt(9)));
    }
    List<Integer> front = Front.layers(aims, 1).get(0);
    for (int i = 0; i < aims.size(); i++) {
      int place = i;
      boolean beaten = aims.stream().anyMatch(other -> strictlyBetter(other, aims.get(place)));
      if (front.contains(i)) {
        assertTrue(!beaten, "on the front: " + aims.get(i));
      } else {
        assertTrue(
            beaten
                || front.stream().anyMatch(f -> f < place && aims.get(f).equals(aims.get(place))),
            "behind the front: " + aims.get(i));
      }
    }
  }

  private static boolean strictlyBetter(List<Double> one, List<Double> other) {
    boolean better = false;
    for (int aim = 0; aim < one.size(); aim++) {
      if (one.get(aim) > other.get(aim)) {
        return false;
      }
      better |= one.get(aim) < other.get(aim);
    }
    return better;
  }
}
