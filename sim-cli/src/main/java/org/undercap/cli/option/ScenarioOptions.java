package org.undercap.cli.option;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.undercap.cli.output.InvalidFileException;
import org.undercap.cli.output.UsageException;
import org.undercap.parameter.ParameterChanges;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Problem;
import org.undercap.scenario.Reading;
import org.undercap.scenario.Scenario;
import org.undercap.scenario.io.ScenarioReader;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** The scenario file that a command works on. */
public final class ScenarioOptions {
  @Parameters(
      paramLabel = "SCENARIO",
      description = "The scenario file (YAML, or JSON if its name ends in .json).")
  private Path file;

  @Mixin private ParameterOption parameters;

  /** Creates the options. */
  public ScenarioOptions() {}

  /**
   * Name of a file without folder and ending, for names of results.
   *
   * @param file the file
   * @return the name
   */
  public static String stem(Path file) {
    String name = String.valueOf(file.getFileName());
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }

  /**
   * The file.
   *
   * @return its name as the user gave it
   */
  public Path file() {
    return file;
  }

  /**
   * Reads the file.
   *
   * @return the scenario
   * @throws InvalidFileException if the file is not valid; the message holds all problems
   */
  public Scenario read() {
    return read(file, parameters);
  }

  /**
   * Reads one file.
   *
   * @param file the file
   * @param parameters parameters of the user's own
   * @return the scenario
   * @throws InvalidFileException if a file is not valid; the message holds all problems
   */
  public static Scenario read(Path file, ParameterOption parameters) {
    return readAll(List.of(file), parameters).get(0);
  }

  /**
   * Parameters of the user's own.
   *
   * @return the option
   */
  public ParameterOption parameters() {
    return parameters;
  }

  /**
   * Reads several files.
   *
   * @param files the files
   * @param parameters parameters of the user's own
   * @return the scenarios in their order
   * @throws InvalidFileException if a file is not valid; the message holds all problems of all
   *     files
   */
  public static List<Scenario> readAll(List<Path> files, ParameterOption parameters) {
    ParameterChanges changes = parameters.read();
    List<Reading<Scenario>> readings =
        files.stream().map(file -> ScenarioReader.read(file, changes)).toList();
    List<Problem> problems =
        readings.stream().flatMap(reading -> reading.problems().stream()).toList();
    if (!problems.isEmpty()) {
      throw new InvalidFileException(InvalidFileException.text(problems));
    }
    return readings.stream().map(Reading::orThrow).toList();
  }

  /**
   * A plan of a scenario by its name.
   *
   * @param scenario the scenario
   * @param name name of the plan; case does not matter
   * @return the plan
   * @throws UsageException if there is none of this name; the message lists the names
   */
  public static Plan plan(Scenario scenario, String name) {
    return scenario.plans().stream()
        .filter(plan -> plan.name().toLowerCase(Locale.ROOT).equals(name.toLowerCase(Locale.ROOT)))
        .findFirst()
        .orElseThrow(
            () ->
                new UsageException(
                    "there is no plan '"
                        + name
                        + "'; this scenario has: "
                        + scenario.plans().stream()
                            .map(plan -> "'" + plan.name() + "'")
                            .collect(Collectors.joining(", "))));
  }
}
