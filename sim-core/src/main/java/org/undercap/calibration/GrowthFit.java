package org.undercap.calibration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.undercap.analysis.GrowthRates;
import org.undercap.analysis.SeasonGrowth;
import org.undercap.climate.Climate;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.parameter.ParameterSpace;
import org.undercap.parameter.Prior;

/**
 * Calibrates parameters so that the mites grow as fast as published. A growth rate is one number,
 * so it can tell one combination of parameters; the priors decide about the rest, and the result
 * names the parameters that remain as uncertain as before.
 */
public final class GrowthFit {
  private static final int DRAWS = 128;
  private static final double TAIL = 0.025;

  private final List<GrowthTarget> targets;
  private final ParameterSpace space;

  private GrowthFit(List<GrowthTarget> targets, ParameterSpace space) {
    this.targets = List.copyOf(targets);
    this.space = space;
  }

  /**
   * A calibration.
   *
   * @param targets growth rates to meet, at least one
   * @param space parameters to move, at least one, with their priors
   * @return the calibration, to be run
   * @throws IllegalArgumentException if there is no target or no parameter
   */
  public static GrowthFit of(List<GrowthTarget> targets, ParameterSpace space) {
    if (targets.isEmpty() || space.dimensions() == 0) {
      throw new IllegalArgumentException("a calibration needs a target and a parameter to move");
    }
    return new GrowthFit(targets, space);
  }

  /**
   * Searches, profiles, and runs the model with what was found.
   *
   * @param settings how hard to search
   * @return values, intervals and the growth rates reached
   */
  public GrowthFitResult run(FitSettings settings) {
    FitResult fit = LikelihoodFit.of(parameters(space), this::logLikelihoods).run(settings);
    double[][] draws = fit.draws(DRAWS, settings.seed());
    List<GrowthFitResult.Reached> reached = new ArrayList<>();
    for (GrowthTarget target : targets) {
      double[] spread = rates(target.climate(), draws);
      Arrays.sort(spread);
      int cut = (int) (TAIL * spread.length);
      reached.add(
          new GrowthFitResult.Reached(
              target,
              rates(target.climate(), List.of(space.base()))[0],
              rates(target.climate(), new double[][] {fit.values()})[0],
              spread[cut],
              spread[spread.length - 1 - cut]));
    }
    return new GrowthFitResult(fit, space.withValues(fit.values()), reached);
  }

  /** The free parameters of a space. */
  static List<FreeParameter> parameters(ParameterSpace space) {
    List<FreeParameter> parameters = new ArrayList<>();
    List<ParameterId> ids = space.ids();
    List<Prior> priors = space.priors();
    for (int i = 0; i < ids.size(); i++) {
      parameters.add(FreeParameter.of(ids.get(i).id(), priors.get(i)));
    }
    return parameters;
  }

  private double[] logLikelihoods(double[][] points) {
    double[] sum = new double[points.length];
    for (GrowthTarget target : targets) {
      double[] rates = rates(target.climate(), points);
      for (int i = 0; i < sum.length; i++) {
        sum[i] += target.logLikelihood(rates[i]);
      }
    }
    return sum;
  }

  /** Growth rates; not a number where bees or mites cannot live. */
  private double[] rates(Climate climate, double[][] points) {
    return rates(climate, Arrays.stream(points).map(space::withValues).toList());
  }

  private static double[] rates(Climate climate, List<ParameterSet> sets) {
    return GrowthRates.whereTheyLive(climate, sets).stream()
        .mapToDouble(growth -> growth.map(SeasonGrowth::rate).orElse(Double.NaN))
        .toArray();
  }
}
