package org.undercap.monitoring;

import java.util.List;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;

/** How likely the counts are in each model colony. */
final class Likelihood {
  private final List<Count> counts;
  private final double washSpread;
  private final double boardSpread;

  Likelihood(List<Count> counts, ParameterSet parameters) {
    this(
        counts,
        parameters.value(ParameterId.COUNT_SPREAD_WASH),
        parameters.value(ParameterId.COUNT_SPREAD_BOARD));
  }

  private Likelihood(List<Count> counts, double washSpread, double boardSpread) {
    this.counts = List.copyOf(counts);
    this.washSpread = washSpread;
    this.boardSpread = boardSpread;
  }

  /** The same counts by chance alone. */
  Likelihood withoutSpread() {
    return new Likelihood(counts, 0, 0);
  }

  /** The law of a count where the model tells what it would meet. */
  CountLaw law(Count count, double signal, double detection) {
    if (count instanceof Wash wash) {
      return CountLaw.among(wash.bees(), detection * Math.min(1, signal), washSpread);
    } else if (count instanceof Board) {
      return CountLaw.falling(detection * signal, boardSpread);
    } else if (count instanceof DroneCells cells) {
      return CountLaw.among(cells.opened(), detection * signal, 0);
    }
    return CountLaw.among(((WorkerCells) count).opened(), detection * signal, 0);
  }

  /** What was found, as far as the law of the count knows it: no more infested bees than bees. */
  static double found(Count count) {
    return count instanceof Wash wash ? Math.min(wash.mites(), wash.bees()) : count.found();
  }

  /**
   * Logarithm of the likelihood of all counts together, for each colony and a draw of the methods.
   *
   * @param signals what the counts would meet
   * @param method which draw of the methods belongs to which row
   */
  double[] logarithms(Signals signals, Unknowns unknowns, RowToMethod method) {
    double[] logarithms = new double[signals.colonies()];
    for (int i = 0; i < counts.size(); i++) {
      if (!signals.tells(i)) {
        continue;
      }
      Count count = counts.get(i);
      double found = found(count);
      double[] values = signals.ofCount(i);
      for (int colony = 0; colony < values.length; colony++) {
        double detection = unknowns.detection(count, method.of(colony % signals.rows()));
        logarithms[colony] +=
            Double.isNaN(values[colony])
                ? Double.NEGATIVE_INFINITY
                : law(count, values[colony], detection).logLikelihood(found);
      }
    }
    return logarithms;
  }

  /** The same, with the draws of the methods averaged over in each colony. */
  double[] averaged(Signals signals, Unknowns unknowns, int draws) {
    double[][] logarithms = new double[draws][];
    for (int draw = 0; draw < draws; draw++) {
      int fixed = draw;
      logarithms[draw] = logarithms(signals, unknowns, row -> fixed);
    }
    double[] averaged = new double[signals.colonies()];
    for (int colony = 0; colony < averaged.length; colony++) {
      averaged[colony] = logarithmOfSum(logarithms, colony);
    }
    return averaged;
  }

  private static double logarithmOfSum(double[][] logarithms, int colony) {
    double most = Double.NEGATIVE_INFINITY;
    for (double[] draw : logarithms) {
      most = Math.max(most, draw[colony]);
    }
    if (most == Double.NEGATIVE_INFINITY) {
      return most;
    }
    double sum = 0;
    for (double[] draw : logarithms) {
      sum += StrictMath.exp(draw[colony] - most);
    }
    return most + StrictMath.log(sum);
  }

  /** Which draw of the methods belongs to a row. */
  @FunctionalInterface
  interface RowToMethod {
    int of(int row);
  }
}
