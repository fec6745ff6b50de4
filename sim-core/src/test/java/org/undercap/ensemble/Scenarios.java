package org.undercap.ensemble;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.undercap.scenario.Scenario;
import org.undercap.scenario.io.ScenarioReader;

/** Scenarios for tests. */
public final class Scenarios {
  private Scenarios() {}

  /** One of the scenarios that ship with the project. */
  public static Scenario shipped(String name) {
    return ScenarioReader.read(Path.of("..", "scenarios", name + ".yaml")).orThrow();
  }

  /** A colony in central Europe in August with some lines of its own, and plans. */
  public static Scenario august(String lines, String plans) {
    String colony =
        """
        undercap: 1
        name: Test
        site: {climate: central-european}
        colony: {date: 2026-08-05, bees: 20000, brood: 24000 cells}
        """;
    return of(colony + lines + "\nplans:\n" + plans);
  }

  /** A scenario from its text. */
  public static Scenario of(String yaml) {
    try {
      return ScenarioReader.read(
              "test.yaml", new ByteArrayInputStream(yaml.getBytes(StandardCharsets.UTF_8)))
          .orThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A plan with one treatment, as a line of a scenario. */
  public static String plan(String name, String date, String treatment) {
    return "  - {name: "
        + name
        + ", steps: [{date: "
        + date
        + ", treatment: "
        + treatment
        + "}]}\n";
  }
}
