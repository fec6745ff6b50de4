package org.undercap.cli.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import org.undercap.cli.output.ExitCodes;
import org.undercap.scenario.io.ScenarioReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints the JSON Schema of scenario files. */
@Command(
    name = "schema",
    description =
        "Prints the JSON Schema of scenario files, for editors that complete and check them.",
    footerHeading = "%nExamples:%n",
    footer = "  undercap schema > scenario.schema.json")
final class SchemaCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    try (InputStream in = ScenarioReader.class.getResourceAsStream("scenario.schema.json")) {
      spec.commandLine().getOut().print(new String(in.readAllBytes(), StandardCharsets.UTF_8));
      return ExitCodes.DONE;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
