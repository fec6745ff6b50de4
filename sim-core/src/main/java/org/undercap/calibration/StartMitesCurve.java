package org.undercap.calibration;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.interpolation.AkimaSplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.apache.commons.rng.UniformRandomProvider;
import org.undercap.monitoring.CountLaw;
import org.undercap.parameter.ParameterSet;

/**
 * The counts of one colony under one set of parameters, for any number of mites at its start. That
 * number is not known; it is believed to be flat in the logarithm between 1 and 60,000, and summed
 * over. What the observations add up is run for some numbers of mites and drawn out between them as
 * a smooth curve of its logarithm.
 */
final class StartMitesCurve {
  static final double FEWEST = 1;
  static final double MOST = 60_000;
  private static final int NODES = 18;
  private static final int COARSE = 19;
  private static final int FINE = 33;

  /** How far the logarithm of the likelihood may fall before the rest is left out. */
  private static final double NEGLIGIBLE = 14;

  private static final double NEARLY_NOTHING = 1e-12;
  private static final double RANGE = StrictMath.log(MOST / FEWEST);

  private final List<Observation> observations;
  private final List<PolynomialSplineFunction> curves = new ArrayList<>();
  private final ParameterSet parameters;
  private final CountErrors errors;
  private final double[] logMites = new double[FINE];
  private final double[] weights = new double[FINE];
  private final double logLikelihood;

  /**
   * Sums over the mites of the start.
   *
   * @param observations the counts
   * @param sums what they add up, one row a node
   */
  StartMitesCurve(
      List<Observation> observations,
      double[][] sums,
      ParameterSet parameters,
      CountErrors errors) {
    this.observations = observations;
    this.parameters = parameters;
    this.errors = errors;
    double[] nodes = even(0, RANGE, NODES);
    for (int i = 0; i < observations.size(); i++) {
      double[] logs = new double[NODES];
      for (int node = 0; node < NODES; node++) {
        logs[node] = StrictMath.log(sums[node][i] + NEARLY_NOTHING);
      }
      curves.add(new AkimaSplineInterpolator().interpolate(nodes, logs));
    }
    logLikelihood = sumUp();
  }

  /** Mites at the start for which the model is run (mites). */
  static double[] nodes() {
    double[] nodes = even(0, RANGE, NODES);
    for (int i = 0; i < NODES; i++) {
      nodes[i] = FEWEST * StrictMath.exp(nodes[i]);
    }
    return nodes;
  }

  private static double[] even(double from, double to, int count) {
    double[] even = new double[count];
    for (int i = 0; i < count; i++) {
      even[i] = i == count - 1 ? to : from + (to - from) * i / (count - 1);
    }
    return even;
  }

  /** First where it matters on a coarse grid, then there on a fine one. */
  private double sumUp() {
    double[] coarse = even(0, RANGE, COARSE);
    double[] logs = likelihoods(coarse);
    double top = largest(logs);
    if (top == Double.NEGATIVE_INFINITY) {
      return top;
    }
    int first = COARSE;
    int last = -1;
    for (int i = 0; i < COARSE; i++) {
      if (logs[i] > top - NEGLIGIBLE) {
        first = Math.min(first, i);
        last = i;
      }
    }
    double[] fine =
        even(coarse[Math.max(0, first - 1)], coarse[Math.min(COARSE - 1, last + 1)], FINE);
    System.arraycopy(fine, 0, logMites, 0, FINE);
    logs = likelihoods(fine);
    top = largest(logs);
    double sum = 0;
    for (int i = 0; i < FINE; i++) {
      weights[i] = StrictMath.exp(logs[i] - top) * (i == 0 || i == FINE - 1 ? 0.5 : 1);
      sum += weights[i];
    }
    for (int i = 0; i < FINE; i++) {
      weights[i] /= sum;
    }
    double alone = 0;
    for (int o = 0; o < observations.size(); o++) {
      alone += law(o, fine[0]).logOfCountAlone(observations.get(o).found());
    }
    return alone + top + StrictMath.log(sum * (fine[1] - fine[0]) / RANGE);
  }

  /** Without what depends on the counts alone. */
  private double[] likelihoods(double[] at) {
    double[] logs = new double[at.length];
    for (int i = 0; i < at.length; i++) {
      for (int o = 0; o < observations.size(); o++) {
        logs[i] += law(o, at[i]).logLikelihood(observations.get(o).found());
      }
      logs[i] = Double.isNaN(logs[i]) ? Double.NEGATIVE_INFINITY : logs[i];
    }
    return logs;
  }

  private static double largest(double[] logs) {
    double top = Double.NEGATIVE_INFINITY;
    for (double log : logs) {
      top = Math.max(top, log);
    }
    return top;
  }

  private CountLaw law(int observation, double logMites) {
    double sum = StrictMath.exp(curves.get(observation).value(logMites)) - NEARLY_NOTHING;
    return observations.get(observation).law(Math.max(0, sum), parameters, errors);
  }

  /** Logarithm of the likelihood of all counts, summed over the mites of the start. */
  double logLikelihood() {
    return logLikelihood;
  }

  /** What each observation may find. */
  List<CountLaw> laws(double mites) {
    double at = Math.max(0, Math.min(RANGE, StrictMath.log(mites / FEWEST)));
    List<CountLaw> laws = new ArrayList<>();
    for (int i = 0; i < observations.size(); i++) {
      laws.add(law(i, at));
    }
    return laws;
  }

  /** Mites at the start below which a share of the belief lies (mites). */
  double quantile(double share) {
    double below = 0;
    for (int i = 0; i < FINE; i++) {
      if (below + weights[i] >= share || i == FINE - 1) {
        double step = logMites[1] - logMites[0];
        double part = weights[i] > 0 ? (share - below) / weights[i] - 0.5 : 0;
        double at = Math.max(0, Math.min(RANGE, logMites[i] + part * step));
        return FEWEST * StrictMath.exp(at);
      }
      below += weights[i];
    }
    throw new IllegalStateException("no share of the belief reaches " + share);
  }

  /** Mites at the start by chance, as believed. */
  double draw(UniformRandomProvider random) {
    return quantile(random.nextDouble());
  }
}
