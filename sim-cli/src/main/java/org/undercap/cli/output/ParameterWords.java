package org.undercap.cli.output;

import java.util.ArrayList;
import java.util.List;
import org.undercap.parameter.Kind;
import org.undercap.parameter.Parameter;
import org.undercap.parameter.Spread;

/** Says what is known of a parameter. */
public final class ParameterWords {
  private static final String NO_UNIT = "-";

  private ParameterWords() {}

  /**
   * The unit.
   *
   * @param parameter the parameter
   * @return its unit, or {@code none}
   */
  public static String unit(Parameter parameter) {
    return parameter.unit().equals(NO_UNIT) ? "none" : parameter.unit().replace(";", "; ");
  }

  /**
   * What is plausible.
   *
   * @param parameter the parameter
   * @return a range for each value, as in {@code 0.28 to 0.8}; empty if none is known
   */
  public static String range(Parameter parameter) {
    List<String> ranges = new ArrayList<>();
    for (int i = 0; i < Math.min(parameter.low().size(), parameter.high().size()); i++) {
      ranges.add(Numbers.exactRange(parameter.low().get(i), parameter.high().get(i)));
    }
    return String.join("; ", ranges);
  }

  /**
   * How it differs between the runs of an ensemble.
   *
   * @param parameter the parameter
   * @return words
   */
  public static String spread(Parameter parameter) {
    Spread spread = parameter.spread();
    String amount = Numbers.exact(spread.amount());
    return switch (spread.shape()) {
      case FIXED -> "the same in every run";
      case NORMAL -> "differs from run to run: normal, standard deviation " + amount;
      case LOGNORMAL ->
          "differs from run to run: lognormal, value as median, standard deviation of the logarithm "
              + amount;
      case BETA -> "differs from run to run: beta between the ends of the range";
    };
  }

  /**
   * What a kind means.
   *
   * @param kind how far a value is known
   * @return words
   */
  public static String meaning(Kind kind) {
    return switch (kind) {
      case MEASURED -> "somebody measured it";
      case DERIVED -> "computed from published numbers";
      case CALIBRATED -> "chosen so that the model agrees with field data";
      case ASSUMPTION -> "nobody measured it";
    };
  }

  /**
   * What all kinds mean.
   *
   * @return a sentence
   */
  public static String kinds() {
    List<String> kinds = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      kinds.add(kind.word() + " = " + meaning(kind));
    }
    return "Kind: " + String.join("; ", kinds) + ".";
  }
}
