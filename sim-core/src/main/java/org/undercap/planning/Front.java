package org.undercap.planning;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.stream.IntStream;

/** Choices by several aims at once: the front are those that no other beats in every aim. */
final class Front {
  private Front() {}

  /**
   * Sorts choices into layers: the front, the front of what is left without it, and so on.
   *
   * @param aims aims of each choice, the smaller the better
   * @param most layers are given until they hold at least so many choices
   * @return places of the choices, layer by layer, in rising order within each; of equal choices
   *     only the first is in a layer, the others in later ones
   */
  static List<List<Integer>> layers(List<List<Double>> aims, int most) {
    List<List<Integer>> layers = new ArrayList<>();
    List<Integer> left = new ArrayList<>(IntStream.range(0, aims.size()).boxed().toList());
    int given = 0;
    while (!left.isEmpty() && given < most) {
      List<Integer> rest = left;
      List<Integer> layer =
          left.stream().filter(i -> rest.stream().noneMatch(j -> beats(aims, j, i))).toList();
      layers.add(layer);
      given += layer.size();
      List<Integer> next = new ArrayList<>(left);
      next.removeAll(new HashSet<>(layer));
      left = next;
    }
    return layers;
  }

  private static boolean beats(List<List<Double>> aims, int one, int other) {
    boolean better = one < other;
    boolean same = true;
    for (int aim = 0; aim < aims.get(one).size(); aim++) {
      double mine = aims.get(one).get(aim);
      double theirs = aims.get(other).get(aim);
      if (mine > theirs) {
        return false;
      }
      same &= mine == theirs;
    }
    return one != other && (!same || better);
  }
}
