package org.undercap.cli.report;

import java.io.Writer;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.undercap.cli.output.Digests;
import org.undercap.cli.output.JsonOutput;
import org.undercap.cli.output.Numbers;
import org.undercap.comparison.Comparison;
import org.undercap.parameter.ParameterSet;

/**
 * What a result was made from and what came out, so that it can be made and checked again: version,
 * seed, members, and digests of all files. It holds no time of day, so the same input gives the
 * same manifest.
 */
final class Manifest {
  private static final int VERSION = 1;

  private Manifest() {}

  /**
   * Writes the manifest.
   *
   * @param writer where to write; not closed
   * @param comparison what was compared
   * @param inputs files that were read
   * @param outputs digests of the files that were written, by name
   */
  static void write(
      Writer writer, Comparison comparison, InputFiles inputs, Map<String, String> outputs) {
    String changed = changed(comparison.scenario().parameters());
    JsonOutput.write(
        writer,
        "manifest",
        VERSION,
        json ->
            json.text("scenario", comparison.scenario().name())
                .number("seed", comparison.settings().seed())
                .number("members", comparison.settings().members())
                .list("inputs", inputs.files(), (entry, f) -> file(entry, f.name(), f.sha256()))
                .texts("changedParameters", changed.lines().toList())
                .text("changedParametersSha256", Digests.of(changed))
                .list(
                    "outputs",
                    List.copyOf(outputs.entrySet()),
                    (entry, f) -> file(entry, f.getKey(), f.getValue())));
  }

  private static void file(JsonOutput json, String name, String sha256) {
    json.text("file", name).text("sha256", sha256);
  }

  /** The parameters that differ from the shipped ones, one a line, with all figures. */
  private static String changed(ParameterSet parameters) {
    return parameters.changed().entrySet().stream()
        .map(
            entry ->
                entry.getKey().id()
                    + " = "
                    + Numbers.exact(Arrays.stream(entry.getValue()).boxed().toList()))
        .collect(Collectors.joining("\n"));
  }
}
