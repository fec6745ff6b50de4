package org.undercap.calibration;

import java.util.List;
import java.util.Optional;
import org.undercap.parameter.ParameterSpace;

/**
 * Fits parameters to counts of mites in several colonies over time: washes, boards, opened drone
 * cells and totals. The colonies share the parameters; the mites that each began with are summed
 * over, flat in the logarithm between 1 and 60,000, so that many colonies cost no more searching
 * than one.
 */
public final class CountFit {
  private final CountModel model;

  private CountFit(CountModel model) {
    this.model = model;
  }

  /**
   * A fit with known scatter of the counts.
   *
   * @param colonies colonies with their counts, each name used once
   * @param space shared parameters with their priors, at least one
   * @param errors how counts scatter
   * @return the fit, to be run
   * @throws IllegalArgumentException if a colony has no counts or a name is used twice
   */
  public static CountFit of(
      List<ObservedColony> colonies, ParameterSpace space, CountErrors errors) {
    return new CountFit(checked(colonies, space, Optional.of(errors)));
  }

  /**
   * A fit that finds the scatter of the counts as well.
   *
   * @param colonies colonies with their counts, each name used once
   * @param space shared parameters with their priors; may be empty
   * @return the fit, to be run
   * @throws IllegalArgumentException if a colony has no counts or a name is used twice
   */
  public static CountFit withFreeErrors(List<ObservedColony> colonies, ParameterSpace space) {
    return new CountFit(checked(colonies, space, Optional.empty()));
  }

  private static CountModel checked(
      List<ObservedColony> colonies, ParameterSpace space, Optional<CountErrors> errors) {
    if (colonies.isEmpty()
        || colonies.stream().anyMatch(c -> c.counts().isEmpty() && c.totals().isEmpty())) {
      throw new IllegalArgumentException("a fit needs colonies, each with at least one count");
    }
    if (colonies.stream().map(ObservedColony::name).distinct().count() < colonies.size()) {
      throw new IllegalArgumentException("each colony needs a name of its own");
    }
    return new CountModel(colonies, space, errors);
  }

  /**
   * Searches and profiles.
   *
   * @param settings how hard to search
   * @return values, intervals, residuals and checks
   * @throws FitException if the counts cannot be under any values tried
   */
  public CountFitResult run(FitSettings settings) {
    FitResult fit = LikelihoodFit.of(model.parameters(), model::logLikelihoods).run(settings);
    return new CountFitResult(model, fit);
  }
}
