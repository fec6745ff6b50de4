package org.undercap.monitoring;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Model colonies and how likely each of them is in the light of the counts. */
final class Posterior {
  private final Signals signals;
  private final Unknowns unknowns;
  private final double[] weights;
  private final double logEvidence;

  private Posterior(Signals signals, Unknowns unknowns, double[] logarithms) {
    this.signals = signals;
    this.unknowns = unknowns;
    weights = weights(signals.mites(), logarithms);
    double most = largest(signals.mites(), logarithms);
    logEvidence = most + StrictMath.log(Arrays.stream(weights).sum() / weights.length);
  }

  /** Colonies whose row has its own draw of the methods. */
  static Posterior of(Likelihood likelihood, Signals signals, Unknowns unknowns) {
    return new Posterior(signals, unknowns, likelihood.logarithms(signals, unknowns, row -> row));
  }

  /**
   * All mites of the colonies of one row, from the logarithms of the likelihoods of all colonies.
   */
  static MiteDistribution ofRow(Signals signals, double[] logarithms, int row) {
    double[] mites = signals.ofRow(signals.mites(), row);
    return MiteDistribution.of(mites, weights(mites, signals.ofRow(logarithms, row)), 1);
  }

  private static double[] weights(double[] mites, double[] logarithms) {
    double most = largest(mites, logarithms);
    double[] weights = new double[logarithms.length];
    for (int i = 0; i < weights.length; i++) {
      weights[i] = mites[i] > 0 ? StrictMath.exp(logarithms[i] - most) : 0;
    }
    return weights;
  }

  private static double largest(double[] mites, double[] logarithms) {
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < logarithms.length; i++) {
      most = mites[i] > 0 ? Math.max(most, logarithms[i]) : most;
    }
    if (most == Double.NEGATIVE_INFINITY) {
      throw new IllegalArgumentException(
          "no colony of so many bees and so much brood could give these counts");
    }
    return most;
  }

  /** Whether the model can tell anything about a count. */
  boolean tells(int count) {
    return signals.tells(count);
  }

  /** Logarithm of the mean likelihood, without the terms that depend on the counts alone. */
  double logEvidence() {
    return logEvidence;
  }

  MiteDistribution mites() {
    return MiteDistribution.of(signals.mites(), weights, signals.rows());
  }

  MiteDistribution mitesPer100Bees() {
    double[] per100 = signals.perBee().clone();
    for (int i = 0; i < per100.length; i++) {
      per100[i] *= 100;
    }
    return MiteDistribution.of(per100, weights, signals.rows());
  }

  /** Probability that there is a mite or more for each bee, so that a wash can tell no more. */
  double shareSaturated() {
    double sum = 0;
    double saturated = 0;
    for (int i = 0; i < weights.length; i++) {
      sum += weights[i];
      boolean last = i >= weights.length - signals.rows();
      saturated += last || signals.perBee()[i] >= 1 ? weights[i] : 0;
    }
    return saturated / sum;
  }

  /** What a count would find, from colonies picked evenly by their weight. */
  CountMixture predicted(Likelihood likelihood, Count count, int index, int picks) {
    double[] values = signals.ofCount(index);
    List<CountLaw> laws = new ArrayList<>();
    for (int colony : picked(picks)) {
      int row = colony % signals.rows();
      if (!Double.isNaN(values[colony])) {
        laws.add(likelihood.law(count, values[colony], unknowns.detection(count, row)));
      }
    }
    return new CountMixture(laws);
  }

  private int[] picked(int picks) {
    double total = 0;
    for (double weight : weights) {
      total += weight;
    }
    int[] picked = new int[picks];
    double sum = 0;
    int next = 0;
    for (int i = 0; i < weights.length && next < picks; i++) {
      sum += weights[i];
      while (next < picks && sum >= total * (next + 0.5) / picks) {
        picked[next++] = i;
      }
    }
    return picked;
  }
}
