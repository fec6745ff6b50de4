package org.undercap.cli.command;

import java.util.OptionalDouble;
import org.undercap.cli.output.InvalidFileException;
import org.undercap.monitoring.MiteEstimate;
import org.undercap.scenario.Scenario;

/** The number of mites that a scenario begins with. */
final class Mites {
  private Mites() {}

  static double of(Scenario scenario) {
    if (scenario.mitesInColony().isPresent()) {
      return scenario.mitesInColony().getAsDouble();
    }
    OptionalDouble estimate =
        MiteEstimate.of(
            scenario.climate(),
            scenario.parameters(),
            scenario.start(),
            scenario.hive().bees(),
            scenario.hive().broodCells(),
            scenario.countsAtStart());
    return estimate.orElseThrow(
        () ->
            new InvalidFileException(
                scenario.name()
                    + ": error: mites.counts: these counts cannot tell how many mites are in the colony"));
  }
}
