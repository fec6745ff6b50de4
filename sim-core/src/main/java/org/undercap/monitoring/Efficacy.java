package org.undercap.monitoring;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.undercap.internal.Checks;

/**
 * Efficacy of a treatment that was done, from counts, with its 95 % interval.
 *
 * <p>Counts of several colonies are added up. The interval of one colony (or of one treated and one
 * untreated) is exact for counts that vary by chance alone: Clopper-Pearson for a critical test and
 * for the ratio of two counts, Fisher's noncentral hypergeometric for Henderson and Tilton. With
 * several colonies it is the bootstrap over colonies, made wider if need be to hold the exact one
 * of the sums, since a few colonies that agree by luck must not seem to prove much.
 *
 * <p>Efficacy from washes is that against the mites on bees; mites under the cappings are not in
 * the jar. An efficacy below 0 means that mites became more.
 */
public final class Efficacy {
  /** Probability that the interval holds the true efficacy (fraction). */
  public static final double LEVEL = 0.95;

  private static final double LARGEST_FACTOR = 1_000;

  private final EfficacyFormula formula;
  private final FourCounts sums;
  private final int colonies;
  private final int untreated;
  private final Interval interval;

  private Efficacy(
      EfficacyFormula formula, FourCounts sums, int colonies, int untreated, Interval drawn) {
    this.formula = formula;
    this.sums = sums;
    this.colonies = colonies;
    this.untreated = untreated;
    Interval exact = sums.exact(LEVEL);
    interval =
        new Interval(Math.min(exact.low(), drawn.low()), Math.max(exact.high(), drawn.high()));
  }

  /**
   * Simple reduction in treated colonies.
   *
   * @param treated at least one colony
   * @param seed decides the draws if there are several colonies
   * @return the efficacy
   * @throws IllegalArgumentException if there is no colony or no mites were counted before
   */
  public static Efficacy reduction(List<BeforeAfter> treated, long seed) {
    return of(
        EfficacyFormula.REDUCTION,
        treated,
        List.of(),
        (group, none) -> FourCounts.reduction(sum(group)),
        seed);
  }

  /**
   * Abbott's formula: treated against untreated colonies after the treatment.
   *
   * @param treated counts of treated colonies, at least one
   * @param untreated counts of untreated colonies on the same days, at least one
   * @param seed decides the draws if there are several colonies
   * @return the efficacy
   * @throws IllegalArgumentException if a group is empty or no mites were counted in untreated
   *     colonies
   */
  public static Efficacy abbott(List<Tally> treated, List<Tally> untreated, long seed) {
    needsUntreated(untreated);
    return of(
        EfficacyFormula.ABBOTT,
        treated,
        untreated,
        (group, control) -> FourCounts.reduction(new BeforeAfter(total(control), total(group))),
        seed);
  }

  /**
   * Henderson and Tilton's formula: the reduction against that of untreated colonies.
   *
   * @param treated treated colonies, at least one
   * @param untreated untreated colonies, at least one
   * @param seed decides the draws if there are several colonies
   * @return the efficacy
   * @throws IllegalArgumentException if a group is empty, or no mites were counted in treated
   *     colonies before or in untreated ones after
   */
  public static Efficacy hendersonTilton(
      List<BeforeAfter> treated, List<BeforeAfter> untreated, long seed) {
    needsUntreated(untreated);
    return of(
        EfficacyFormula.HENDERSON_TILTON,
        treated,
        untreated,
        (group, control) -> FourCounts.against(sum(group), sum(control)),
        seed);
  }

  /**
   * Critical test: killed by the treatment out of all that it and a follow-up treatment killed.
   *
   * @param treated mites fallen in the test and in the follow-up, each colony
   * @param seed decides the draws if there are several colonies
   * @return the efficacy
   * @throws IllegalArgumentException if there is no colony or no mites fell at all
   */
  public static Efficacy criticalTest(List<CriticalCount> treated, long seed) {
    return of(
        EfficacyFormula.CRITICAL_TEST,
        treated,
        List.of(),
        (group, none) ->
            FourCounts.criticalTest(
                group.stream().mapToLong(CriticalCount::byTest).sum(),
                group.stream().mapToLong(CriticalCount::byFollowUp).sum()),
        seed);
  }

  private static void needsUntreated(List<?> untreated) {
    if (untreated.isEmpty()) {
      throw new IllegalArgumentException("this formula needs at least one untreated colony");
    }
  }

