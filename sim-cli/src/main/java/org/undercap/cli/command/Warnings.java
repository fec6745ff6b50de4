package org.undercap.cli.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import org.undercap.scenario.CountDoubts;
import org.undercap.scenario.Scenario;

/** What can be used in a scenario but should be looked at again. */
final class Warnings {
  private Warnings() {}

  /** What is doubtful about counts, each with its field. */
  static List<String> ofCounts(Scenario scenario) {
    return scenario.counts().stream()
        .flatMap(count -> CountDoubts.of(count).stream())
        .map(words -> "mites.counts: " + words)
        .toList();
  }

  /** Tells what is doubtful about counts before results rest on them. */
  static void print(PrintWriter err, Path file, Scenario scenario) {
    ofCounts(scenario).forEach(words -> err.print(file + ": warning: " + words + "\n"));
    err.flush();
  }
}
