package org.undercap.monitoring;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.undercap.internal.Checks;
import org.undercap.parameter.ParameterId;
import org.undercap.treatment.PlanStep;

/**
 * How many mites a colony has, in the light of any mix of counts.
 *
 * <p>For every number of mites on a logarithmic grid (1 to 60,000, all equally likely beforehand)
 * the model runs from the first day that a count covers and tells what each count would meet. The
 * numbers of bees and brood, the share of the mites that a method finds and the strength of
 * treatments are drawn many times around their values (parameters {@code colony.size}, {@code
 * count.recovery.wash}, {@code count.recovery.roll}, {@code count.capture.board}, {@code
 * treatment.strength}); a share between bounds has its peak at the value. The likelihood of each
 * count is binomial for washes, rolls and opened cells, and Poisson or negative binomial for
 * boards. Mites per bee in a wash count as 1 at most.
 *
 * <p>Biology beyond these is taken as the parameters say. Bees that a treatment keeps from flying,
 * uneven places in the hive ({@code count.spread.wash}) and boards that ants visited are for the
 * user to judge.
 *
 * <p>Where no mites were found the lower end of every interval is the end of the grid, and where
 * every bee had one the upper end is: {@link MiteEstimate#warnings()} says so.
 *
 * <p>Same input and seed, same result.
 */
public final class MitePosterior {
  private static final int ROWS = 128;
  private static final int METHOD_DRAWS = 16;
  private static final int PICKS = 256;
  private static final int WIDTH_ROWS = 64;
  private static final double FEW_BEES = 100;
  private static final double HARDLY_POSSIBLE = 0.01;
  private static final double SOME = 0.025;

  private final CountedColony colony;
  private final List<Count> counts;
  private final long seed;
  private final CountModel model;
  private final Likelihood likelihood;
  private final Posterior posterior;
  private final Set<EstimateWarning> leftOut;

  private MitePosterior(CountedColony colony, List<Count> counts, long seed, int rows) {
    this.colony = colony;
    this.counts = List.copyOf(counts);
    this.seed = seed;
    if (counts.isEmpty()) {
      throw new IllegalArgumentException("an estimate of mites needs at least one count");
    }
    model = new CountModel(colony, counts);
    likelihood = new Likelihood(counts, colony.parameters());
    Unknowns unknowns = Unknowns.draw(colony, rows, seed, Set.of());
    Signals signals = model.signals(unknowns);
    leftOut = leftOut(signals);
    posterior = Posterior.of(likelihood, signals, unknowns);
  }

  /**
   * Weighs all numbers of mites.
   *
   * @param colony the colony and its history
   * @param counts the counts, at least one, on any days
   * @param seed decides the draws
   * @return the posterior
   * @throws IllegalArgumentException if no count can tell anything, as drone cells in a season
   *     without drone brood; if a colony of this season and place has no brood but brood is given;
   *     or if no such colony could give these counts
   */
  public static MitePosterior of(CountedColony colony, List<Count> counts, long seed) {
    return new MitePosterior(colony, counts, seed, ROWS);
  }

  static MitePosterior of(CountedColony colony, List<Count> counts, long seed, int rows) {
    return new MitePosterior(colony, counts, seed, rows);
  }

  private Set<EstimateWarning> leftOut(Signals signals) {
    int useless = 0;
    for (int i = 0; i < counts.size(); i++) {
      if (!signals.tells(i)) {
        useless++;
      }
    }
    if (useless == counts.size()) {
      throw new IllegalArgumentException(
          "none of the counts tells how many mites there are: the model has no such brood then");
    }
    return useless > 0
        ? EnumSet.of(EstimateWarning.NO_SUCH_BROOD)
        : EnumSet.noneOf(EstimateWarning.class);
  }

  /**
   * All mites on the day of the estimate.
   *
   * @return mites on bees and under the cappings (mites)
   */
  public MiteDistribution mites() {
    return posterior.mites();
  }

  /**
   * Everything that people are told. Takes a few times as long as the posterior itself, since the
   * shares of the width need it again with one thing known at a time.
   *
   * @return the estimate
   */
  public MiteEstimate estimate() {
    List<CountCheck> checks = checks();
    return new MiteEstimate(
        colony.date(),
        mites(),
        posterior.mitesPer100Bees(),
        widthShares(),
        warnings(checks),
        checks);
  }

