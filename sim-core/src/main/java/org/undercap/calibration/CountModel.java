package org.undercap.calibration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.undercap.parameter.ParameterSet;
import org.undercap.parameter.ParameterSpace;

/**
 * Colonies that share parameters, each with mites of its own at the start. A point holds the shared
 * parameters, then the free errors of the counts, then the mites of each colony.
 */
final class CountModel {
  /** Mites between which a start is looked for (mites). */
  private static final double FEWEST_MITES = 1;

  private static final double MOST_MITES = 60_000;
  private static final String[] ERRORS = {
    "correlation in washes", "variance of boards beyond Poisson", "spread of totals"
  };
  private static final double[][] ERROR_BOUNDS = {{1e-4, 0.5}, {1e-3, 10}, {0.01, 2}};

  private final List<ColonyCourse> courses;
  private final ParameterSpace space;
  private final Optional<CountErrors> errors;

  CountModel(List<ObservedColony> colonies, ParameterSpace space, Optional<CountErrors> errors) {
    courses = colonies.stream().map(ColonyCourse::new).toList();
    this.space = space;
    this.errors = errors;
  }

  List<ColonyCourse> courses() {
    return courses;
  }

  /** The same parameters with other counts of the same colonies. */
  CountModel withColonies(List<ObservedColony> colonies) {
    return new CountModel(colonies, space, errors);
  }

  List<FreeParameter> parameters() {
    List<FreeParameter> all = new ArrayList<>(GrowthFit.parameters(space));
    if (errors.isEmpty()) {
      for (int i = 0; i < ERRORS.length; i++) {
        all.add(FreeParameter.flatInLogarithm(ERRORS[i], ERROR_BOUNDS[i][0], ERROR_BOUNDS[i][1]));
      }
    }
    for (ColonyCourse course : courses) {
      all.add(
          FreeParameter.flatInLogarithm(mitesOf(course.colony().name()), FEWEST_MITES, MOST_MITES));
    }
    return all;
  }

  static String mitesOf(String colony) {
    return "mites at the start of " + colony;
  }

  ParameterSet set(double[] point) {
    return space.withValues(Arrays.copyOf(point, space.dimensions()));
  }

  CountErrors errors(double[] point) {
    int at = space.dimensions();
    return errors.orElseGet(() -> new CountErrors(point[at], point[at + 1], point[at + 2]));
  }

  private double mites(double[] point, int colony) {
    return point[point.length - courses.size() + colony];
  }

  /** What each observation of each colony may find, by point, colony and observation. */
  List<List<List<CountDistribution>>> distributions(double[][] points) {
    List<ParameterSet> sets = sets(points);
    StartShapes shapes = new StartShapes(sets);
    List<List<List<CountDistribution>>> all = new ArrayList<>();
    for (int point = 0; point < points.length; point++) {
      all.add(new ArrayList<>());
    }
    for (int colony = 0; colony < courses.size(); colony++) {
      ColonyCourse course = courses.get(colony);
      double[] mites = new double[points.length];
      for (int point = 0; point < mites.length; point++) {
        mites[point] = mites(points[point], colony);
      }
      double[][] sums = course.sums(shapes, mites);
      for (int point = 0; point < mites.length; point++) {
        List<CountDistribution> mine = new ArrayList<>();
        for (int i = 0; i < sums[point].length; i++) {
          mine.add(
              course
                  .observations()
                  .get(i)
                  .distribution(sums[point][i], sets.get(point), errors(points[point])));
        }
        all.get(point).add(mine);
      }
    }
    return all;
  }

  /** Sets of parameters; points with the same values get the same object. */
  private List<ParameterSet> sets(double[][] points) {
    Map<List<Double>, ParameterSet> known = new LinkedHashMap<>();
    List<ParameterSet> sets = new ArrayList<>();
    for (double[] point : points) {
      List<Double> shared = Arrays.stream(point, 0, space.dimensions()).boxed().toList();
      sets.add(known.computeIfAbsent(shared, values -> set(point)));
    }
    return sets;
  }

  double[] logLikelihoods(double[][] points) {
    List<List<List<CountDistribution>>> all = distributions(points);
    double[] sums = new double[points.length];
    for (int point = 0; point < sums.length; point++) {
      for (int colony = 0; colony < courses.size(); colony++) {
        List<Observation> observations = courses.get(colony).observations();
        for (int i = 0; i < observations.size(); i++) {
          sums[point] +=
              all.get(point).get(colony).get(i).logProbability(observations.get(i).found());
        }
      }
    }
    return sums;
  }
}
