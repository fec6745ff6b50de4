package org.undercap.calibration;

import java.util.ArrayList;
import java.util.List;
import org.undercap.parameter.ParameterSet;

/** Parameters fitted to counts, and how well they tell the counts. */
public final class CountFitResult {
  private static final int DRAWS = 256;

  private final CountModel model;
  private final FitResult fit;

  CountFitResult(CountModel model, FitResult fit) {
    this.model = model;
    this.fit = fit;
  }

  /**
   * Values, intervals and correlations; the mites of a colony stand under {@link #mitesOf}.
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
   * All mites of a colony at its start.
   *
   * @param colony name of the colony
   * @return value and interval (mites)
   * @throws java.util.NoSuchElementException if there is no such colony
   */
  public FittedParameter mitesOf(String colony) {
    return fit.parameter(CountModel.mitesOf(colony));
  }

  /**
   * Each count against what the best values expect.
   *
   * @return in the order of the colonies and their counts
   */
  public List<Residual> residuals() {
    List<List<CountDistribution>> expected =
        model.distributions(new double[][] {fit.values()}).get(0);
    List<Residual> residuals = new ArrayList<>();
    for (int colony = 0; colony < expected.size(); colony++) {
      ColonyCourse course = model.courses().get(colony);
      for (int i = 0; i < course.observations().size(); i++) {
        residuals.add(
            Residual.of(
                course.colony().name(), course.observations().get(i), expected.get(colony).get(i)));
      }
    }
    return List.copyOf(residuals);
  }

  /**
   * Whether the counts look like those that the fit would make, and how often they lie in the
   * intervals that it foretells; parameters are drawn around the best values 256 times.
   *
   * @param seed decides the draws
   * @return the check, on the counts that were fitted
   */
  public PredictiveCheck check(long seed) {
    return new Forecast(model, fit.draws(DRAWS, seed)).check(seed);
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
    return new Forecast(model.withColonies(later), fit.draws(DRAWS, seed)).check(seed);
  }
}
