package org.undercap.cli.option;

import org.undercap.cli.output.UsageException;
import org.undercap.ensemble.EnsembleSettings;
import picocli.CommandLine.Option;

/** How many runs are drawn, and from which seed. */
public final class EnsembleOptions {
  @Option(
      names = "--members",
      paramLabel = "N",
      description =
          "Runs for each plan, which differ in all that is not known (default: ${DEFAULT-VALUE}).")
  private int members;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description =
          "Start of the random draws; the same seed gives the same results (default: ${DEFAULT-VALUE}).")
  private long seed = EnsembleSettings.USUAL_SEED;

  @Option(
      names = "--threads",
      paramLabel = "N",
      description = "Processors to use; results do not depend on it (default: all).")
  private int threads;

  /** Creates the options of a comparison. */
  public EnsembleOptions() {
    this(EnsembleSettings.USUAL_MEMBERS);
  }

  /**
   * Creates the options.
   *
   * @param usual members unless the user says otherwise
   */
  public EnsembleOptions(int usual) {
    members = usual;
  }

  /**
   * The settings.
   *
   * @return members, seed and threads
   * @throws UsageException if a number is out of range
   */
  public EnsembleSettings settings() {
    try {
      return new EnsembleSettings(
          members, seed, threads == 0 ? Runtime.getRuntime().availableProcessors() : threads);
    } catch (IllegalArgumentException e) {
      throw new UsageException(e.getMessage());
    }
  }
}
