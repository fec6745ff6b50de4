package org.undercap.cli.report;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.undercap.cli.output.Numbers;
import org.undercap.ensemble.Outcome;
import org.undercap.ensemble.OutcomeTable;
import org.undercap.ensemble.PlanResult;
import org.undercap.ensemble.Quantiles;

/** Estimates as people should read them: two figures, and the range of 8 in 10 beside them. */
final class Figures {
  /** Ends and middle of the range of 8 in 10 (fractions). */
  private static final double[] SHARES = {0.1, 0.5, 0.9};

  private static final int FIGURES = 2;
  private static final double SHOWN = 0.05;
  private static final int PERCENT = 100;

  /** Stands where no colony is left alive that could have a value. */
  private static final String NONE = "-";

  private Figures() {}

  /** A number of two figures; what would round to nothing is 0. */
  static String plain(double value) {
    if (Double.isNaN(value)) {
      return NONE;
    }
    double size = Math.abs(value);
    if (size < SHOWN) {
      return "0";
    }
    return size < 9.95 ? Numbers.fixed(value, 1) : Numbers.rounded(value, FIGURES);
  }

  /** A number of things that cannot be halved. */
  static String whole(double value) {
    if (Double.isNaN(value)) {
      return NONE;
    }
    return value < 9.5 ? Numbers.fixed(value, 0) : Numbers.rounded(value, FIGURES);
  }

  /** The middle value with its range for a table, as in {@code 13 % (10-17)}. */
  static String percent(PlanResult result, Outcome outcome) {
    return percent(result.outcomes(), outcome);
  }

  /** The middle value with its range for a table, as in {@code 13 % (10-17)}. */
  static String percent(OutcomeTable outcomes, Outcome outcome) {
    double[] q = outcomes.quantiles(outcome, SHARES);
    return percent(q[1], q[0], q[2]);
  }

  /** A middle value with its range for a table, of fractions. */
  static String percent(double middle, double low, double high) {
    return plain(PERCENT * middle)
        + " % ("
        + plain(PERCENT * low)
        + "-"
        + plain(PERCENT * high)
        + ")";
  }

  /** The middle value with its range for a table, as in {@code 1.4 (0.8-2.5)}. */
  static String number(PlanResult result, Outcome outcome) {
    return number(result.outcomes(), outcome);
  }

  /** The middle value of a sample with its range for a table. */
  static String range(double[] sample) {
    double[] q = Quantiles.of(sample, SHARES);
    return number(q[1], q[0], q[2]);
  }

  /** The middle value with its range for a table, as in {@code 1.4 (0.8-2.5)}. */
  static String number(OutcomeTable outcomes, Outcome outcome) {
    double[] q = outcomes.quantiles(outcome, SHARES);
    return number(q[1], q[0], q[2]);
  }

  /** A middle value with its range for a table. */
  static String number(double middle, double low, double high) {
    return plain(middle) + " (" + plain(low) + "-" + plain(high) + ")";
  }

  /** The middle value with its range for a sentence, as in {@code 17 (6 to 43)}. */
  static String said(PlanResult result, Outcome outcome) {
    return said(result.outcomes().quantiles(outcome, SHARES));
  }

  /** Lower end, middle value and upper end for a sentence. */
  static String said(double... q) {
    return plain(q[1]) + " (" + plain(q[0]) + " to " + plain(q[2]) + ")";
  }

  /** The middle value with its range for a sentence, of things that cannot be halved. */
  static String saidWhole(PlanResult result, Outcome outcome) {
    double[] q = result.outcomes().quantiles(outcome, SHARES);
    return whole(q[1]) + " (" + whole(q[0]) + " to " + whole(q[2]) + ")";
  }

  /**
   * The middle value of a sample with its range for a table, of things that cannot be halved; lost
   * colonies (NaN) do not count.
   */
  static String wholeRange(double[] sample) {
    double[] living = Arrays.stream(sample).filter(x -> !Double.isNaN(x)).toArray();
    if (living.length == 0) {
      return NONE;
    }
    double[] q = Quantiles.of(living, SHARES);
    return whole(q[1]) + " (" + whole(q[0]) + "-" + whole(q[2]) + ")";
  }

  /** Middle value and range of a difference of two samples, member by member. */
  static double[] difference(double[] of, double[] to) {
    double[] difference = IntStream.range(0, of.length).mapToDouble(i -> to[i] - of[i]).toArray();
    return Quantiles.of(difference, SHARES);
  }

  /** How often something holds, as in {@code in 8 of 10 simulated seasons}. */
  static String runs(double share) {
    long tenths = Math.round(10 * share);
    if (share >= 1) {
      return "in every simulated season";
    }
    return tenths == 10
        ? "in nearly every simulated season"
        : tenths == 0
            ? "in hardly any simulated season"
            : "in " + tenths + " of 10 simulated seasons";
  }

  /** How many of a hundred. */
  static String inHundred(double share) {
    double number = PERCENT * share;
    return number < 1 ? "fewer than 1" : number > 99 ? "over 99" : Numbers.fixed(number, 0);
  }

  /** Empty where no colony has this, since all are lost. */
  static OptionalDouble known(double value) {
    return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
  }
}