  /**
   * All mites of one colony of which bees and brood are known.
   *
   * @param u place of the colony in its distribution (fraction, 0 to 1)
   * @param bees adult workers (bees, above 0)
   * @param broodCells brood (cells, at least 0)
   * @return all mites (mites)
   * @throws IllegalArgumentException if a number is out of range
   * @see #sample(double[], double[], double[])
   */
  public double sample(double u, double bees, double broodCells) {
    return sample(new double[] {u}, new double[] {bees}, new double[] {broodCells})[0];
  }

  /**
   * All mites of colonies of which bees and brood are known, as members of an ensemble have them:
   * the same {@code u} with other bees gives a like place in another distribution, so that members
   * can be compared in pairs. Shares found by a method are averaged over.
   *
   * @param u place of each member in its distribution (fraction, 0 to 1)
   * @param bees adult workers of each member (bees, above 0)
   * @param broodCells brood of each member (cells, at least 0)
   * @return all mites of each member (mites)
   * @throws IllegalArgumentException if the arrays differ in length or a number is out of range
   */
  public double[] sample(double[] u, double[] bees, double[] broodCells) {
    if (u.length != bees.length || u.length != broodCells.length) {
      throw new IllegalArgumentException(
          "members with "
              + u.length
              + " places, "
              + bees.length
              + " numbers of bees and "
              + broodCells.length
              + " of brood");
    }
    Unknowns members =
        Unknowns.draw(colony, METHOD_DRAWS, seed, Set.of())
            .ofColonies(bees, broodCells, colony.parameter(ParameterId.TREATMENT_STRENGTH));
    Signals signals = model.signals(members);
    double[] logarithms = likelihood.averaged(signals, members, METHOD_DRAWS);
    double[] result = new double[u.length];
    for (int member = 0; member < u.length; member++) {
      double place = Checks.share(u[member], "place of a member in its distribution");
      result[member] = Posterior.ofRow(signals, logarithms, member).quantile(place);
    }
    return result;
  }

  private List<CountCheck> checks() {
    List<CountCheck> checks = new ArrayList<>();
    for (int i = 0; i < counts.size(); i++) {
      if (posterior.tells(i)) {
        Count count = counts.get(i);
        checks.add(CountCheck.of(count, posterior.predicted(likelihood, count, i, PICKS)));
      }
    }
    return checks;
  }

  private Set<EstimateWarning> warnings(List<CountCheck> checks) {
    Set<EstimateWarning> warnings = EnumSet.copyOf(leftOut);
    double found = 0;
    for (CountCheck check : checks) {
      found += check.count().found();
      if (check.count() instanceof Wash wash && wash.bees() < FEW_BEES) {
        warnings.add(EstimateWarning.SMALL_SAMPLE);
      }
      if (checks.size() > 1 && check.probability() < HARDLY_POSSIBLE) {
        warnings.add(EstimateWarning.CONFLICT);
      }
    }
    if (found == 0) {
      warnings.add(EstimateWarning.NOTHING_FOUND);
    }
    if (posterior.shareSaturated() > SOME) {
      warnings.add(EstimateWarning.SATURATED);
    }
    return warnings;
  }

  /**
   * Squares of widths add up as variances do, so each source counts with the square that goes away
   * when it is known, and chance with the square that is left when all else is known.
   */
  private Map<WidthSource, Double> widthShares() {
    double full = squaredWidth(Set.of());
    Map<WidthSource, Double> shares = new EnumMap<>(WidthSource.class);
    double sum = 0;
    for (WidthSource source : widthSources()) {
      double part =
          source == WidthSource.SAMPLE
              ? squaredWidth(EnumSet.complementOf(EnumSet.of(source)))
              : Math.max(0, full - squaredWidth(EnumSet.of(source)));
      shares.put(source, part);
      sum += part;
    }
    double all = sum;
    shares.replaceAll((source, part) -> part / all);
    return shares;
  }

  private Set<WidthSource> widthSources() {
    boolean treated = colony.steps().stream().anyMatch(PlanStep.Application.class::isInstance);
    return treated
        ? EnumSet.allOf(WidthSource.class)
        : EnumSet.complementOf(EnumSet.of(WidthSource.TREATMENT));
  }

  private double squaredWidth(Set<WidthSource> known) {
    Unknowns unknowns = Unknowns.draw(colony, WIDTH_ROWS, seed, known);
    Likelihood given = known.contains(WidthSource.METHOD) ? likelihood.withoutSpread() : likelihood;
    double width = Posterior.of(given, model.signals(unknowns), unknowns).mites().logWidth();
    return width * width;
  }
}
