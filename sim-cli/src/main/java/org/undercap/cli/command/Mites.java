package org.undercap.cli.command;

import org.undercap.cli.output.InvalidFileException;
import org.undercap.ensemble.EnsembleSettings;
import org.undercap.ensemble.StartMites;
import org.undercap.scenario.Scenario;

/** The mites that a scenario begins with, or a message that its counts cannot tell. */
final class Mites {
  private Mites() {}

  static StartMites of(Scenario scenario) {
    return of(scenario, EnsembleSettings.USUAL_SEED);
  }

  static StartMites of(Scenario scenario, long seed) {
    try {
      return StartMites.of(scenario, seed);
    } catch (IllegalArgumentException e) {
      throw new InvalidFileException(scenario.name() + ": error: mites.counts: " + e.getMessage());
    }
  }
}
