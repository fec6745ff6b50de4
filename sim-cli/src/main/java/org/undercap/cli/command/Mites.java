package org.undercap.cli.command;

import org.undercap.cli.output.InvalidFileException;
import org.undercap.monitoring.MitePosterior;
import org.undercap.scenario.Scenario;

/** The number of mites that a scenario begins with. */
final class Mites {
  private static final long SEED = 1;

  private Mites() {}

  static double of(Scenario scenario) {
    if (scenario.mitesInColony().isPresent()) {
      return scenario.mitesInColony().getAsDouble();
    }
    try {
      return MitePosterior.of(scenario.countedColony(), scenario.countsAtStart(), SEED)
          .mites()
          .median();
    } catch (IllegalArgumentException e) {
      throw new InvalidFileException(scenario.name() + ": error: mites.counts: " + e.getMessage());
    }
  }
}
