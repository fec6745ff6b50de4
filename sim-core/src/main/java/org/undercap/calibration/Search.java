package org.undercap.calibration;

import java.util.Arrays;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.SimpleBounds;
import org.apache.commons.math3.optim.SimpleValueChecker;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.BOBYQAOptimizer;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.CMAESOptimizer;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.apache.commons.math3.random.Well19937c;

/** One search for the smallest misfit from one start. */
final class Search {
  private static final double FIRST_RADIUS = 0.1;
  private static final double LAST_RADIUS = 1e-5;
  private static final double FIRST_SIGMA = 0.25;
  private static final int CMAES_ITERATIONS = 100_000;
  private static final int GRID = 32;

  private final Misfit misfit;
  private final FitSettings settings;
  private boolean exhausted;

  Search(Misfit misfit, FitSettings settings) {
    this.misfit = misfit;
    this.settings = settings;
  }

  /** The best point found from a start. */
  double[] from(double[] start, int number) {
    misfit.forgetBest();
    if (misfit.dimensions() == 1) {
      searchLine();
    } else {
      double[] begin = start;
      if (settings.search() == FitSettings.Search.GLOBAL) {
        evolve(start, number);
        begin = misfit.bestPoint();
      }
      trustRegion(begin);
    }
    return misfit.bestPoint();
  }

  boolean exhausted() {
    return exhausted;
  }

  private void searchLine() {
    double[][] grid = new double[GRID + 1][1];
    for (int i = 0; i <= GRID; i++) {
      grid[i][0] = (double) i / GRID;
    }
    misfit.at(grid);
    double middle = misfit.bestPoint()[0];
    double low = Math.max(0, middle - 1.0 / GRID);
    double high = Math.min(1, middle + 1.0 / GRID);
    stopAtLimit(
        () ->
            new BrentOptimizer(1e-9, 1e-9)
                .optimize(
                    new UnivariateObjectiveFunction(x -> misfit.at(new double[] {x})),
                    GoalType.MINIMIZE,
                    new SearchInterval(low, high, Math.max(low, Math.min(high, middle))),
                    new MaxEval(settings.maxEvaluations())));
  }

  private void trustRegion(double[] start) {
    int n = misfit.dimensions();
    stopAtLimit(
        () ->
            new BOBYQAOptimizer(2 * n + 1, FIRST_RADIUS, LAST_RADIUS)
                .optimize(
                    new ObjectiveFunction(misfit::at),
                    GoalType.MINIMIZE,
                    new InitialGuess(start),
                    bounds(n),
                    new MaxEval(settings.maxEvaluations())));
  }

  private void evolve(double[] start, int number) {
    int n = misfit.dimensions();
    CMAESOptimizer optimizer =
        new CMAESOptimizer(
            CMAES_ITERATIONS,
            0,
            true,
            0,
            0,
            new Well19937c(settings.seed() + number),
            false,
            new SimpleValueChecker(-1, 1e-6));
    double[] sigma = new double[n];
    Arrays.fill(sigma, FIRST_SIGMA);
    stopAtLimit(
        () ->
            optimizer.optimize(
                new ObjectiveFunction(misfit::at),
                GoalType.MINIMIZE,
                new InitialGuess(start),
                bounds(n),
                new CMAESOptimizer.Sigma(sigma),
                new CMAESOptimizer.PopulationSize(4 + (int) (3 * StrictMath.log(n))),
                new MaxEval(settings.maxEvaluations())));
    if (optimizer.getEvaluations() >= settings.maxEvaluations()) {
      exhausted = true;
    }
  }

  private static SimpleBounds bounds(int n) {
    double[] ones = new double[n];
    Arrays.fill(ones, 1);
    return new SimpleBounds(new double[n], ones);
  }

  /**
   * Runs a search; the misfit keeps the best point when the search breaks off, at its limit of
   * evaluations or because rounding leaves it no way down.
   */
  private void stopAtLimit(Runnable search) {
    try {
      search.run();
    } catch (TooManyEvaluationsException e) {
      exhausted = true;
    } catch (MathIllegalStateException e) {
      // A trust region that cannot shrink further: the best point stands.
      exhausted |= !misfit.isPossible(misfit.best());
    }
  }
}
