package org.undercap.scenario.io;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.undercap.ensemble.StartMites;
import org.undercap.parameter.ParameterChanges;
import org.undercap.scenario.BadValueException;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Problem;
import org.undercap.scenario.Quantities;
import org.undercap.scenario.Reading;
import org.undercap.scenario.Scenario;

/** The scenarios that the rows of a design begin from, each read once. */
final class DesignScenarios {
  private final Path design;
  private final Optional<Path> usual;
  private final ParameterChanges changes;
  private final Map<Path, Base> known = new LinkedHashMap<>();

  DesignScenarios(Path design, Optional<Path> usual, ParameterChanges changes) {
    this.changes = changes;
    this.design = design;
    this.usual = usual;
  }

  List<Path> files() {
    return List.copyOf(known.keySet());
  }

  /** The scenario of rows that name none. */
  Base usual() throws BadValueException {
    if (usual.isEmpty()) {
      throw new BadValueException(
          "the row names no scenario", "give --scenario=FILE, or add a column scenario");
    }
    return read(usual.get());
  }

  /** A scenario file beside the design. */
  Base find(String text) throws BadValueException {
    try {
      Path relative = Path.of(text);
      if (!relative.isAbsolute()) {
        return read(design.resolveSibling(relative));
      }
    } catch (InvalidPathException e) {
      throw new BadValueException(Quantities.quote(text) + " is not the name of a file", "");
    }
    throw new BadValueException(
        Quantities.quote(text) + " cannot be looked for", "name a file beside the design");
  }

  private Base read(Path file) throws BadValueException {
    Base found = known.get(file);
    if (found == null) {
      found = new Base(ScenarioReader.read(file, changes));
      known.put(file, found);
    }
    return found.orThrow(file);
  }

  /** A scenario with what rows ask of it; equal answers are the same object. */
  static final class Base {
    private final Reading<Scenario> reading;
    private final Map<String, Plan> plans = new HashMap<>();
    private Optional<Double> mites = Optional.empty();

    Base(Reading<Scenario> reading) {
      this.reading = reading;
    }

    private Base orThrow(Path file) throws BadValueException {
      if (!reading.problems().isEmpty()) {
        Problem first = reading.problems().get(0);
        throw new BadValueException(
            "scenario " + file + " is not valid: " + first.message(),
            "undercap check " + file + " tells more");
      }
      return this;
    }

    Scenario scenario() {
      return reading.orThrow();
    }

    Plan nothing() {
      return scenario().plans().get(0);
    }

    Plan plan(String name, int shift) throws BadValueException {
      String key = name.toLowerCase(Locale.ROOT) + "\n" + shift;
      Plan found = plans.get(key);
      if (found == null) {
        found = moved(named(name), shift);
        plans.put(key, found);
      }
      return found;
    }

    private Plan named(String name) throws BadValueException {
      List<String> names = new ArrayList<>();
      for (Plan plan : scenario().plans()) {
        names.add(plan.name());
        if (plan.name().toLowerCase(Locale.ROOT).equals(name.toLowerCase(Locale.ROOT))) {
          return plan;
        }
      }
      throw new BadValueException(
          "unknown plan " + Quantities.quote(name),
          scenario().name() + " has: " + String.join(", ", names));
    }

    private static Plan moved(Plan plan, int days) {
      return days == 0
          ? plan
          : new Plan(plan.name(), plan.steps().stream().map(step -> step.moved(days)).toList());
    }

    /** Mites of the first day of the scenario; from its counts unless it gives the number. */
    Double mites() throws BadValueException {
      if (mites.isEmpty()) {
        try {
          mites = Optional.of(StartMites.of(scenario()).median());
        } catch (IllegalArgumentException e) {
          throw new BadValueException(
              "the counts of the scenario cannot tell how many mites there are: " + e.getMessage(),
              "give the column mites");
        }
      }
      return mites.get();
    }
  }
}
