package org.undercap.cli.report;

import java.io.Writer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.undercap.cli.output.Digests;
import org.undercap.cli.output.JsonOutput;
import org.undercap.cli.output.Numbers;
import org.undercap.cli.output.OutputFolder;
import org.undercap.ensemble.EnsembleSettings;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;

/**
 * What files were made from and what came out, so that they can be made and checked again: version,
 * command line, seed, members, and digests of parameters and all files. It holds no time of day and
 * no folders, so the same input gives the same manifest anywhere.
 *
 * @param command the words after {@code undercap} without those about folders, threads and messages
 * @param scenario name of the scenario, if there is one
 * @param draws seed and members, if there are random draws
 * @param parameters values of the parameters
 * @param inputs files that were read
 */
public record Manifest(
    List<String> command,
    Optional<String> scenario,
    Optional<EnsembleSettings> draws,
    ParameterSet parameters,
    InputFiles inputs)
    implements OutputFolder.Lister {
  /** Name of this form of document. */
  public static final String SCHEMA = "manifest";

  private static final int VERSION = 2;

  /**
   * Copies the list.
   *
   * @param command the words after {@code undercap}
   * @param scenario name of the scenario, if there is one
   * @param draws seed and members, if there are random draws
   * @param parameters values of the parameters
   * @param inputs files that were read
   */
  public Manifest {
    command = List.copyOf(command);
  }

  @Override
  public void write(Writer writer, Map<String, String> files) {
    JsonOutput.write(writer, SCHEMA, VERSION, json -> write(json, files));
  }

  private void write(JsonOutput json, Map<String, String> outputs) {
    json.texts("command", command).text("scenario", scenario.orElse(""));
    draws.ifPresent(s -> json.number("seed", s.seed()).number("members", s.members()));
    json.list("inputs", inputs.files(), (entry, f) -> file(entry, f.name(), f.sha256()))
        .texts("changedParameters", changed())
        .text("parametersSha256", parametersDigest())
        .list(
            "outputs",
            List.copyOf(outputs.entrySet()),
            (entry, f) -> file(entry, f.getKey(), f.getValue()));
  }

  private static void file(JsonOutput json, String name, String sha256) {
    json.text("file", name).text("sha256", sha256);
  }

  /** The parameters that differ from the shipped ones, with all figures. */
  private List<String> changed() {
    return parameters.changed().entrySet().stream()
        .map(entry -> line(entry.getKey(), entry.getValue()))
        .toList();
  }

  /** The digest of all parameters, one a line. */
  private String parametersDigest() {
    List<String> lines = new ArrayList<>();
    for (ParameterId id : ParameterId.values()) {
      lines.add(line(id, parameters.values(id)) + "\n");
    }
    return Digests.of(lines.stream().collect(Collectors.joining()));
  }

  private static String line(ParameterId id, double[] values) {
    return id.id() + " = " + Numbers.exact(Arrays.stream(values).boxed().toList());
  }
}
