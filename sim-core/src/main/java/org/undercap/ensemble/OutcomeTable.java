package org.undercap.ensemble;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;

/** The outcomes of all members under one plan. */
public final class OutcomeTable implements Averages {
  private final Map<Outcome, double[]> values = new EnumMap<>(Outcome.class);

  OutcomeTable(int members) {
    for (Outcome outcome : Outcome.values()) {
      double[] ofMembers = new double[members];
      Arrays.fill(ofMembers, outcome.ofLiving() ? Double.NaN : 0);
      values.put(outcome, ofMembers);
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

  private double[] known(Outcome outcome) {
    double[] all = values.get(outcome);
    return outcome.ofLiving()
        ? Arrays.stream(all).filter(value -> !Double.isNaN(value)).toArray()
        : all;
  }

  /**
   * Quantiles of an outcome over the members that have it.
   *
   * @param outcome which
   * @param shares shares (fraction, 0 to 1)
   * @return the quantiles in the order of the shares; NaN if no member has it
   */
  public double[] quantiles(Outcome outcome, double... shares) {
    double[] known = known(outcome);
    if (known.length == 0) {
      double[] none = new double[shares.length];
      Arrays.fill(none, Double.NaN);
      return none;
    }
    return Quantiles.of(known, shares);
  }

  @Override
  public double median(Outcome outcome) {
    return quantiles(outcome, 0.5)[0];
  }

  @Override
  public double mean(Outcome outcome) {
    double[] known = known(outcome);
    double sum = 0;
    for (double x : known) {
      sum += x;
    }
    return sum / known.length;
  }
}
