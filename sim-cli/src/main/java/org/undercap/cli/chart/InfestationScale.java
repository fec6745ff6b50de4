package org.undercap.cli.chart;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The axis of an infestation chart. Where one plan rises far above the others it would flatten
 * them: then the axis ends above the better half of the plans and the chart says so.
 */
final class InfestationScale {
  private static final int MOST_STEPS = 6;
  private static final double HEADROOM = 1.06;

  /** Height of a cut axis above the better half of the plans, and above the limit (ratio). */
  private static final double ABOVE_BETTER_HALF = 1.5;

  private static final double ABOVE_LIMIT = 2;

  /** From this height above a cut axis on it is cut (ratio). */
  private static final double FAR_ABOVE = 3;

  private static final MathContext TWO_FIGURES = new MathContext(2, RoundingMode.HALF_UP);

  private final List<String> plans;
  private final List<Double> tops;
  private final Scale scale;

  /**
   * An axis.
   *
   * @param plans names of the plans
   * @param tops largest value of each plan (mites per 100 bees)
   * @param limit limit at which to act (mites per 100 bees); 0 if there is none
   */
  InfestationScale(List<String> plans, List<Double> tops, double limit) {
    this.plans = List.copyOf(plans);
    this.tops = List.copyOf(tops);
    List<Double> sorted = tops.stream().sorted().toList();
    double whole = Math.max(limit, sorted.get(sorted.size() - 1));
    double betterHalf = sorted.get((sorted.size() - 1) / 2);
    double cut = Math.max(ABOVE_LIMIT * limit, ABOVE_BETTER_HALF * betterHalf);
    boolean isCut = cut > 0 && whole > FAR_ABOVE * cut;
    scale = Scale.covering(isCut ? cut : whole * HEADROOM, MOST_STEPS);
  }

  Scale scale() {
    return scale;
  }

  /** Whether a plan leaves the axis. */
  boolean leaves(int plan) {
    return tops.get(plan) > scale.top();
  }

  /** Says that the axis is cut, and how far plans rise above it; empty if it is not. */
  String note() {
    List<String> above = new ArrayList<>();
    for (int plan = 0; plan < plans.size(); plan++) {
      if (leaves(plan)) {
        String top = BigDecimal.valueOf(tops.get(plan)).round(TWO_FIGURES).toPlainString();
        above.add(String.format(Locale.ROOT, "\"%s\" rises to %s", plans.get(plan), top));
      }
    }
    return above.isEmpty()
        ? ""
        : "Scale cut at " + scale.label(scale.top()) + ": " + String.join(", ", above) + ".";
  }
}