  /** Adds up the counts of two groups of colonies. */
  @FunctionalInterface
  private interface Adding<T, U> {
    FourCounts of(List<T> treated, List<U> untreated);
  }

  private static <T, U> Efficacy of(
      EfficacyFormula formula, List<T> treated, List<U> untreated, Adding<T, U> adding, long seed) {
    if (treated.isEmpty()) {
      throw new IllegalArgumentException("an efficacy needs at least one treated colony");
    }
    FourCounts sums = adding.of(treated, untreated);
    if (!Double.isFinite(sums.efficacy())) {
      throw new IllegalArgumentException(
          "too few mites to reckon an efficacy by the formula: " + formula.words());
    }
    Interval drawn = new Interval(sums.efficacy(), sums.efficacy());
    if (treated.size() > 1 || untreated.size() > 1) {
      ToDoubleFunction<Bootstrap> figure =
          draw -> adding.of(draw.again(treated), draw.again(untreated)).efficacy();
      drawn = new Bootstrap(seed).interval(figure, LEVEL);
    }
    return new Efficacy(formula, sums, treated.size(), untreated.size(), drawn);
  }

  private static BeforeAfter sum(List<BeforeAfter> colonies) {
    return colonies.stream().reduce(BeforeAfter::plus).orElseThrow();
  }

  private static Tally total(List<Tally> colonies) {
    return colonies.stream().reduce(Tally::plus).orElseThrow();
  }

  /**
   * How it was reckoned.
   *
   * @return the formula
   */
  public EfficacyFormula formula() {
    return formula;
  }

  /**
   * The efficacy that the counts show.
   *
   * @return fraction, at most 1; negative if mites became more
   */
  public double estimate() {
    return sums.efficacy();
  }

  /**
   * Where the true efficacy lies with a probability of {@link #LEVEL}.
   *
   * @return the interval (fraction); its lower end may be minus infinity
   */
  public Interval interval() {
    return interval;
  }

  /**
   * Number of treated colonies.
   *
   * @return colonies, at least 1
   */
  public int colonies() {
    return colonies;
  }

  /**
   * Whether the interval is exact, from one colony or one of each group, instead of drawn.
   *
   * @return true if exact
   */
  public boolean exact() {
    return colonies == 1 && untreated <= 1;
  }

  /**
   * Judges the treatment.
   *
   * @param minimum efficacy that it must have (fraction, 0 to 1), as of an {@link EfficacyMinimum}
   * @return works, poor, or cannot tell
   * @throws IllegalArgumentException if the minimum is out of range
   */
  public Verdict verdict(double minimum) {
    Checks.share(minimum, "minimum efficacy");
    if (interval.low() >= minimum) {
      return Verdict.WORKS;
    }
    return interval.high() < minimum ? Verdict.POOR : Verdict.CANNOT_TELL;
  }

  /**
   * How much more counting would have settled the question, had it shown the same efficacy: of one
   * colony how many times as many bees (or days of boards) at each count, of several how many times
   * as many colonies.
   *
   * @param minimum efficacy that the treatment must have (fraction, 0 to 1)
   * @return factor above 1; 1 if the question is settled; nothing if even a thousand times as much
   *     would not do, since the efficacy lies so near the minimum
   * @throws IllegalArgumentException if the minimum is out of range
   */
  public OptionalDouble effortToSettle(double minimum) {
    if (verdict(minimum) != Verdict.CANNOT_TELL) {
      return OptionalDouble.of(1);
    }
    double factor = exact() ? moreBees(minimum) : moreColonies(minimum);
    return factor <= LARGEST_FACTOR ? OptionalDouble.of(factor) : OptionalDouble.empty();
  }

  private double moreBees(double minimum) {
    for (double factor = 1.25; factor <= LARGEST_FACTOR; factor *= 1.25) {
      Interval narrower = sums.times(factor).exact(LEVEL);
      if (narrower.low() >= minimum || narrower.high() < minimum) {
        return factor;
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  /** The width of an interval falls with the square root of the number of colonies. */
  private double moreColonies(double minimum) {
    double distance = Math.abs(estimate() - minimum);
    double reach =
        estimate() >= minimum ? estimate() - interval.low() : interval.high() - estimate();
    double ratio = reach / distance;
    return ratio * ratio;
  }
}
