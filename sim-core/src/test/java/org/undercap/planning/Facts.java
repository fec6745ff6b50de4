package org.undercap.planning;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import org.undercap.ensemble.EnsembleSettings;
import org.undercap.ensemble.StartMites;
import org.undercap.scenario.Scenario;
import org.undercap.scenario.io.ScenarioReader;
import org.undercap.treatment.Method;
import org.undercap.treatment.MethodCatalogue;

/** Small scenarios for the tests of this package. */
final class Facts {
  static final LocalDate START = LocalDate.of(2026, 8, 8);

  private static final String SMALL =
      """
      undercap: 1
      name: Small
      site: {climate: central-european}
      colony: {date: 2026-08-08, bees: 18000, brood: 18000 cells, frame: zander}
      mites: {in-colony: 1500}
      arrivals: low
      """;

  private Facts() {}

  /** A colony of 1,500 mites in August. */
  static Scenario small() {
    return with("");
  }

  /** The same with honey supers on. */
  static Scenario supersUntil(LocalDate day) {
    return read(SMALL.replace("frame: zander", "frame: zander, supers-until: " + day));
  }

  /** The same with more lines of its file. */
  static Scenario with(String lines) {
    return read(SMALL + lines);
  }

  private static Scenario read(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    try {
      return ScenarioReader.read("small.yaml", new ByteArrayInputStream(bytes)).orThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static StartMites mites(Scenario scenario) {
    return StartMites.of(scenario);
  }

  static EnsembleSettings settings(int members, int threads) {
    return new EnsembleSettings(members, 1, threads);
  }

  static Method method(String id) {
    return MethodCatalogue.shipped().get(id);
  }
}
