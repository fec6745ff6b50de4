package org.undercap.cli.option;

import java.util.List;
import org.undercap.cli.output.UsageException;
import org.undercap.parameter.Parameter;
import org.undercap.parameter.ParameterCatalogue;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.parameter.ParameterSpace;
import org.undercap.parameter.Prior;
import org.undercap.parameter.Spread;

/**
 * Parameters that a study moves, as a user names them: {@code ID} for what the catalogue believes
 * (its spread, or flat over its range where it has none), {@code ID=LOW:HIGH} for flat between
 * bounds.
 */
public final class FreeOption {
  private FreeOption() {}

  /**
   * The space of the parameters.
   *
   * @param words one text a parameter
   * @param base values of all others
   * @return the space
   * @throws UsageException if a text cannot be understood
   */
  public static ParameterSpace space(List<String> words, ParameterSet base) {
    ParameterSpace space = ParameterSpace.around(base);
    for (String word : words) {
      try {
        space = with(space, word.strip());
      } catch (IllegalArgumentException e) {
        throw new UsageException(e.getMessage());
      }
    }
    return space;
  }

  private static ParameterSpace with(ParameterSpace space, String word) {
    int equals = word.indexOf('=');
    ParameterId id = ParameterId.of(equals < 0 ? word : word.substring(0, equals));
    return space.with(id, equals < 0 ? believed(id) : flat(id, word.substring(equals + 1)));
  }

  private static Prior believed(ParameterId id) {
    Parameter parameter = ParameterCatalogue.shipped().get(id);
    return parameter.spread().shape() == Spread.Shape.FIXED
        ? Prior.overRange(parameter)
        : Prior.of(parameter);
  }

  private static Prior flat(ParameterId id, String bounds) {
    double[] ends = pair(bounds, ":", id.id());
    return Prior.between(ParameterCatalogue.shipped().get(id), ends[0], ends[1]);
  }

  /**
   * Two numbers.
   *
   * @param text the text
   * @param between what stands between them
   * @param what what they are, for messages
   * @return both
   * @throws UsageException if they are not two numbers, the lower first
   */
  public static double[] pair(String text, String between, String what) {
    String[] parts = text.split(between, -1);
    try {
      double low = Double.parseDouble(parts[0].strip());
      double high = Double.parseDouble(parts[parts.length - 1].strip());
      if (parts.length == 2 && low < high && Double.isFinite(low) && Double.isFinite(high)) {
        return new double[] {low, high};
      }
    } catch (NumberFormatException e) {
      // The message below says it.
    }
    throw new UsageException(
        what
            + ": '"
            + text
            + "' must be two numbers, the lower first, as in 0.5"
            + between
            + "1.5");
  }
}
