package org.undercap.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.undercap.internal.Randoms;
import org.undercap.monitoring.CountLaw;
import org.undercap.parameter.ParameterSet;

/** Parameters fitted to counts, and how well they tell the counts. */
public final class CountFitResult {
  private static final int DRAWS = 128;
  private static final int STARTS = 8;
  private static final double TAIL = 0.025;

  private final CountModel model;
  private final FitResult fit;

  CountFitResult(CountModel model, FitResult fit) {
    this.model = model;
    this.fit = fit;
  }

  /**
   * Values, intervals and correlations of the shared parameters and of free errors of the counts.
   *
   * @return the fit
   */
  public FitResult fit() {
    return fit;
  }

  /**
   * The model's parameters with the best values.
   *
   * @return a set
   */
  public ParameterSet parameters() {
    return model.set(fit.values());
  }

  /**
   * How counts scatter, as given or as fitted.
   *
   * @return the errors
   */
  public CountErrors errors() {
    return model.errors(fit.values());
  }

  /**
   * All mites of each colony at its start: drawn with the parameters, so that their uncertainty is
   * in it.
   *
   * @param seed decides the draws
   * @return in the order of the colonies
   */
  public List<FittedStart> starts(long seed) {
    List<List<StartMitesCurve>> draws = model.curves(fit.draws(DRAWS, seed));
    UniformRandomProvider random = Randoms.of(seed, "mites of a start");
    List<FittedStart> starts = new ArrayList<>();
    for (int colony = 0; colony < model.courses().size(); colony++) {
      int place = colony;
      double[] mites =
          draws.stream()
              .flatMapToDouble(
                  draw -> DoubleStream.generate(() -> draw.get(place).draw(random)).limit(STARTS))
              .sorted()
              .toArray();
      int cut = (int) (TAIL * mites.length);
      starts.add(
          new FittedStart(
              model.courses().get(colony).colony().name(),
              mites[mites.length / 2],
              mites[cut],
              mites[mites.length - 1 - cut]));
    }
    return List.copyOf(starts);
  }

  /**
   * Each count against what the best values expect.
   *
   * @return in the order of the colonies and their counts
   */
  public List<Residual> residuals() {
    List<StartMitesCurve> best = model.curves(new double[][] {fit.values()}).get(0);
    List<Residual> residuals = new ArrayList<>();
    for (int colony = 0; colony < best.size(); colony++) {
      ColonyCourse course = model.courses().get(colony);
      List<CountLaw> laws = best.get(colony).laws(best.get(colony).quantile(0.5));
      for (int i = 0; i < laws.size(); i++) {
        residuals.add(
            Residual.of(course.colony().name(), course.observations().get(i), laws.get(i)));
      }
    }
    return List.copyOf(residuals);
  }

  /**
   * What the fit would find in each colony on further dates, with the scatter of counts in it.
   *
   * @param asked the same colonies in the same order, with places for counts
   * @param seed decides the draws
   * @return in the order of the colonies and their counts
   */
  public List<Foretold> foretell(List<ObservedColony> asked, long seed) {
    CountModel other = model.withColonies(asked);
    Forecast forecast = new Forecast(model, other, fit.draws(DRAWS, seed), seed);
    List<Foretold> all = new ArrayList<>();
    for (int colony = 0; colony < asked.size(); colony++) {
      List<Observation> observations = other.courses().get(colony).observations();
      for (int i = 0; i < observations.size(); i++) {
        double[] band = forecast.band(colony, i, seed);
        all.add(
            new Foretold(
                asked.get(colony).name(),
                observations.get(i).date(),
                observations.get(i).kind(),
                observations.get(i).found(),
                band[0],
                band[1],
                band[2]));
      }
    }
    return List.copyOf(all);
  }

  /**
   * Whether the counts look like those that the fit would make, and how often they lie in the
   * intervals that it foretells; parameters are drawn around the best values 128 times.
   *
   * @param seed decides the draws
   * @return the check, on the counts that were fitted
   */
  public PredictiveCheck check(long seed) {
    return new Forecast(model, model, fit.draws(DRAWS, seed), seed).check(seed);
  }

  /**
   * How well the fit foretells counts that it has not seen.
   *
   * @param later the same colonies in the same order, with counts that were held out, as {@link
   *     ObservedColony#after} gives them
   * @param seed decides the draws
   * @return the check, on the held-out counts
   * @throws IllegalArgumentException if the colonies are not those of the fit, or none has a count
   */
  public PredictiveCheck heldOut(List<ObservedColony> later, long seed) {
    List<String> fitted = model.courses().stream().map(c -> c.colony().name()).toList();
    if (!later.stream().map(ObservedColony::name).toList().equals(fitted)
        || later.stream().allMatch(c -> c.counts().isEmpty() && c.totals().isEmpty())) {
      throw new IllegalArgumentException(
          "held-out counts are needed for the colonies " + fitted + " in this order");
    }
    return new Forecast(model, model.withColonies(later), fit.draws(DRAWS, seed), seed).check(seed);
  }
}
