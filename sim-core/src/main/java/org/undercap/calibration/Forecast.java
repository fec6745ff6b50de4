package org.undercap.calibration;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.undercap.internal.Randoms;
import org.undercap.monitoring.CountLaw;

/** What draws of the parameters, and of the mites of each colony, foretell for observations. */
final class Forecast {
  private static final double IN_80 = 0.1;
  private static final double IN_95 = 0.025;

  private final CountModel model;
  private final List<List<List<CountLaw>>> byDraw = new ArrayList<>();

  /**
   * Draws the mites of each colony as the fitted counts tell them.
   *
   * @param fitted the model with the counts that were fitted
   * @param model the model with the counts to foretell, of the same colonies
   */
  Forecast(CountModel fitted, CountModel model, double[][] draws, long seed) {
    this.model = model;
    UniformRandomProvider random = Randoms.of(seed, "mites of a forecast");
    List<List<StartMitesCurve>> told = fitted.curves(draws);
    List<List<StartMitesCurve>> asked = fitted == model ? told : model.curves(draws);
    for (int draw = 0; draw < draws.length; draw++) {
      List<List<CountLaw>> colonies = new ArrayList<>();
      for (int colony = 0; colony < model.courses().size(); colony++) {
        double mites = told.get(draw).get(colony).draw(random);
        colonies.add(asked.get(draw).get(colony).laws(mites));
      }
      byDraw.add(colonies);
    }
  }

  PredictiveCheck check(long seed) {
    int counts = 0;
    int in80 = 0;
    int in95 = 0;
    double score = 0;
    for (int colony = 0; colony < model.courses().size(); colony++) {
      List<Observation> observations = model.courses().get(colony).observations();
      for (int i = 0; i < observations.size(); i++) {
        double found = observations.get(i).found();
        double place = place(colony, i, found);
        counts++;
        in80 += place >= IN_80 && place <= 1 - IN_80 ? 1 : 0;
        in95 += place >= IN_95 && place <= 1 - IN_95 ? 1 : 0;
        score += logProbability(colony, i, found);
      }
    }
    return new PredictiveCheck(
        counts, score / counts, (double) in80 / counts, (double) in95 / counts, worse(seed));
  }

  /** Mean and the middle 95 % of what an observation may find. */
  double[] band(int colony, int observation, long seed) {
    UniformRandomProvider random = Randoms.of(seed, "band of " + colony + " " + observation);
    double[] sample =
        byDraw.stream()
            .mapToDouble(draw -> draw.get(colony).get(observation).draw(random))
            .sorted()
            .toArray();
    int cut = (int) (IN_95 * sample.length);
    double mean =
        byDraw.stream()
            .mapToDouble(draw -> draw.get(colony).get(observation).mean())
            .average()
            .orElse(0);
    return new double[] {mean, sample[cut], sample[sample.length - 1 - cut]};
  }

  private double place(int colony, int i, double found) {
    double sum = 0;
    for (List<List<CountLaw>> draw : byDraw) {
      sum += draw.get(colony).get(i).place(found);
    }
    return sum / byDraw.size();
  }

  /** Logarithm of the mean probability, kept from underflow by its largest term. */
  private double logProbability(int colony, int i, double found) {
    double[] logs =
        byDraw.stream().mapToDouble(d -> d.get(colony).get(i).logProbability(found)).toArray();
    double top = Double.NEGATIVE_INFINITY;
    for (double log : logs) {
      top = Math.max(top, log);
    }
    if (top == Double.NEGATIVE_INFINITY) {
      return -Double.MAX_VALUE;
    }
    double sum = 0;
    for (double log : logs) {
      sum += StrictMath.exp(log - top);
    }
    return top + StrictMath.log(sum / logs.length);
  }

  /** Share of simulated data sets, one a draw, that lie farther from the draw than the counts. */
  private double worse(long seed) {
    UniformRandomProvider random = Randoms.of(seed, "simulated counts");
    double worse = 0;
    for (List<List<CountLaw>> draw : byDraw) {
      double real = 0;
      double simulated = 0;
      for (int colony = 0; colony < draw.size(); colony++) {
        List<Observation> observations = model.courses().get(colony).observations();
        for (int i = 0; i < observations.size(); i++) {
          CountLaw law = draw.get(colony).get(i);
          real += squared(law, observations.get(i).found());
          simulated += squared(law, law.draw(random));
        }
      }
      worse += simulated > real ? 1 : simulated == real ? 0.5 : 0;
    }
    return worse / byDraw.size();
  }

  private static double squared(CountLaw law, double found) {
    double z = found - law.mean();
    return law.variance() > 0 ? z * z / law.variance() : z == 0 ? 0 : Double.MAX_VALUE;
  }
}
