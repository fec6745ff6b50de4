package org.undercap.ensemble;

import java.util.EnumMap;
import java.util.Map;

/** The outcomes of all members under one plan. */
public final class OutcomeTable {
  private final Map<Outcome, double[]> values = new EnumMap<>(Outcome.class);

  OutcomeTable(int members) {
    for (Outcome outcome : Outcome.values()) {
      values.put(outcome, new double[members]);
    }
  }

  /** One outcome, live: members of different blocks may be written by different threads. */
  double[] values(Outcome outcome) {
    return values.get(outcome);
  }

  /**
   * One outcome of all members.
   *
   * @param outcome which
   * @return a copy, one value a member; unit as {@link Outcome} says
   */
  public double[] of(Outcome outcome) {
    return values.get(outcome).clone();
  }

  /**
   * Quantiles of an outcome over the members.
   *
   * @param outcome which
   * @param shares shares (fraction, 0 to 1)
   * @return the quantiles in the order of the shares
   */
  public double[] quantiles(Outcome outcome, double... shares) {
    return Quantiles.of(values.get(outcome), shares);
  }

  /**
   * The median of an outcome over the members.
   *
   * @param outcome which
   * @return its median; unit as {@link Outcome} says
   */
  public double median(Outcome outcome) {
    return quantiles(outcome, 0.5)[0];
  }

  /**
   * The mean of an outcome over the members.
   *
   * @param outcome which
   * @return its mean; unit as {@link Outcome} says
   */
  public double mean(Outcome outcome) {
    double sum = 0;
    for (double x : values.get(outcome)) {
      sum += x;
    }
    return sum / values.get(outcome).length;
  }
}
