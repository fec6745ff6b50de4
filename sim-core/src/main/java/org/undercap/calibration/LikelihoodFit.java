package org.undercap.calibration;

import java.util.ArrayList;
import java.util.List;
import org.undercap.internal.ShiftedSobol;

/**
 * Fits parameters to data by likelihood times priors: searches from several starts, goes downhill
 * from the best end, then follows the profile of each parameter for its interval. The interval ends
 * where the logarithm of likelihood times priors, with all other parameters refitted, has fallen by
 * 1.92. If a profile finds a better point than the search did, the fit goes on from there.
 */
public final class LikelihoodFit {
  private static final int MOST_RECENTRINGS = 3;
  private static final double BETTER = 0.01;
  private static final double INNER = 0.1;

  private final List<FreeParameter> parameters;
  private final LogLikelihood data;

  private LikelihoodFit(List<FreeParameter> parameters, LogLikelihood data) {
    this.parameters = List.copyOf(parameters);
    this.data = data;
  }

  /**
   * A fit.
   *
   * @param parameters what may be moved, at least one, with different names
   * @param data how well the data agree with values of them
   * @return the fit, to be run
   * @throws IllegalArgumentException if there is no parameter or a name is used twice
   */
  public static LikelihoodFit of(List<FreeParameter> parameters, LogLikelihood data) {
    long names = parameters.stream().map(FreeParameter::name).distinct().count();
    if (parameters.isEmpty() || names < parameters.size()) {
      throw new IllegalArgumentException("a fit needs parameters, each with a name of its own");
    }
    return new LikelihoodFit(parameters, data);
  }

  /**
   * Searches and profiles.
   *
   * @param settings how hard to search
   * @return values, intervals and correlations
   * @throws FitException if the data are impossible at every point that was tried
   */
  public FitResult run(FitSettings settings) {
    Misfit misfit = new Misfit(parameters, data);
    double[] best = {};
    double lowest = Double.POSITIVE_INFINITY;
    boolean exhausted = false;
    List<Double> ends = new ArrayList<>();
    List<double[]> starts = starts(settings);
    for (int number = 0; number < starts.size(); number++) {
      Search search = new Search(misfit, settings);
      double[] end = search.from(starts.get(number), number);
      ends.add(misfit.best());
      if (misfit.best() < lowest) {
        lowest = misfit.best();
        best = end;
        exhausted = search.exhausted();
      }
    }
    if (!misfit.isPossible(lowest)) {
      throw new FitException(
          "the data cannot be under any values tried; widen the bounds or check the data");
    }
    return settle(misfit, best, ends, exhausted);
  }

  private List<double[]> starts(FitSettings settings) {
    List<double[]> starts = new ArrayList<>();
    starts.add(parameters.stream().mapToDouble(FreeParameter::startCoordinate).toArray());
    if (settings.starts() > 1) {
      for (double[] point :
          ShiftedSobol.points(settings.starts() - 1, parameters.size(), settings.seed())) {
        for (int i = 0; i < point.length; i++) {
          point[i] = INNER + (1 - 2 * INNER) * point[i];
        }
        starts.add(point);
      }
    }
    return starts;
  }

  private FitResult settle(Misfit misfit, double[] from, List<Double> ends, boolean exhausted) {
    double[] start = from;
    for (int round = 0; ; round++) {
      Curvature rough = Curvature.of(misfit, start);
      Descent.Bottom bottom = new Descent(misfit, rough, Descent.NONE).from(start);
      Curvature curvature = Curvature.of(misfit, bottom.point());
      misfit.forgetBest();
      List<FittedParameter> fitted = new ArrayList<>();
      for (int axis = 0; axis < parameters.size(); axis++) {
        fitted.add(profile(misfit, curvature, bottom, axis));
      }
      if (misfit.best() > bottom.misfit() - BETTER || round == MOST_RECENTRINGS) {
        return new FitResult(
            parameters,
            fitted,
            curvature,
            bottom.point(),
            misfit,
            bottom.misfit(),
            ends,
            exhausted);
      }
      start = misfit.bestPoint();
    }
  }

  private FittedParameter profile(
      Misfit misfit, Curvature curvature, Descent.Bottom bottom, int axis) {
    Profile profile = new Profile(misfit, curvature, bottom.point(), bottom.misfit(), axis);
    Profile.End below = profile.below();
    Profile.End above = profile.above();
    FreeParameter parameter = parameters.get(axis);
    return new FittedParameter(
        parameter.name(),
        parameter.value(bottom.point()[axis]),
        parameter.value(below.coordinate()),
        parameter.value(above.coordinate()),
        below.open(),
        above.open(),
        curvature.deviation(axis) / parameter.priorDeviation());
  }
}
