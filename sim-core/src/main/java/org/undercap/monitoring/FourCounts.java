package org.undercap.monitoring;

import java.util.Optional;

/**
 * The sums that an efficacy comes from: either treated mites after against before, perhaps against
 * the same of untreated colonies; or mites left against all of a critical test.
 *
 * @param treated counts of treated colonies
 * @param untreated counts of untreated colonies, if the formula needs them
 * @param critical whether {@code before} holds all mites of a critical test and {@code after} those
 *     that the test left
 */
record FourCounts(BeforeAfter treated, Optional<BeforeAfter> untreated, boolean critical) {
  static FourCounts reduction(BeforeAfter treated) {
    return new FourCounts(treated, Optional.empty(), false);
  }

  static FourCounts against(BeforeAfter treated, BeforeAfter untreated) {
    return new FourCounts(treated, Optional.of(untreated), false);
  }

  static FourCounts criticalTest(long killed, long left) {
    return new FourCounts(
        new BeforeAfter(new Tally(killed + left, 1), new Tally(left, 1)), Optional.empty(), true);
  }

  /** The efficacy (fraction); NaN or minus infinity if there are too few mites. */
  double efficacy() {
    return 1 - ratio(treated) / untreated.map(FourCounts::ratio).orElse(1.0);
  }

  private static double ratio(BeforeAfter counts) {
    return counts.before().mites() == 0
        ? Double.NaN
        : counts.after().rate() / counts.before().rate();
  }

  /** Interval of the efficacy if counts vary by chance alone. */
  Interval exact(double level) {
    Tally before = treated.before();
    Tally after = treated.after();
    if (critical) {
      return efficacies(
          ExactIntervals.clopperPearson(
              Math.toIntExact(after.mites()), Math.toIntExact(before.mites()), level),
          1);
    }
    double looked = after.of() / before.of();
    if (untreated.isEmpty()) {
      return efficacies(ExactRatios.ratio(after.mites(), before.mites(), level), looked);
    }
    Tally earlier = untreated.get().before();
    Tally later = untreated.get().after();
    return efficacies(
        ExactRatios.ratioOfRatios(
            after.mites(), before.mites(), later.mites(), earlier.mites(), level),
        looked * earlier.of() / later.of());
  }

  private static Interval efficacies(Interval left, double looked) {
    return new Interval(1 - left.high() / looked, 1 - left.low() / looked);
  }

  FourCounts times(double factor) {
    return critical
        ? criticalTest(
            Math.round((treated.before().mites() - treated.after().mites()) * factor),
            Math.round(treated.after().mites() * factor))
        : new FourCounts(
            treated.times(factor), untreated.map(counts -> counts.times(factor)), false);
  }
}
