package org.undercap.ensemble;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** A belief that answers the same question about the same members only once. */
final class RememberedBelief implements MiteBelief {
  private final MiteBelief belief;
  private final Map<Question, double[]> answers = new ConcurrentHashMap<>();

  RememberedBelief(MiteBelief belief) {
    this.belief = belief;
  }

  private record Question(List<Double> places, List<Double> bees, List<Double> broodCells) {
    static List<Double> list(double[] values) {
      return Arrays.stream(values).boxed().toList();
    }
  }

  @Override
  public double[] mites(double[] places, double[] bees, double[] broodCells) {
    Question question =
        new Question(Question.list(places), Question.list(bees), Question.list(broodCells));
    return answers
        .computeIfAbsent(question, asked -> belief.mites(places, bees, broodCells))
        .clone();
  }
}
