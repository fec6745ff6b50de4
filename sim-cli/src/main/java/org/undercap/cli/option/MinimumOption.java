package org.undercap.cli.option;

import java.util.stream.Collectors;
import org.undercap.cli.output.UsageException;
import org.undercap.monitoring.EfficacyMinimum;
import picocli.CommandLine.Option;

/** The efficacy that a treatment must have. */
public final class MinimumOption {
  private static final double PERCENT = 100;

  @Option(
      names = "--minimum",
      paramLabel = "NAME|PERCENT",
      defaultValue = "other",
      description =
          "Efficacy it must have: other (not synthetic), synthetic, or a number of percent"
              + " (default: ${DEFAULT-VALUE}).")
  private String text;

  /** Creates the option. */
  public MinimumOption() {}

  /**
   * The efficacy.
   *
   * @return fraction, 0 to 1
   * @throws UsageException if it is neither a name nor a number of percent
   */
  public double share() {
    if (!text.matches("\\d{1,3}(\\.\\d{1,6})?")) {
      return named().share();
    }
    double percent = Double.parseDouble(text);
    if (!(percent <= PERCENT)) {
      throw new UsageException("--minimum " + text + " must be in [0, 100] percent");
    }
    return percent / PERCENT;
  }

  /**
   * Where it comes from.
   *
   * @return words
   */
  public String words() {
    if (text.matches("\\d.*")) {
      return "as given";
    }
    return "for " + named().words() + " (" + String.join(", ", named().sourceKeys()) + ")";
  }

  private EfficacyMinimum named() {
    return EfficacyMinimum.all().stream()
        .filter(minimum -> minimum.id().equals(text))
        .findFirst()
        .orElseThrow(
            () ->
                new UsageException(
                    "--minimum '"
                        + text
                        + "' must be a number of percent or one of: "
                        + EfficacyMinimum.all().stream()
                            .map(EfficacyMinimum::id)
                            .collect(Collectors.joining(", "))));
  }
}
