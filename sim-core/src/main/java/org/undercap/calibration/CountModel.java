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
 * parameters, then the free errors of the counts.
 */
final class CountModel {
  private final List<ColonyCourse> courses;
  private final ParameterSpace space;
  private final CountErrors known;
  private final List<ErrorKind> free;

  /** A kind of scatter that can be fitted. */
  private enum ErrorKind {
    WASH("correlation in washes", 1e-4, 0.5),
    BOARD("variance of boards beyond Poisson", 1e-3, 10),
    TOTAL("spread of totals", 0.01, 2);

    private final String words;
    private final double low;
    private final double high;

    ErrorKind(String words, double low, double high) {
      this.words = words;
      this.low = low;
      this.high = high;
    }
  }

  /** Stands for errors that no count can tell. */
  private static final CountErrors NONE = new CountErrors(0, 0, 1);

  CountModel(List<ObservedColony> colonies, ParameterSpace space, Optional<CountErrors> errors) {
    this(colonies, space, errors.orElse(NONE), errors.isPresent() ? List.of() : kinds(colonies));
  }

  private CountModel(
      List<ObservedColony> colonies,
      ParameterSpace space,
      CountErrors known,
      List<ErrorKind> free) {
    courses = colonies.stream().map(ColonyCourse::new).toList();
    this.space = space;
    this.known = known;
    this.free = free;
  }

  /** The kinds of scatter that the counts can tell. */
  private static List<ErrorKind> kinds(List<ObservedColony> colonies) {
    List<ErrorKind> kinds = new ArrayList<>();
    if (colonies.stream().anyMatch(ObservedColony::hasSamples)) {
      kinds.add(ErrorKind.WASH);
    }
    if (colonies.stream().anyMatch(ObservedColony::hasBoards)) {
      kinds.add(ErrorKind.BOARD);
    }
    if (colonies.stream().anyMatch(colony -> !colony.totals().isEmpty())) {
      kinds.add(ErrorKind.TOTAL);
    }
    return kinds;
  }

  List<ColonyCourse> courses() {
    return courses;
  }

  /** The same parameters with other counts of the same colonies. */
  CountModel withColonies(List<ObservedColony> colonies) {
    return new CountModel(colonies, space, known, free);
  }

  List<FreeParameter> parameters() {
    List<FreeParameter> all = new ArrayList<>(GrowthFit.parameters(space));
    for (ErrorKind kind : free) {
      all.add(FreeParameter.flatInLogarithm(kind.words, kind.low, kind.high));
    }
    return all;
  }

  ParameterSet set(double[] point) {
    return space.withValues(Arrays.copyOf(point, space.dimensions()));
  }

  CountErrors errors(double[] point) {
    return new CountErrors(
        error(point, ErrorKind.WASH, known.wash()),
        error(point, ErrorKind.BOARD, known.board()),
        error(point, ErrorKind.TOTAL, known.total()));
  }

  private double error(double[] point, ErrorKind kind, double otherwise) {
    int place = free.indexOf(kind);
    return place < 0 ? otherwise : point[space.dimensions() + place];
  }

  /** Each colony under each point, by point and colony. */
  List<List<StartMitesCurve>> curves(double[][] points) {
    List<ParameterSet> sets = sets(points);
    double[] nodes = StartMitesCurve.nodes();
    List<ParameterSet> lanes = new ArrayList<>();
    double[] mites = new double[points.length * nodes.length];
    for (int lane = 0; lane < mites.length; lane++) {
      lanes.add(sets.get(lane / nodes.length));
      mites[lane] = nodes[lane % nodes.length];
    }
    StartShapes shapes = new StartShapes(lanes);
    // Colonies do not depend on each other, so threads change nothing but the time.
    List<List<StartMitesCurve>> byColony =
        courses.parallelStream()
            .map(course -> curves(course, course.sums(shapes, mites), sets, points))
            .toList();
    List<List<StartMitesCurve>> byPoint = new ArrayList<>();
    for (int point = 0; point < points.length; point++) {
      int place = point;
      byPoint.add(byColony.stream().map(colony -> colony.get(place)).toList());
    }
    return byPoint;
  }

  private List<StartMitesCurve> curves(
      ColonyCourse course, double[][] sums, List<ParameterSet> sets, double[][] points) {
    int nodes = sums.length / points.length;
    List<StartMitesCurve> curves = new ArrayList<>();
    for (int point = 0; point < points.length; point++) {
      double[][] mine = Arrays.copyOfRange(sums, point * nodes, (point + 1) * nodes);
      curves.add(
          new StartMitesCurve(course.observations(), mine, sets.get(point), errors(points[point])));
    }
    return curves;
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
    try {
      return curves(points).stream()
          .mapToDouble(
              colonies -> colonies.stream().mapToDouble(StartMitesCurve::logLikelihood).sum())
          .toArray();
    } catch (IllegalArgumentException e) {
      if (points.length == 1) {
        return new double[] {Double.NEGATIVE_INFINITY}; // bees do not live with these values
      }
    }
    double[] one = new double[points.length];
    for (int i = 0; i < points.length; i++) {
      one[i] = logLikelihoods(new double[][] {points[i]})[0];
    }
    return one;
  }
}
